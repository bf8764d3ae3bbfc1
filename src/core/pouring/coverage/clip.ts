/**
 * Polygon union and difference by clipper2-ts, a port of Clipper2 (Vatti's
 * sweep on whole numbers). Chosen because it snaps to a grid and therefore
 * always answers, on self-crossing and touching input too, and because it
 * gives holes as a tree; float-based clippers may throw on near-touching
 * edges. Cost in the bundle: about 14 kB gzip when unused modules are shaken off.
 */
import { Clipper64, ClipType, FillRule, PolyTree64, type PolyPath64 } from 'clipper2-ts';
import type { Ring, Surface } from '../model/types.ts';

/** Grid of the clipper: a thousandth of a millimetre, in units per metre. */
const GRID_PER_M = 1e6;

type GridPath = { x: number; y: number }[];

function toGrid(ring: Ring): GridPath {
  return ring.map(([x, y]) => ({ x: Math.round(x * GRID_PER_M), y: Math.round(y * GRID_PER_M) }));
}

function fromGrid(path: PolyPath64): Ring {
  return (path.polygon ?? []).map(({ x, y }) => [x / GRID_PER_M, y / GRID_PER_M]);
}

function gather(node: PolyPath64, into: Surface[]): void {
  for (let i = 0; i < node.count; i += 1) {
    const outer = node.child(i);
    const holes: Ring[] = [];
    for (let j = 0; j < outer.count; j += 1) {
      const hole = outer.child(j);
      holes.push(fromGrid(hole));
      gather(hole, into);
    }
    into.push({ outer: fromGrid(outer), holes });
  }
}

function run(type: ClipType, subject: readonly Ring[], clip: readonly Ring[]): Surface[] {
  const drawn = (rings: readonly Ring[]) => rings.filter((ring) => ring.length >= 3).map(toGrid);
  const subjects = drawn(subject);
  if (subjects.length === 0) return [];
  const clipper = new Clipper64();
  clipper.preserveCollinear = false;
  clipper.addSubject(subjects);
  clipper.addClip(drawn(clip));
  const tree = new PolyTree64();
  clipper.execute(type, FillRule.NonZero, tree);
  const surfaces: Surface[] = [];
  gather(tree, surfaces);
  return surfaces;
}

/** Everything that any of the rings winds round, as clean surfaces. */
export function unite(rings: readonly Ring[]): Surface[] {
  return run(ClipType.Union, rings, []);
}

/** What the first rings wind round less what the others do, as clean surfaces. */
export function subtract(rings: readonly Ring[], less: readonly Ring[]): Surface[] {
  return run(ClipType.Difference, rings, less);
}

/** What both the first rings and the others wind round, as clean surfaces. */
export function intersect(rings: readonly Ring[], also: readonly Ring[]): Surface[] {
  return run(ClipType.Intersection, rings, also);
}
