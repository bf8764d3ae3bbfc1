import { inEnglish, unkeyed } from '../../messages/temporary.ts';
import { boilId, pourId } from '../steps/pour.ts';
import type { ClosedHours } from '../timetable/timetable.ts';
import type { Plan, Step } from '../model/types.ts';
import { retimed } from './retime.ts';
import { laneContents, sinkContents, type Content } from './contents.ts';

/** Steps that replace others of their id, and new ones, for the run's `amend-plan`. */
export type Amendment = {
  readonly steps: readonly Step[];
  readonly startS: Readonly<Record<string, number>>;
  readonly reason: string;
};

const NUMBERS = /kettle \d+ of \d+/;

function renumbered(step: Step, kettle: number, of: number): Step {
  const words = (text: string): string => text.replace(NUMBERS, `kettle ${kettle} of ${of}`);
  return {
    ...step,
    title: unkeyed(words(inEnglish(step.title))),
    stages: step.stages.map((one) => ({ ...one, title: unkeyed(words(inEnglish(one.title))) })),
  };
}

function filledPour(template: Step, content: Content): Step {
  const stages = template.stages.map((one, i) =>
    i > 0
      ? one
      : {
          ...one,
          ...(content.detail && { detail: content.detail }),
          timers: one.timers.map((timer) =>
            timer.role === 'estimate' ? { ...timer, lengthS: content.pourS } : timer,
          ),
        },
  );
  return { ...template, stages, picture: content.picture };
}

/** Boil and pour of a kettle that was not planned, after the pour before it. */
function added(boil: Step, pour: Step, fixture: string, kettle: number): readonly [Step, Step] {
  const before = { step: pourId(fixture, kettle - 1) };
  const earlier = (id: string): boolean => id.startsWith(`pour-${fixture}-`);
  return [
    {
      ...boil,
      id: boilId(fixture, kettle),
      needs: [...boil.needs.filter(({ step }) => !earlier(step)), before],
    },
    {
      ...pour,
      id: pourId(fixture, kettle),
      needs: [
        ...pour.needs
          .filter(({ step }) => !earlier(step))
          .map((need) =>
            need.withinS === undefined ? need : { ...need, step: boilId(fixture, kettle) },
          ),
        before,
      ],
    },
  ];
}

/** What came after the last pour comes after the new last one. */
function afterwards(
  plan: Plan,
  fixture: string,
  oldLast: number,
  newLast: number,
): readonly Step[] {
  const old = pourId(fixture, oldLast);
  return plan.steps
    .filter((step) => step.needs.some((need) => need.step === old))
    .filter(({ kind, fixture: of }) => of !== fixture || (kind !== 'boil' && kind !== 'pour'))
    .map((step) => ({ ...step, needs: [...step.needs, { step: pourId(fixture, newLast) }] }));
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
  const pour = plan.steps.find(({ id }) => id === stepId);
  const fixture = pour?.fixture;
  const picture = pour?.picture;
  if (!pour || fixture === undefined || !picture) return undefined;
  if (picture.kind !== 'lanes' && picture.kind !== 'sink') return undefined;
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  const later: Step[] = [];
  for (let k = picture.kettle + 1; byId.has(pourId(fixture, k)); k += 1)
    later.push(byId.get(pourId(fixture, k)) ?? pour);
  const contents =
    picture.kind === 'lanes'
      ? laneContents(pour, picture, share)
      : sinkContents(pour, picture, later);
  const oldLast = picture.kettle + later.length;
  const newLast = picture.kettle + Math.max(contents.length, later.length);
  const boil = byId.get(boilId(fixture, oldLast));
  if (!boil) return undefined;
  const startS: Record<string, number> = {};
  /** One after the other; kept only where no better times are found. */
  let nextS = plan.timetable.startS[stepId] ?? 0;
  const steps = contents.flatMap((content, i): Step[] => {
    const kettle = picture.kettle + 1 + i;
    const known = byId.get(pourId(fixture, kettle));
    const knownBoil = byId.get(boilId(fixture, kettle));
    const [newBoil, newPour] =
      known && knownBoil ? [knownBoil, known] : added(boil, later.at(-1) ?? pour, fixture, kettle);
    for (const step of [newBoil, newPour]) {
      startS[step.id] = plan.timetable.startS[step.id] ?? nextS;
      nextS = (startS[step.id] ?? nextS) + step.durationS.typical;
    }
    return [newBoil, filledPour(newPour, content)].map((step) => renumbered(step, kettle, newLast));
  });
  const rest = newLast > oldLast ? afterwards(plan, fixture, oldLast, newLast) : [];
  const changed = [...steps, ...rest].filter(({ id }) => !hasBegun(id));
  const times = retimed({
    plan: withSteps(plan, changed),
    during: pour,
    oldLast: pourId(fixture, oldLast),
    newLast: pourId(fixture, newLast),
    hasBegun,
    closed,
  });
  return {
    steps: changed,
    startS: times ?? startS,
    reason: `Kettle ${picture.kettle} ran out early; what is left is shared out anew.`,
  };
}
