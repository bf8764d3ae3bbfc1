import type { CutPlan, CutsProblem, Rect } from '../../../src/core/cutting/index.ts';

/** Rounding of lengths in metres. */
const SAME_M = 1e-9;

function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_M;
}

function sameRect(a: Rect, b: Rect): boolean {
  return (
    same(a.xM, b.xM) && same(a.yM, b.yM) && same(a.widthM, b.widthM) && same(a.lengthM, b.lengthM)
  );
}

function overlap(a: Rect, b: Rect): boolean {
  return (
    a.xM + a.widthM > b.xM + SAME_M &&
    b.xM + b.widthM > a.xM + SAME_M &&
    a.yM + a.lengthM > b.yM + SAME_M &&
    b.yM + b.lengthM > a.yM + SAME_M
  );
}

/**
 * Cuts a roll as the plan says, with nothing taken from the planner but its
 * answer: each cut must divide a sheet that is there, from edge to edge, and
 * at the end each piece must be one of the sheets. What is wrong, in words.
 */
export function replay(problem: CutsProblem, plan: CutPlan): readonly string[] {
  const wrong: string[] = [];
  const sheets: Rect[] = [{ xM: 0, yM: 0, widthM: problem.rollWidthM, lengthM: plan.usedLengthM }];
  for (const [number, { sheet, direction, atM }] of plan.lines.entries()) {
    const at = sheets.findIndex((one) => sameRect(one, sheet));
    const one = sheets[at];
    if (!one) {
      wrong.push(`cut ${number} divides a sheet that is not there`);
      continue;
    }
    const [from, size] = direction === 'across' ? [one.yM, one.lengthM] : [one.xM, one.widthM];
    if (atM <= from + SAME_M || atM >= from + size - SAME_M)
      wrong.push(`cut ${number} is not inside its sheet`);
    const first =
      direction === 'across' ? { ...one, lengthM: atM - from } : { ...one, widthM: atM - from };
    const second =
      direction === 'across'
        ? { ...one, yM: atM, lengthM: from + size - atM }
        : { ...one, xM: atM, widthM: from + size - atM };
    sheets.splice(at, 1, first, second);
  }
  for (const cut of plan.cuts)
    if (!sheets.some((sheet) => sameRect(sheet, cut))) wrong.push(`${cut.id} does not come free`);
  return [...wrong, ...lying(problem, plan)];
}

/** Each piece once, with its own sides, on the roll, beside the others. */
function* lying(problem: CutsProblem, plan: CutPlan): Generator<string> {
  const wanted = new Map(problem.pieces.map((piece) => [piece.id, piece]));
  for (const [at, cut] of plan.cuts.entries()) {
    const piece = wanted.get(cut.id);
    if (!piece) yield `${cut.id} is cut twice or was not wanted`;
    wanted.delete(cut.id);
    const turns = piece?.turns ?? problem.rotate ?? true;
    const [width, length] = cut.turned ? [cut.lengthM, cut.widthM] : [cut.widthM, cut.lengthM];
    if (piece && !(same(width, piece.widthM) && same(length, piece.lengthM)))
      yield `${cut.id} has another size`;
    if (cut.turned && !turns) yield `${cut.id} is turned`;
    if (cut.xM < 0 || cut.xM + cut.widthM > problem.rollWidthM + SAME_M)
      yield `${cut.id} is beside the roll`;
    if (cut.yM < 0 || cut.yM + cut.lengthM > plan.usedLengthM + SAME_M)
      yield `${cut.id} is behind the used length`;
    for (const other of plan.cuts.slice(at + 1))
      if (overlap(cut, other)) yield `${cut.id} lies over ${other.id}`;
  }
  for (const id of wanted.keys()) yield `${id} is missing`;
}

/**
 * Whether pieces can be cut apart by straight cuts at all, found by trying
 * every one: for answers that name no cuts.
 */
export function separable(pieces: readonly Rect[]): boolean {
  if (pieces.length <= 1) return true;
  for (const [from, size] of [
    ['xM', 'widthM'],
    ['yM', 'lengthM'],
  ] as const) {
    for (const piece of pieces) {
      const at = piece[from] + piece[size];
      const before = pieces.filter((one) => one[from] + one[size] <= at + SAME_M);
      const behind = pieces.filter((one) => one[from] >= at - SAME_M);
      if (before.length + behind.length === pieces.length && behind.length > 0)
        return separable(before) && separable(behind);
    }
  }
  return false;
}
