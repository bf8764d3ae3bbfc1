import type { CautionText, Plan, Step } from '../../../../core/plan/index.ts';
import type { StepView } from '../../../../core/run/index.ts';

/** So many beside the picture of a pour; more is not read with a kettle in the hand. */
const AT_A_POUR = 2;

const GRAVEST_FIRST = [
  'DANGER',
  'WARNING',
  'CAUTION',
  'NOTICE',
] as const satisfies readonly CautionText['signal'][];

export type StepCautions = {
  readonly shown: readonly CautionText[];
  /** Behind one press. */
  readonly more: readonly CautionText[];
};

/** What stood at the steps that this one needs, so that it was read a moment ago. */
function readBefore(plan: Plan, { needs }: Step): ReadonlySet<string> {
  const before = plan.steps.filter(({ id }) => needs.some(({ step }) => step === id));
  return new Set(before.flatMap(({ standing }) => standing));
}

/**
 * The cautions of a step as it stands, with those for its end once its last
 * stage is reached. At a pour only two: what is due now, then what this step
 * adds to the one before it, the gravest first.
 */
export function stepCautions(
  plan: Plan,
  { step, stage }: Pick<StepView, 'step' | 'stage'>,
): StepCautions {
  const isLast = stage >= step.stages.length - 1;
  const after = isLast ? step.after : [];
  const all = plan.cautions.filter(({ id }) => step.standing.includes(id) || after.includes(id));
  if (step.kind !== 'pour') return { shown: all, more: [] };
  const known = readBefore(plan, step);
  const rank = ({ id, signal }: CautionText): number =>
    (after.includes(id) ? 0 : known.has(id) ? 2 : 1) * GRAVEST_FIRST.length +
    GRAVEST_FIRST.indexOf(signal);
  const ranked = all.toSorted((a, b) => rank(a) - rank(b));
  return { shown: ranked.slice(0, AT_A_POUR), more: ranked.slice(AT_A_POUR) };
}
