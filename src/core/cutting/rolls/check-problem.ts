import { CutsRefusal, type CutsProblem, type Piece } from '../model/types.ts';

/** Lengths that are answered, m: a thread to a hall. */
const LEAST_M = 0.001;
const MOST_M = 1000;
const MOST_PIECES = 500;

function length(input: string, value: unknown): void {
  if (typeof value === 'number' && value >= LEAST_M && value <= MOST_M) return;
  throw new CutsRefusal(
    'input',
    input,
    value,
    `a number from ${LEAST_M} to ${MOST_M}, metres`,
    'Give the size as it is measured.',
  );
}

/** Whether a piece lies on the roll as it is, and turned. */
function liesAs(
  { widthM, lengthM }: Pick<Piece, 'widthM' | 'lengthM'>,
  { rollWidthM, rollLengthM = MOST_M }: Pick<CutsProblem, 'rollWidthM' | 'rollLengthM'>,
): { readonly straight: boolean; readonly turned: boolean } {
  return {
    straight: widthM <= rollWidthM && lengthM <= rollLengthM,
    turned: lengthM <= rollWidthM && widthM <= rollLengthM,
  };
}

/** @throws CutsRefusal naming the field that cannot be used, or the piece that is larger than the roll */
export function checkProblem(problem: CutsProblem): void {
  length('rollWidthM', problem.rollWidthM);
  if (problem.rollLengthM !== undefined) length('rollLengthM', problem.rollLengthM);
  if (!Array.isArray(problem.pieces) || problem.pieces.length > MOST_PIECES) {
    const found = Array.isArray(problem.pieces) ? problem.pieces.length : problem.pieces;
    const allowed = `a list of at most ${MOST_PIECES} pieces`;
    throw new CutsRefusal('input', 'pieces', found, allowed, 'Give [{"id", "widthM", "lengthM"}].');
  }
  const seen = new Set<string>();
  for (const [at, piece] of problem.pieces.entries()) {
    const path = `pieces[${at}]`;
    if (typeof piece.id !== 'string' || piece.id === '' || seen.has(piece.id)) {
      const allowed = 'a text that no other piece has';
      throw new CutsRefusal('input', `${path}.id`, piece.id, allowed, 'Give each piece its own.');
    }
    seen.add(piece.id);
    length(`${path}.widthM`, piece.widthM);
    length(`${path}.lengthM`, piece.lengthM);
    const { straight, turned } = liesAs(piece, problem);
    const turns = piece.turns ?? problem.rotate ?? true;
    if (straight || (turns && turned)) continue;
    const { widthM, lengthM } = piece;
    const roll =
      problem.rollLengthM === undefined
        ? `${problem.rollWidthM} m wide`
        : `${problem.rollWidthM} by ${problem.rollLengthM} m`;
    throw new CutsRefusal(
      'too-large',
      path,
      { id: piece.id, widthM, lengthM },
      `pieces that lie on a roll ${roll}${turns ? '' : ', not turned'}`,
      'Take a larger roll, or join the piece from two.',
    );
  }
}
