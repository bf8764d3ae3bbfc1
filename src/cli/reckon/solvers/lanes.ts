import { readFileSync } from 'node:fs';
import { coverage, LanesRefusal, planLanes } from '../../../core/pouring/index.ts';
import type { EdgeOfOuter, LanesOptions, Surface } from '../../../core/pouring/index.ts';

type Json = Readonly<Record<string, unknown>>;
type Refused = {
  readonly error: {
    readonly input: string;
    readonly found: unknown;
    readonly allowed: string;
    readonly message: string;
  };
};

const FIELDS = [
  'name',
  'comment',
  'outer',
  'holes',
  'swathM',
  'backEdge',
  'backEdges',
  'startAt',
  'direction',
];

/** Digits after the point in what is printed: a millionth of a millimetre. */
const DECIMALS = 9;

class BadInput extends Error {
  readonly refused: Refused;
  constructor(input: string, found: unknown, allowed: string, advice: string) {
    const shown = typeof found === 'string' ? found : (JSON.stringify(found) ?? 'nothing');
    const message = `${input} is ${shown}; allowed: ${allowed}. ${advice}`;
    super(message);
    this.refused = { error: { input, found: found ?? null, allowed, message } };
  }
}

function parsed(path: string): Json {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw new BadInput('file', path, 'a file that can be read', 'Check the name.');
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new BadInput('file', why, 'JSON', 'Mend the file at that place.');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw new BadInput('file', value, 'one JSON object', 'Give {"outer": …, "swathM": …}.');
  }
  for (const field of Object.keys(value)) {
    if (!FIELDS.includes(field)) {
      throw new BadInput('file', field, FIELDS.join(', '), 'Remove this field or mend its name.');
    }
  }
  return value as Json;
}

function edgeList(file: Json): readonly EdgeOfOuter[] | undefined {
  const { backEdge, backEdges } = file;
  if ((backEdge ?? backEdges ?? null) === null) return undefined;
  const list: unknown = backEdges ?? [backEdge];
  const input = (backEdges ?? null) === null ? 'backEdge' : 'backEdges';
  const isEdge = (edge: unknown) =>
    Array.isArray(edge) && edge.length === 2 && edge.every((n) => Number.isInteger(n));
  if (!Array.isArray(list) || !list.every(isEdge)) {
    const allowed = input === 'backEdge' ? '[i, j]' : '[[i, j], …]';
    throw new BadInput(input, file[input], allowed, 'Give corner numbers of outer, from 0.');
  }
  return list as EdgeOfOuter[];
}

function oneOf<T extends string>(file: Json, field: string, allowed: readonly T[], usual: T): T {
  const value = file[field] ?? usual;
  const found = allowed.find((a) => a === value);
  if (found === undefined) throw new BadInput(field, value, allowed.join(' or '), 'Choose one.');
  return found;
}

function optionsOf(file: Json): LanesOptions {
  const backEdges = edgeList(file);
  if (typeof file.swathM !== 'number') {
    throw new BadInput('swathM', file.swathM, 'a number, metres', 'Give the width of a pass.');
  }
  return {
    swathM: file.swathM,
    startAt: oneOf(file, 'startAt', ['back', 'front'], 'back'),
    direction: oneOf(file, 'direction', ['back-to-front', 'shortest'], 'back-to-front'),
    ...(backEdges ? { backEdges } : {}),
  };
}

function surfaceOf(file: Json): Surface {
  const holes = file.holes ?? [];
  if (!Array.isArray(holes)) {
    throw new BadInput('holes', holes, '[[[x, y], …], …]', 'Give a list of cut-outs, or none.');
  }
  // The corners themselves are checked by the planner, which names the bad one.
  return { outer: file.outer, holes } as Surface;
}

function rounded(value: number): number {
  return Number(value.toFixed(DECIMALS));
}

function lanesOf(path: string): object {
  const file = parsed(path);
  const surface = surfaceOf(file);
  const options = optionsOf(file);
  const plan = planLanes(surface, options);
  const proof = coverage(plan.lanes, surface, options.swathM);
  const drawn = (lanes: readonly { points: readonly (readonly [number, number])[] }[]) =>
    lanes.map(({ points }) => ({ points: points.map((p) => p.map(rounded)) }));
  return {
    lanes: drawn(plan.lanes),
    pathLengthM: rounded(plan.quality.pathLengthM),
    areaM2: rounded(plan.quality.areaM2),
    coverage: proof.total ? 1 : Math.min(proof.share, 1 - 1e-6),
    lifts: plan.quality.lifts,
    lengthRatio: rounded(plan.quality.lengthRatio),
    overlap: rounded(plan.quality.overlap),
    turns: plan.quality.turns,
    farthestM: rounded(proof.farthestM),
    edgeLanes: plan.edgeLanes.map((lane, i) => ({
      kind: lane.kind,
      ...drawn(plan.edgeLanes)[i],
    })),
    repairs: plan.repairs,
  };
}

/**
 * Reckons the lanes of a surface given in a JSON file.
 * @returns an object to print; with `error` when the file or the surface is refused
 */
export function lanesFromFile(path: string): object {
  try {
    return lanesOf(path);
  } catch (error) {
    if (error instanceof BadInput) return error.refused;
    if (error instanceof LanesRefusal) {
      const { input, found, allowed, message } = error;
      return { error: { input, found: found ?? null, allowed, message } };
    }
    throw error;
  }
}

/** The entry of the command line: `reckon -- lanes FILE.json`. */
export const lanesReckoning = { name: 'lanes', run: lanesFromFile } as const;
