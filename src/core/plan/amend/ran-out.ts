import { message, type Message } from '../../messages/index.ts';
import { boilId, pourId } from '../context/step-ids.ts';
import type { Plan, Step, Work } from '../model/index.ts';
import type { ClosedHours } from '../timetable/timetable.ts';
import { laneContents, plannedContent, roundOf, sinkContents, type Content } from './contents.ts';
import { retimed } from './retime.ts';

/** Steps that replace others of their id, and new ones, for the run's `amend-plan`. */
export type Amendment = {
  readonly steps: readonly Step[];
  readonly startS: Readonly<Record<string, number>>;
  readonly reason: Message;
};

type KettleWork = Extract<Work, { readonly on: 'kettle' }>;

/** Boil and pour of one kettle. */
type Pair = { readonly boil: Step; readonly pour: Step };

/** What a fixture is boiled and poured with, by the number of the kettle. */
type Kettles = ReadonlyMap<number, Pair>;

function kettleOf({ work }: Step): KettleWork | undefined {
  return work.on === 'kettle' ? work : undefined;
}

function kettlesOf(plan: Plan, fixture: string): Kettles {
  const of = (kind: Step['kind']): ReadonlyMap<number | undefined, Step> =>
    new Map(
      plan.steps
        .filter((step) => step.kind === kind && step.fixture === fixture)
        .map((step) => [kettleOf(step)?.kettle, step]),
    );
  const boils = of('boil');
  return new Map(
    [...of('pour')].flatMap(([kettle, pour]) => {
      const boil = boils.get(kettle);
      return kettle !== undefined && boil ? [[kettle, { boil, pour }] as const] : [];
    }),
  );
}

/** The step as that kettle of so many. */
function numbered(
  step: Step,
  fixture: string,
  { kettle, of, round }: { kettle: number; of: number; round?: number | undefined },
  litres?: number,
): Step {
  const own = kettleOf(step);
  if (!own) return step;
  const turn = round !== undefined && { round };
  const work: KettleWork = { ...own, kettle, of, litres: litres ?? own.litres, ...turn };
  const named = { kettle, of, fixture };
  return step.kind === 'boil'
    ? { ...step, work, title: message('steps.boil.title', { ...named, vessel: own.vessel.name }) }
    : {
        ...step,
        work,
        title: message('steps.pour.title', named),
        stages: step.stages.map((stage) =>
          stage.role === 'pour' ? { ...stage, title: message('steps.pour.pour', named) } : stage,
        ),
      };
}

function filledPour(pour: Step, content: Content): Step {
  const stages = pour.stages.map((stage) =>
    stage.role !== 'pour'
      ? stage
      : {
          ...stage,
          ...(content.detail && { detail: content.detail }),
          timers: stage.timers.map((timer) =>
            timer.role === 'estimate' ? { ...timer, lengthS: content.pourS } : timer,
          ),
        },
  );
  return { ...pour, stages, picture: content.picture };
}

/**
 * Boil and pour of a kettle that was not planned, after the pour before it.
 * @param last boil and pour after which they are modelled
 * @param earlier every planned pour of the fixture
 */
function added(last: Pair, fixture: string, kettle: number, earlier: ReadonlySet<string>): Pair {
  const before = { step: pourId(fixture, kettle - 1) };
  const boil = boilId(fixture, kettle);
  return {
    boil: {
      ...last.boil,
      id: boil,
      needs: [...last.boil.needs.filter(({ step }) => !earlier.has(step)), before],
    },
    pour: {
      ...last.pour,
      id: pourId(fixture, kettle),
      needs: [
        ...last.pour.needs
          .filter(({ step }) => !earlier.has(step))
          .map((need) => (need.withinS === undefined ? need : { ...need, step: boil })),
        before,
      ],
    },
  };
}

/** What came after the last pour comes after the new last one. */
function afterwards(
  plan: Plan,
  fixture: string,
  oldLast: string,
  newLast: string,
): readonly Step[] {
  return plan.steps
    .filter((step) => step.needs.some((need) => need.step === oldLast))
    .filter(({ kind, fixture: of }) => of !== fixture || (kind !== 'boil' && kind !== 'pour'))
    .map((step) => ({ ...step, needs: [...step.needs, { step: newLast }] }));
}

/** Everything planned after the old last pour, later by as much as was added; where no better times are found. */
function pushedBack(
  plan: Plan,
  oldLast: string,
  untilS: number,
  hasBegun: (stepId: string) => boolean,
): Readonly<Record<string, number>> {
  const { startS } = plan.timetable;
  const last = plan.steps.find(({ id }) => id === oldLast);
  const fromS = (startS[oldLast] ?? 0) + (last?.durationS.typical ?? 0);
  const byS = Math.max(0, untilS - fromS);
  const later = Object.entries(startS).filter(([id, atS]) => atS >= fromS && !hasBegun(id));
  return Object.fromEntries(later.map(([id, atS]) => [id, atS + byS]));
}

/** The plan with these in place of those of the same id, and the new ones after them. */
function withSteps(plan: Plan, changed: readonly Step[]): Plan {
  const byId = new Map(changed.map((step) => [step.id, step]));
  const known = new Set(plan.steps.map(({ id }) => id));
  return {
    ...plan,
    steps: [
      ...plan.steps.map((step) => byId.get(step.id) ?? step),
      ...changed.filter(({ id }) => !known.has(id)),
    ],
  };
}

/** The kettles after this one that are planned, without a gap in their numbers. */
function laterThan(kettles: Kettles, kettle: number): readonly Pair[] {
  const later: Pair[] = [];
  for (let next = kettles.get(kettle + 1); next; next = kettles.get(kettle + 1 + later.length))
    later.push(next);
  return later;
}

/** A pour that can run out: of a kettle that is numbered, with a picture of where it goes. */
function pourIn(plan: Plan, stepId: string) {
  const pour = plan.steps.find(({ id }) => id === stepId);
  const kettle = pour && kettleOf(pour)?.kettle;
  const fixture = plan.kitchen.fixtures.find(({ id }) => id === pour?.fixture);
  const picture = pour?.picture;
  if (pour?.kind !== 'pour' || kettle === undefined || !fixture) return undefined;
  return picture?.kind === 'lanes' || picture?.kind === 'sink'
    ? { pour, kettle, fixture, picture }
    : undefined;
}

/**
 * "I ran out here": the water of this kettle gave out before its stretch was
 * done. What is left is shared out anew among the kettles not begun, with as
 * many more as it takes, and what has not begun is timed anew around them:
 * nothing earlier than it was planned, nothing begun moved.
 * @param stepId a pour step of the plan with a picture of lanes or of a sink
 * @param share of its stretch that was poured, 0 to 1 (a sink: not used)
 * @param hasBegun steps that can no longer be changed
 * @param closed nights and rest days of the plan, s after its start; without them its rest
 *   days, or the usual nights where it has no days
 * @returns undefined when the step is no such pour
 */
export function ranOut(
  plan: Plan,
  stepId: string,
  share: number,
  hasBegun: (stepId: string) => boolean,
  closed?: ClosedHours,
): Amendment | undefined {
  const found = pourIn(plan, stepId);
  if (!found) return undefined;
  const { pour, kettle, fixture, picture } = found;
  const kettles = kettlesOf(plan, fixture.id);
  const later = laterThan(kettles, kettle);
  const last = later.at(-1) ?? kettles.get(kettle);
  if (!last) return undefined;
  const round = roundOf(pour);
  const now = later.filter((one) => roundOf(one.pour) === round).map((one) => one.pour);
  // What is poured again over the whole of it stays as it was planned.
  const again = later.filter((one) => roundOf(one.pour) !== round);
  const contents = [
    ...(picture.kind === 'lanes'
      ? laneContents(pour, picture, share)
      : sinkContents(pour, picture, now)
    ).map((content) => ({ ...content, round })),
    ...again.map((one) => plannedContent(one.pour)),
  ];
  const newCount = kettle + Math.max(contents.length, later.length);
  const earlier = new Set([...kettles.values()].map((one) => one.pour.id));
  const startS: Record<string, number> = {};
  /** One after the other; kept only where no better times are found. */
  let nextS = plan.timetable.startS[stepId] ?? 0;
  const steps = contents.flatMap((content, i): readonly Step[] => {
    const number = kettle + 1 + i;
    const as = { kettle: number, of: newCount, round: content.round };
    const pair = later[i] ?? added(last, fixture.id, number, earlier);
    for (const step of [pair.boil, pair.pour]) {
      if (!hasBegun(step.id)) startS[step.id] = plan.timetable.startS[step.id] ?? nextS;
      nextS = Math.max(nextS, startS[step.id] ?? nextS) + step.durationS.typical;
    }
    return [
      numbered(pair.boil, fixture.name, as),
      numbered(filledPour(pair.pour, content), fixture.name, as, content.litres),
    ];
  });
  const oldLast = last.pour.id;
  const newLast = newCount > kettle + later.length ? pourId(fixture.id, newCount) : oldLast;
  const rest = newLast === oldLast ? [] : afterwards(plan, fixture.id, oldLast, newLast);
  const changed = [...steps, ...rest].filter(({ id }) => !hasBegun(id));
  const times = retimed({
    plan: withSteps(plan, changed),
    during: pour,
    oldLast,
    newLast,
    hasBegun,
    closed,
  });
  return {
    steps: changed,
    startS: times ?? { ...pushedBack(plan, oldLast, nextS, hasBegun), ...startS },
    reason: message('steps.ran-out', { kettle }),
  };
}
