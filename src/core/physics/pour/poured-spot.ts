import { MM_PER_M, inRange, type Band } from '../../units/index.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import { slabResponse } from '../surface/slab-response.ts';
import { material } from '../tables/materials.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';
import { levelJump } from './level-jump.ts';
import { filmRound } from './radial-film.ts';
import { steamLoss } from './steam-loss.ts';

/** Directions of the film over half the disc. */
const RAYS = 20;
/** Film and surface are worked out in turn this often: each round leaves a fifth of the error. */
const ROUNDS = 5;
/** First guess of the surface, as a share of the way from cold to the stream. */
const FIRST_GUESS = 0.6;
/** Usual fineness: cells from the stream to the jump. */
const CELLS = 16;

export type PouredSpot = {
  readonly flowLMin: number;
  /** Water where the stream meets the surface, °C. */
  readonly impactC: number;
  /** Boiling point of the place, °C. */
  readonly boilingC: number;
  readonly handSpeedMS: number;
  readonly material: string;
  /** Default: usual for the material. */
  readonly thicknessMm?: number;
  readonly surfaceC?: number;
  readonly fallM?: number;
  /** Where the spot lies between the middle of the strip (0) and its edge (1). */
  readonly offset: number;
  /** Which school of the jump. */
  readonly jump?: keyof Band;
  /** Water left standing on the surface, mm; it mixes with what comes. */
  readonly standingMm?: number;
  /** Cells from the stream to the jump, 6 to 64. */
  readonly cells?: number;
};

export type SpotReached = {
  /** Water that arrives first. */
  readonly firstTouchC: number;
  /** Hottest water that passes. */
  readonly hottestC: number;
  /** Hottest the surface gets while the stream passes. */
  readonly surfaceC: number;
  /** Mean of what runs off over the jump. */
  readonly runOffC: number;
};

type Disc = {
  readonly radiusM: number;
  readonly cells: number;
  readonly impactC: number;
  readonly coldC: number;
  readonly filmWM2K: (radiusM: number) => number;
  /** What the film keeps of its difference to the surface over each ring. */
  readonly keeps: readonly number[];
  /** Kelvins lost to the air over each ring for each K of steamLoss. */
  readonly toAir: readonly number[];
  readonly outK: (tempC: number) => number;
  /** Warming by heat of this step and of those before, K m²/W. */
  readonly response: readonly number[];
  /** Water standing on the surface, W/(m² K) over one step. */
  readonly standingWM2K: number;
};

function discOf(of: PouredSpot): Disc {
  const cells = inRange('cells', of.cells ?? CELLS, 6, 64);
  const flow = flowM3S(of.flowLMin);
  const jump = { flowLMin: of.flowLMin, tempC: of.impactC };
  const radiusM = levelJump(jump).radiusMm[of.jump ?? 'typical'] / MM_PER_M;
  const { filmWM2K, airWM2K } = filmRound({ ...of, tempC: of.impactC });
  const { densityKgM3, heatCapacityJKgK } = water({ tempC: of.impactC });
  const ringM = radiusM / cells;
  const stepS = ringM / of.handSpeedMS;
  const share = (r: number) => (2 * Math.PI * r * ringM) / (flow * densityKgM3 * heatCapacityJKgK);
  const rings = Array.from({ length: cells }, (_, i) => (i + 0.5) * ringM);
  const row = material(of.material);
  const slab = {
    conductivityWMK: row.conductivityWMK,
    heatCapacityJM3K: row.densityKgM3 * row.heatCapacityJKgK,
    thicknessM: (of.thicknessMm ?? row.thicknessMm.typical) / MM_PER_M,
  };
  const standingM = (of.standingMm ?? 0) / MM_PER_M;
  return {
    radiusM,
    cells,
    impactC: of.impactC,
    coldC: of.surfaceC ?? USUAL_ROOM_C,
    filmWM2K,
    keeps: rings.map((r) => Math.exp(-share(r) * filmWM2K(r))),
    toAir: rings.map((r) => share(r) * airWM2K(r)),
    outK: steamLoss(of.boilingC),
    response: slabResponse(slab, stepS, 2 * cells),
    standingWM2K: (standingM * densityKgM3 * heatCapacityJKgK) / stepS,
  };
}

/** Where a spot at one distance from the hand's way is at each step, and what of the film is over it. */
type Way = {
  readonly filmWM2K: Float64Array;
  /** Index of the ray and ring on its near side, in one, and how far it is to the next of each. */
  readonly near: Int32Array;
  readonly toRay: Float64Array;
  readonly toRing: Float64Array;
  /** Cell of the line along the hand's way that this step begins. */
  readonly cell: Int32Array;
};

/** Fixed numbers of a disc: where rays cross the lines, and where the lines cross the rays. */
type Mesh = {
  readonly disc: Disc;
  readonly ways: readonly Way[];
  /** For each ray and ring, the cell below in the surface. */
  readonly below: Int32Array;
};

/** Place of a point among rays and rings, as one index into the film and the shares to the next. */
function placed(
  disc: Disc,
  x: number,
  y: number,
): readonly [near: number, toRay: number, toRing: number] {
  const { radiusM, cells } = disc;
  const ring = Math.min(cells - 1e-9, (Math.hypot(x, y) / radiusM) * cells);
  const ray = Math.min(RAYS - 1 - 1e-9, Math.max(0, (Math.atan2(y, x) / Math.PI) * RAYS - 0.5));
  const [inner, first] = [Math.floor(ring), Math.floor(ray)];
  return [first * (cells + 1) + inner, ray - first, ring - inner];
}

function wayOf(disc: Disc, y: number): Way {
  const { radiusM, cells } = disc;
  const halfM = Math.sqrt(radiusM ** 2 - y ** 2);
  const steps = Math.max(1, Math.round((2 * halfM * cells) / radiusM));
  const xs = Array.from({ length: steps }, (_, i) => halfM * (1 - (2 * (i + 0.5)) / steps));
  const places = xs.map((x) => placed(disc, x, y));
  return {
    filmWM2K: Float64Array.from(xs, (x) => disc.filmWM2K(Math.hypot(x, y))),
    near: Int32Array.from(places, ([near]) => near),
    toRay: Float64Array.from(places, ([, toRay]) => toRay),
    toRing: Float64Array.from(places, ([, , toRing]) => toRing),
    cell: Int32Array.from(xs, (x) => Math.max(0, Math.floor(((radiusM - x) / radiusM) * cells))),
  };
}

function meshOf(disc: Disc): Mesh {
  const { radiusM, cells } = disc;
  const below = new Int32Array(RAYS * cells);
  for (let ray = 0; ray < RAYS; ray += 1) {
    const angle = ((ray + 0.5) / RAYS) * Math.PI;
    for (let ring = 0; ring < cells; ring += 1) {
      const line = Math.min(cells - 1, Math.floor((ring + 0.5) * Math.sin(angle)));
      const along = Math.floor(cells - (ring + 0.5) * Math.cos(angle));
      below[ray * cells + ring] = line * 2 * cells + Math.min(2 * cells - 1, Math.max(0, along));
    }
  }
  const ways = Array.from({ length: cells }, (_, i) => wayOf(disc, ((i + 0.5) / cells) * radiusM));
  return { disc, ways, below };
}

/** Water along each ray, at the stream and after each ring, ray after ray. Straight ahead of the hand is the first. */
function filmOver({ disc, below }: Mesh, surface: Float64Array): Float64Array {
  const { cells, keeps, toAir, outK, impactC } = disc;
  const film = new Float64Array(RAYS * (cells + 1));
  for (let ray = 0; ray < RAYS; ray += 1) {
    let tempC = impactC;
    film[ray * (cells + 1)] = tempC;
    for (let ring = 0; ring < cells; ring += 1) {
      const under = surface[below[ray * cells + ring] ?? 0] ?? 0;
      tempC = under + (tempC - under) * (keeps[ring] ?? 1) - (toAir[ring] ?? 0) * outK(tempC);
      film[ray * (cells + 1) + ring + 1] = tempC;
    }
  }
  return film;
}

function between(film: Float64Array, at: number, toNext: number): number {
  const low = film[at] ?? 0;
  return low + toNext * ((film[at + 1] ?? 0) - low);
}

function filmAt(
  film: Float64Array,
  cells: number,
  near: number,
  toRay: number,
  toRing: number,
): number {
  const low = between(film, near, toRing);
  return low + toRay * (between(film, near + cells + 1, toRing) - low);
}

type Passed = { readonly hottestC: number; readonly surfaceC: number };

/** What a spot meets as the disc passes over it; the surface it leaves goes into `line`. */
function passOver(disc: Disc, way: Way, film: Float64Array, line: Float64Array): Passed {
  const { cells, response, standingWM2K, coldC } = disc;
  const steps = way.near.length;
  const now = response[0] ?? 0;
  const heats = new Float64Array(steps);
  line.fill(coldC);
  let [surfaceC, hottestC, most] = [coldC, coldC, coldC];
  for (let step = 0; step < steps; step += 1) {
    const waterC = filmAt(
      film,
      cells,
      way.near[step] ?? 0,
      way.toRay[step] ?? 0,
      way.toRing[step] ?? 0,
    );
    const filmWM2K = way.filmWM2K[step] ?? 0;
    let before = coldC;
    for (let i = 0; i < step; i += 1) before += (heats[i] ?? 0) * (response[step - i] ?? 0);
    const held = standingWM2K * surfaceC;
    const next =
      (before + now * (filmWM2K * waterC + held)) / (1 + now * (filmWM2K + standingWM2K));
    heats[step] = filmWM2K * (waterC - next) - standingWM2K * (next - surfaceC);
    surfaceC = next;
    line.fill(surfaceC, way.cell[step] ?? 0);
    hottestC = Math.max(hottestC, waterC);
    most = Math.max(most, surfaceC);
  }
  return { hottestC, surfaceC: most };
}

/**
 * What the worst-placed spot of a strip meets while a stream passes over it:
 * the film spreads from the stream, gives heat to the surface it runs over and
 * to the air, and the surface warms with it; each is worked out with the other.
 * Within about 1 K of a finer mesh; nothing is lost below the slab.
 * @param flowLMin 0.2 to 12 L/min
 * @param impactC 40 °C to boiling
 * @param handSpeedMS 0.001 to 0.3 m/s: faster, the film cannot keep up with the hand
 * @param offset 0 to 0.99
 * @throws OutOfRangeError
 * Source: film as in filmRound, jump as in levelJump, evaporation as in
 * steamLoss, slab as in slabResponse.
 */
export function pouredSpot(of: PouredSpot): SpotReached {
  const boilingC = inRange('boilingC', of.boilingC, 60, 105);
  inRange('impactC', of.impactC, 40, boilingC);
  inRange('handSpeedMS', of.handSpeedMS, 0.001, 0.3);
  inRange('offset', of.offset, 0, 0.99);
  inRange('surfaceC', of.surfaceC ?? USUAL_ROOM_C, -20, of.impactC);
  inRange('standingMm', of.standingMm ?? 0, 0, 20);
  if (of.thicknessMm !== undefined) inRange('thicknessMm', of.thicknessMm, 0.1, 300);
  const mesh = meshOf(discOf(of));
  const { disc, ways } = mesh;
  const { cells, radiusM, coldC } = disc;
  const guessC = coldC + FIRST_GUESS * (of.impactC - coldC);
  const surface = new Float64Array(2 * cells * cells).fill(guessC);
  const lines = ways.map((_, i) => surface.subarray(2 * cells * i, 2 * cells * (i + 1)));
  let film = filmOver(mesh, surface);
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [i, way] of ways.entries()) passOver(disc, way, film, lines[i] ?? surface);
    film = filmOver(mesh, surface);
  }
  const y = of.offset * radiusM;
  const spot = passOver(disc, wayOf(disc, y), film, new Float64Array(2 * cells));
  let edges = 0;
  for (let ray = 1; ray <= RAYS; ray += 1) edges += film[ray * (cells + 1) - 1] ?? 0;
  return {
    firstTouchC: filmAt(film, cells, ...placed(disc, Math.sqrt(radiusM ** 2 - y ** 2), y)),
    ...spot,
    runOffC: edges / RAYS,
  };
}
