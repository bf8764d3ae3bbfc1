import { citation, tableOf } from '../custom/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { message } from '../messages/index.ts';
import { boilingTemp } from '../physics/index.ts';
import { OutOfRangeError, type Band } from '../units/index.ts';
import { fillBatches, wayFor, type Line } from './batches/fill-batches.ts';
import { leastPotL } from './batches/fit.ts';
import { pieceOf } from './batches/pieces.ts';
import { firstBoilS, potsOf, type HeatedPot } from './batches/pots.ts';
import { chooseUtensilMethod } from './methods/choose-utensil-method.ts';
import { TABLE, type RuleId } from './model/table.ts';
import type { Batch, Unfit, UtensilChoice, UtensilPlan, UtensilRule } from './model/types.ts';

/** Things lie about in a kitchen of usual warmth, °C; common practice, no published source. */
const ROOM_C = 20;

/** One pot tried with all that is to be immersed. */
type Tried = {
  readonly pot: HeatedPot;
  readonly firstBoilS: Band;
  readonly batches: readonly Batch[];
  readonly left: readonly Line[];
  readonly totalS: number;
};

/** A pot that its burner cannot bring to the boil again is none. */
function tried(pot: HeatedPot, lines: readonly Line[], kitchen: Kitchen): Tried | undefined {
  const { altitudeM } = kitchen;
  const boilingC = boilingTemp({ altitudeM }).tempC;
  try {
    const firstS = firstBoilS(pot, kitchen);
    const batches = fillBatches(lines, { pot, boilingC, altitudeM, itemC: ROOM_C });
    const boils = 1 + batches.filter(({ freshWater }) => freshWater).length;
    return {
      pot,
      firstBoilS: firstS,
      batches,
      left: lines.filter(({ piece }) => wayFor(piece, pot) === undefined),
      totalS: batches.reduce(
        (sum, { recoverS, dips }) => sum + recoverS.typical * dips,
        boils * firstS.typical,
      ),
    };
  } catch (fault) {
    if (fault instanceof OutOfRangeError) return undefined;
    throw fault;
  }
}

/** The pot that leaves the least outside, halves the least, and is done first. */
function bestPot(lines: readonly Line[], kitchen: Kitchen): Tried | undefined {
  const halves = ({ batches }: Tried) =>
    batches.filter(({ items }) => items.some(({ way }) => way === 'by-halves')).length;
  const [best] = potsOf(kitchen)
    .flatMap((pot) => tried(pot, lines, kitchen) ?? [])
    .toSorted(
      (a, b) => a.left.length - b.left.length || halves(a) - halves(b) || a.totalS - b.totalS,
    );
  return best;
}

function unfitOf({ choice, piece }: Line): Unfit {
  return {
    utensil: choice.utensil,
    name: choice.name,
    leastPotL: leastPotL(piece.sides),
    boilsOver: piece.isPot,
  };
}

function ruleOf(id: RuleId): UtensilRule {
  const row = TABLE.rules.find((rule) => rule.id === id);
  if (!row) throw new RangeError(`rule is ${id}; allowed: rules of the table. Add it there.`);
  return { text: message(`utensils.rule.${id}`), source: citation(row.source) };
}

/** The rules that this work needs, in its order. */
function rulesOf(
  choices: readonly UtensilChoice[],
  batches: readonly Batch[],
  mikveh: boolean,
): readonly UtensilRule[] {
  const has = (method: UtensilChoice['method']) => choices.some((one) => one.method === method);
  const groups = new Set(batches.map(({ group }) => group));
  const needed: readonly (readonly [RuleId, boolean])[] = [
    ['rest', has('immerse') || has('heat') || has('light-heat')],
    ['light-heat-test', has('light-heat')],
    ['soak', has('soak')],
    ['plain-water', has('immerse')],
    ['pot-first', has('immerse')],
    ['boil-over', has('immerse')],
    ['bubbling', has('immerse')],
    ['tongs', batches.some(({ hold }) => hold === 'tongs')],
    ['parts', batches.some(({ items }) => items.some(({ way }) => way === 'by-halves'))],
    ['apart', groups.size > 1],
    ['cold-rinse', has('immerse')],
    ['mikveh', mikveh],
  ];
  return needed.flatMap(([id, is]) => (is ? [ruleOf(id)] : []));
}

/**
 * How the utensils of a kitchen are treated: a method for each line, what goes
 * into which pot with what, and what is put away.
 */
export function buildUtensilPlan(kitchen: Kitchen): UtensilPlan {
  const { utensils = [], household } = kitchen;
  const lines = utensils.map((utensil) => ({
    utensil,
    choice: chooseUtensilMethod(utensil, household),
    piece: pieceOf(utensil),
  }));
  const choices = lines.map(({ choice }) => choice);
  const immersed = lines.filter(({ choice }) => choice.method === 'immerse');
  const best = immersed.length > 0 ? bestPot(immersed, kitchen) : undefined;
  const batches = best?.batches ?? [];
  const mikveh = lines
    .filter(
      ({ utensil, choice }) =>
        utensil.forMikveh === true &&
        choice.method !== 'put-away' &&
        TABLE.mikvehMaterials.includes(utensil.material),
    )
    .map(({ choice }) => choice);
  return {
    choices,
    restHours: tableOf(household).restHours,
    ...(best && { pot: potShown(best.pot), firstBoilS: best.firstBoilS }),
    boilingC: boilingTemp({ altitudeM: kitchen.altitudeM }).tempC,
    batches,
    unfit: (best ? best.left : immersed).map(unfitOf),
    ...(choices.some(({ method }) => method === 'soak') && {
      soak: { hours: TABLE.soak.soakHours, times: TABLE.soak.soakTimes },
    }),
    putAway: choices.filter(({ method }) => method === 'put-away'),
    mikveh,
    rules: rulesOf(choices, batches, mikveh.length > 0),
  };
}

/** What a plan tells of its pot. */
function potShown({ vessel, name, volumeL, diameterM, depthM }: HeatedPot) {
  return { vessel, name, volumeL, diameterM, depthM };
}
