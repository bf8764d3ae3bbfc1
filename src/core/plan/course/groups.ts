import { UTENSILS, type Plan, type Step, type StepKind } from '../model/index.ts';
import { SECONDS_PER_HOUR } from '../../units/index.ts';

/** What kind of work the steps of a group are, as a person sees it. */
type Family = 'prepare' | 'clean' | 'water' | 'heat' | 'finish';

/** Steps that a person sees as one piece of work: a fridge from plug to plug, a counter's kettles. */
export type StepGroup = {
  /** That of its first step. */
  readonly id: string;
  readonly family: Family;
  /** In the order of time. */
  readonly steps: readonly Step[];
  /** s after the start; its rests and its cooling down may go on after `handsToS`. */
  readonly fromS: number;
  readonly toS: number;
  readonly handsToS: number;
};

const FAMILY: Readonly<Record<StepKind, Family>> = {
  prepare: 'prepare',
  unplug: 'clean',
  thaw: 'clean',
  clean: 'clean',
  rest: 'clean',
  'switch-on': 'clean',
  dry: 'water',
  boil: 'water',
  pour: 'water',
  'boil-over': 'water',
  glow: 'heat',
  cool: 'heat',
  'self-clean': 'heat',
  'high-heat': 'heat',
  steam: 'heat',
  cover: 'finish',
  mark: 'finish',
};

/** Work on one thing that stops for longer than this is another piece of work, s: a judgement. */
const APART_S = 2 * SECONDS_PER_HOUR;

/** What a step is done on: its fixture, its vessel, all utensils, or the whole kitchen. */
export function thingOf({ fixture, work }: Step): string {
  if (work.on === 'utensils') return UTENSILS;
  return fixture ?? (work.on === 'vessel' ? work.vessel.unit : '');
}

/** Steps by the timetable; those that begin at one moment keep the order of the plan. */
export function inOrder({ steps, timetable }: Plan): readonly Step[] {
  return steps
    .filter(({ id }) => timetable.startS[id] !== undefined)
    .map((step, n) => ({ step, n, atS: timetable.startS[step.id] ?? 0 }))
    .toSorted((a, b) => a.atS - b.atS || a.n - b.n)
    .map(({ step }) => step);
}

/** The pieces of work of a plan, in the order in which they begin. Each timed step is in one of them. */
export function stepGroups(plan: Plan): readonly StepGroup[] {
  const groups: StepGroup[] = [];
  const open = new Map<string, number>();
  for (const step of inOrder(plan)) {
    const fromS = plan.timetable.startS[step.id] ?? 0;
    const toS = fromS + step.durationS.typical;
    const handsToS = step.kind === 'rest' || step.kind === 'cool' ? fromS : toS;
    const family = FAMILY[step.kind];
    const thing = thingOf(step);
    const key = `${family} ${thing === '' ? step.id : thing}`;
    const at = open.get(key);
    const group = at === undefined ? undefined : groups[at];
    if (at === undefined || !group || fromS - group.handsToS > APART_S) {
      open.set(key, groups.length);
      groups.push({ id: step.id, family, steps: [step], fromS, toS, handsToS });
      continue;
    }
    groups[at] = {
      ...group,
      steps: [...group.steps, step],
      toS: Math.max(group.toS, toS),
      handsToS: Math.max(group.handsToS, handsToS),
    };
  }
  return groups;
}
