import { checkProblem } from './check-problem.ts';
import { cutLines } from './cut-lines.ts';
import { commonUnit, metresOf, unitsOf } from './lengths.ts';
import { pack } from '../pack/pack.ts';
import type { Section } from '../pack/section.ts';
import type { Cut, CutPlan, CutsProblem, Piece } from '../model/types.ts';

/** Rounds that stay well under a second for the pieces of a large kitchen. */
const USUAL_ROUNDS = 500;

type Sized = { readonly piece: Piece; readonly turns: boolean };

/** Pieces packed into sections; lengths in `unit` micrometres. */
type Packed = {
  readonly sized: readonly Sized[];
  readonly sections: readonly Section[];
  readonly unit: number;
};

function packed(problem: CutsProblem): Packed {
  checkProblem(problem);
  const sized = problem.pieces.map((piece) => ({
    piece,
    turns: piece.turns ?? problem.rotate ?? true,
  }));
  const sides = sized.flatMap(({ piece }) => [unitsOf(piece.widthM), unitsOf(piece.lengthM)]);
  const unit = commonUnit(sides);
  const items = sized.map(({ piece, turns }) => ({
    width: unitsOf(piece.widthM) / unit,
    length: unitsOf(piece.lengthM) / unit,
    turns: turns && piece.widthM !== piece.lengthM,
  }));
  const sections = pack(items, Math.floor(unitsOf(problem.rollWidthM) / unit), {
    rounds: problem.rounds ?? USUAL_ROUNDS,
    mostLength:
      problem.rollLengthM === undefined
        ? Number.POSITIVE_INFINITY
        : Math.floor(unitsOf(problem.rollLengthM) / unit),
  });
  return { sized, sections, unit };
}

/** The length below which no plan of these pieces can be, m. */
function leastLengthM(sized: readonly Sized[], rollWidthM: number): number {
  const areaM2 = sized.reduce((sum, { piece }) => sum + piece.widthM * piece.lengthM, 0);
  const longestM = sized.reduce((most, { piece: { widthM, lengthM }, turns }) => {
    const straightM = widthM <= rollWidthM ? lengthM : widthM;
    const turnedM = turns && lengthM <= rollWidthM ? widthM : straightM;
    return Math.max(most, Math.min(straightM, turnedM));
  }, 0);
  return Math.max(areaM2 / rollWidthM, longestM);
}

/** Sections one behind the other, the fullest first, and the cuts that free their pieces. */
function planOf(
  sections: readonly Section[],
  { sized, unit }: Packed,
  { rollWidthM }: CutsProblem,
): CutPlan {
  const cuts: Cut[] = [];
  let used = 0;
  for (const { length, spots } of sections.toSorted(
    (a, b) => b.area / b.length - a.area / a.length,
  )) {
    for (const spot of spots) {
      const { piece } = sized[spot.item]!;
      cuts.push({
        id: piece.id,
        xM: metresOf(spot.x * unit),
        yM: metresOf((used + spot.y) * unit),
        widthM: metresOf(spot.width * unit),
        lengthM: metresOf(spot.length * unit),
        turned: spot.width * unit !== unitsOf(piece.widthM),
      });
    }
    used += length;
  }
  const usedLengthM = metresOf(used * unit);
  const cutting = cutLines({ xM: 0, yM: 0, widthM: rollWidthM, lengthM: usedLengthM }, cuts);
  if (!cutting) throw new RangeError('The packer made a section that no straight cuts divide.');
  const own = sections.flatMap(({ spots }) => spots.map(({ item }) => sized[item]!));
  const areaM2 = own.reduce((sum, { piece }) => sum + piece.widthM * piece.lengthM, 0);
  return {
    rollWidthM,
    usedLengthM,
    leastLengthM: leastLengthM(own, rollWidthM),
    wasteShare: used === 0 ? 0 : Math.max(0, 1 - areaM2 / (rollWidthM * usedLengthM)),
    cuts: cutting.freed,
    lines: cutting.lines,
  };
}

/**
 * How pieces are cut from one roll: straight cuts only, each through all of the
 * sheet that is cut, in the order they are made. The same pieces give the same plan.
 * Sizes 0.001 to 1000 m, at most 500 pieces; scissors take nothing away.
 * @throws CutsRefusal when a size makes no sense or a piece is larger than the roll
 */
export function planCuts(problem: CutsProblem): CutPlan {
  const all = packed(problem);
  return planOf(all.sections, all, problem);
}

/**
 * The same from as many rolls or sheets of a length as are needed: sections are
 * spread the longest first, each on the first roll with room.
 * @throws CutsRefusal as planCuts
 */
export function planRolls(
  problem: CutsProblem & { readonly rollLengthM: number },
): readonly CutPlan[] {
  const all = packed(problem);
  const rolls: { left: number; sections: Section[] }[] = [];
  for (const section of all.sections.toSorted((a, b) => b.length - a.length)) {
    const roll = rolls.find(({ left }) => left >= section.length);
    if (roll) {
      roll.left -= section.length;
      roll.sections.push(section);
    } else {
      const length = Math.floor(unitsOf(problem.rollLengthM) / all.unit);
      rolls.push({ left: length - section.length, sections: [section] });
    }
  }
  return rolls.map(({ sections }) => planOf(sections, all, problem));
}
