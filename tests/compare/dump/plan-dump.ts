import type { PictureOne, PlanOne, StageOne, StepOne } from './layout.ts';
import { renamed } from './renames.ts';

/** Plain data: what may not differ, by places that mean the same in both versions. */
export type Json =
  | string
  | number
  | boolean
  | null
  | undefined
  | readonly Json[]
  | { readonly [place: string]: Json };

const word = (name: string): string => renamed('word', name);
const all = (what: Parameters<typeof renamed>[0], names: readonly string[]): readonly string[] =>
  names.map((name) => renamed(what, name));

/**
 * Steps by what they are: kind, fixture, and the how-manieth of its sort in the
 * order of the plan. Ids may change between versions.
 */
export function stepKeys(
  steps: readonly Pick<StepOne, 'id' | 'kind' | 'fixture'>[],
): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  return new Map(
    steps.map(({ id, kind, fixture }) => {
      const sort = `${word(kind)} ${fixture ?? '-'}`;
      const number = (counts.get(sort) ?? 0) + 1;
      counts.set(sort, number);
      return [id, `${sort} ${number}`];
    }),
  );
}

/** Litres of the step's own kettle and the path they take. */
function pictureDump(picture: PictureOne | undefined): Json {
  if (!picture) return undefined;
  const { kind, kettle, stretches, parts, stages, vessel, litres, maxFillL } = picture;
  const own = stretches?.filter((one) => one.kettle === kettle);
  const sum = (of: (one: NonNullable<typeof own>[number]) => number): number | undefined =>
    own?.reduce((total, one) => total + of(one), 0);
  return {
    kind: word(kind),
    kettle,
    ofKettles: stretches && new Set(stretches.map((one) => one.kettle)).size,
    litres: litres ?? sum((one) => one.litres),
    pathM: sum((one) => one.lengthM),
    points: sum((one) => one.points.length),
    parts: parts && `${parts.filter((one) => one.kettle === kettle).length} of ${parts.length}`,
    stages: stages?.map(({ lengthS, tempC }) => ({ lengthS, tempC })),
    vessel,
    maxFillL,
    cooktop: picture.cooktop,
    burner: picture.burner,
  };
}

function stageDump(stage: StageOne): Json {
  return {
    endsByWord: stage.say !== undefined,
    resumption: word(stage.resumption),
    asksAfterGap: stage.reviewAsk !== undefined,
    hazards: all('word', stage.hazards),
    details: stage.detail.length,
    timers: stage.timers.map(({ role, purpose, lengthS, repeats, fault }) => ({
      role: renamed('role', role),
      purpose: word(purpose),
      lengthS,
      repeats: repeats === true,
      fault,
    })),
  };
}

/** A step without its sentences. `startS`: of a timetable, or of an amendment. */
export function stepDump(
  step: StepOne,
  keys: ReadonlyMap<string, string>,
  startS: number | undefined,
): Json {
  return {
    phase: word(step.phase),
    startS,
    durationS: { ...step.durationS },
    attention: word(step.attention),
    startsBy: word(step.startsBy),
    needs: step.needs
      .map(
        ({ step: id, withinS }) =>
          `${keys.get(id) ?? id}${withinS === undefined ? '' : ` within ${withinS} s`}`,
      )
      .toSorted(),
    demands: Object.fromEntries(
      Object.entries(step.demands).map(([id, amount]) => [renamed('resource', id), amount]),
    ),
    gates: all('gate', step.gates),
    standing: all('caution', step.standing),
    after: all('caution', step.after),
    sources: step.sources,
    hasMakeSafe: step.makeSafe !== undefined,
    picture: pictureDump(step.picture),
    stages: step.stages.map(stageDump),
  };
}

/** Everything of a plan that is no sentence. */
export function planDump(plan: PlanOne): Json {
  const keys = stepKeys(plan.steps);
  const { timetable, totals, days } = plan;
  return {
    purpose: plan.purpose,
    custom: plan.custom,
    boilingC: plan.boilingC,
    order: [...keys.values()],
    steps: Object.fromEntries(
      plan.steps.map((step) => [
        keys.get(step.id) ?? step.id,
        stepDump(step, keys, timetable.startS[step.id]),
      ]),
    ),
    timesOfNoStep: Object.keys(timetable.startS).filter((id) => !keys.has(id)),
    finishS: timetable.finishS,
    lowerBoundS: timetable.lowerBoundS,
    methods: plan.methods.map(
      ({ reason: _reason, wouldChange: _change, overriddenBy, ...one }) => ({
        ...one,
        overridden: overriddenBy !== undefined,
      }),
    ),
    resources: Object.fromEntries(
      plan.resources.map(({ id, capacity }) => [renamed('resource', id), capacity]),
    ),
    gates: plan.gates.map(({ id, kind, signal, scope, lapsesS, trippedBy, settleS }) => ({
      id: renamed('gate', id),
      kind: word(kind),
      signal,
      scope: word(scope),
      lapsesS,
      trippedBy,
      settleS,
    })),
    cautions: plan.cautions.map(({ id, signal, source }) => ({
      id: renamed('caution', id),
      signal,
      source,
    })),
    faults: plan.faults.map(({ kind, policy, doThis }) => ({ kind, policy, lines: doThis.length })),
    questions: plan.questions.map(({ id, fixture }) => ({ id, fixture })),
    shopping: plan.shopping.map(({ id }) => renamed('shopping', id)),
    notices: plan.notices.length,
    totals: {
      ...totals,
      hotL: { ...totals.hotL },
      coldL: { ...totals.coldL },
      kettles: { ...totals.kettles },
    },
    days: days && {
      startWallMs: days.startWallMs,
      restDays: days.restDays.map(({ fromWallMs, toWallMs }) => ({ fromWallMs, toWallMs })),
      deadlineWallMs: days.deadline?.atWallMs,
    },
  };
}

/** Every sentence of a plan behind its place, one a line: what no printed text shows is compared too. */
export function sentences(plan: PlanOne): readonly string[] {
  const lines: string[] = [];
  const say = (place: string, ...texts: readonly (string | undefined)[]): void => {
    for (const text of texts) if (text !== undefined) lines.push(`${place}: ${text}`);
  };
  const keys = stepKeys(plan.steps);
  for (const step of plan.steps) {
    const key = keys.get(step.id) ?? step.id;
    say(key, step.title, step.reason, step.makeSafe);
    step.stages.forEach((stage, n) => {
      const labels = stage.timers.map(({ label }) => label);
      say(
        `${key}, stage ${n}`,
        stage.title,
        ...stage.detail,
        stage.say,
        stage.reviewAsk,
        ...labels,
      );
    });
  }
  for (const one of plan.methods)
    say(`method ${one.fixture}`, one.reason, one.wouldChange, one.overriddenBy);
  for (const one of plan.resources)
    say(`resource ${renamed('resource', one.id)}`, one.name, one.unit);
  for (const one of plan.gates)
    say(`gate ${renamed('gate', one.id)}`, one.ask, one.say, one.makeSafe);
  for (const one of plan.cautions)
    say(`caution ${renamed('caution', one.id)}`, one.hazard, one.say);
  for (const one of plan.faults) say(`fault ${one.kind}`, one.name, ...one.doThis);
  for (const one of plan.questions) say(`question ${one.id}`, one.ask, one.why, one.untilThen);
  for (const one of plan.shopping)
    say(`shopping ${renamed('shopping', one.id)}`, one.name, one.amount, one.why);
  say('notice', ...plan.notices);
  for (const one of plan.days?.restDays ?? []) say('rest day', one.name);
  say('deadline', plan.days?.deadline?.name);
  return lines;
}
