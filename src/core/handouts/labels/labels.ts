import { asWritten, type Message } from '../../messages/index.ts';
import type { Designation } from '../../kitchen/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';

/** What a place can be marked as. */
type Marking = Exclude<Designation, 'undecided'>;

/** A mark: colour is never all that tells it, there are a letter, a word and a pattern. */
export type MarkLabel = {
  readonly kind: 'mark';
  readonly id: string;
  readonly name: Message;
  readonly marking: Marking;
};

/** "RESTING, do not heat, until …"; the hour is written in by hand when the rest has begun. */
export type RestingLabel = {
  readonly kind: 'resting';
  readonly id: string;
  readonly name: Message;
  /**
   * When the plan lets the rest end, ms since 1970-01-01 UTC. Only as good as the beginning: a
   * rest that really begins later ends later. Absent: the plan has no calendar.
   */
  readonly plannedWallMs?: number;
};

export type Label = MarkLabel | RestingLabel;

export type Labels = {
  readonly labels: readonly Label[];
  /** Places of which nobody said what they are for. */
  readonly undecided: readonly string[];
};

/** When the plan lets a rest end: from its last hot use where that was told, else from its beginning. */
function plannedEndMs({ id, durationS, stages, lastHotWallMs }: Step, plan: Plan) {
  const startS = plan.timetable.startS[id];
  if (!plan.days || startS === undefined) return undefined;
  const endMs = plan.days.startWallMs + (startS + durationS.high) * MS_PER_SECOND;
  if (lastHotWallMs === undefined) return endMs;
  const lengthS = stages.flatMap(({ timers }) => timers).find((one) => one.id === 'rest')?.lengthS;
  return Math.max(endMs, lastHotWallMs + (lengthS ?? 0) * MS_PER_SECOND);
}

function restingLabels(plan: Plan): readonly RestingLabel[] {
  return plan.steps.flatMap((step): readonly RestingLabel[] => {
    const { id, kind, work } = step;
    if (kind !== 'rest') return [];
    const fixture = plan.kitchen.fixtures.find((one) => one.id === step.fixture);
    const name = work.on === 'vessel' ? work.vessel.name : fixture && asWritten(fixture.name);
    const plannedWallMs = plannedEndMs(step, plan);
    if (!name) return [];
    return [{ kind: 'resting', id, name, ...(plannedWallMs !== undefined && { plannedWallMs }) }];
  });
}

/** A mark for each place that has one, then a label for each rest, both in the order of the kitchen. */
export function labelsOf(plan: Plan): Labels {
  const { fixtures } = plan.kitchen;
  const marks = fixtures.flatMap(({ id, name, designation }): readonly MarkLabel[] =>
    designation === 'undecided'
      ? []
      : [{ kind: 'mark', id, name: asWritten(name), marking: designation }],
  );
  return {
    labels: [...marks, ...restingLabels(plan)],
    undecided: fixtures.flatMap(({ name, designation }) =>
      designation === 'undecided' ? [name] : [],
    ),
  };
}
