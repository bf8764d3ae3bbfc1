/** The working tree, brought into the layout that is pinned in `layout.ts`. */
import { parseMoment } from '../../../src/core/calendar/index.ts';
import { parseKitchen } from '../../../src/core/kitchen/index.ts';
import { asWritten, type Message } from '../../../src/core/messages/index.ts';
import { buildPlan, describePlan, ranOut, type Plan } from '../../../src/core/plan/index.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { apply, simulateRun, type Fact, type Request } from '../../../src/core/run/index.ts';
import { inEnglishWith } from '../../support/english.ts';
import type { Build, Played } from './build.ts';
import { disturbance } from './disturbance.ts';
import type { FactOne, PlanOne, RequestOne, RunTimerOne } from './layout.ts';
import { formatTime, type Scene } from './scenes.ts';

/** English with the times of both versions written alike. */
const english = inEnglishWith({ dateTime: formatTime });

/** The same with every message as its English sentence. */
type InEnglish<T> = T extends Message
  ? string
  : T extends object
    ? { readonly [K in keyof T]: InEnglish<T[K]> }
    : T;

function isMessage(value: object): value is Message {
  return 'key' in value && 'params' in value;
}

function saidIn<T>(value: T): InEnglish<T> {
  const said = (one: unknown): unknown => {
    if (typeof one !== 'object' || one === null) return one;
    if (isMessage(one)) return english.say(one);
    if (Array.isArray(one)) return one.map(said);
    return Object.fromEntries(Object.entries(one).map(([name, part]) => [name, said(part)]));
  };
  return said(value) as InEnglish<T>;
}

/** A plan in the common layout: sentences in English, names as they are (`renames.ts` knows those that changed). */
function planOne(plan: Plan): PlanOne {
  return saidIn(plan);
}

/** A fact in the common layout. */
function factOne(fact: Fact): FactOne {
  return saidIn(fact);
}

/** Kinds of requests that are called otherwise in the version before. */
const REQUESTS: Readonly<Record<string, Request['kind']>> = { 'report-doubt': 'report-recheck' };

/** What the disturbing person asks, in the words of the engine. */
function requestOf(asked: RequestOne): Request {
  const kind = REQUESTS[asked.kind] ?? asked.kind;
  // The one reason that is no person's word: it comes with the amendment.
  const reason = kind === 'amend-plan' ? { reason: asWritten(String(asked['reason'])) } : {};
  return { ...asked, ...reason, kind } as unknown as Request;
}

/** Every timer of a run: those that are over are not in its last state. */
function timersOf(facts: readonly Fact[]): readonly RunTimerOne[] {
  const timers = new Map<string, RunTimerOne>();
  let state: ReturnType<typeof apply> | null = null;
  for (const fact of facts) {
    state = apply(state, fact);
    for (const { id, step, stage, spec } of Object.values(state.timers))
      timers.set(id, { id, step, stage, role: spec.role, purpose: spec.purpose });
  }
  return [...timers.values()];
}

function played(plan: Plan, disturbed: boolean): Played {
  const disturb = disturbance((step, hasBegun) => {
    const amendment = ranOut(plan, step, 0.5, hasBegun);
    return amendment && { ...amendment, reason: english.say(amendment.reason) };
  });
  const { facts, state } = simulateRun(
    plan,
    disturbed ? { script: (seen) => disturb(seen).map(requestOf) } : {},
  );
  return {
    facts: facts.map(factOne),
    plan: planOne(state.plan),
    timers: timersOf(facts),
    record: reportText(reportOf(facts), english, 'UTC'),
  };
}

function planOf(kitchenText: string, { name, custom, start }: Scene): Plan {
  const parsed = parseKitchen(kitchenText);
  if ('problems' in parsed) throw new Error(`${name}: ${JSON.stringify(parsed.problems)}`);
  const kitchen = { ...parsed.kitchen, household: { ...parsed.kitchen.household, custom } };
  if (start === undefined) return buildPlan(kitchen);
  return buildPlan(kitchen, { startWallMs: parseMoment('start', start, kitchen.place?.zone) });
}

export const buildAfter: Build = {
  plan(kitchenText, scene) {
    const plan = planOf(kitchenText, scene);
    return {
      plan: planOne(plan),
      text: describePlan(plan, english),
      run: (disturbed) => played(plan, disturbed),
    };
  },
};
