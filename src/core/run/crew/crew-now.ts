import { peopleLanes, type Plan } from '../../plan/index.ts';
import type { Request, RunView, StepView } from '../model/types.ts';

/** Steps that a person took over from whom the plan gave them to, by id: number of that person, from 0. */
export type TakenOver = Readonly<Record<string, number>>;

/** What one person does at this moment. */
export type PersonNow = {
  /** Number in the order of the household, from 0. */
  readonly person: number;
  /** The one thing for this person now; absent: nothing. */
  readonly step?: StepView;
  /**
   * - `doing`: it has begun;
   * - `begin`: this person can begin it;
   * - `help`: the same, and it is planned for somebody whose hands are full.
   */
  readonly state: 'doing' | 'begin' | 'help' | 'free';
  /** What else has begun and is under these eyes. */
  readonly watches: readonly StepView[];
  /** What the plan gives this person next, while there is nothing. */
  readonly later?: StepView;
};

/** For each step the people whom the plan gives it to, in their order; nobody where no person is needed. */
type Owners = ReadonlyMap<string, readonly number[]>;

/** Lanes hang on the plan alone, and a view is made every second. */
const known = new WeakMap<Plan, Owners>();

function ownersOf(plan: Plan): Owners {
  const before = known.get(plan);
  if (before) return before;
  const owners = new Map<string, number[]>();
  for (const [person, { hands, watches }] of peopleLanes(plan).entries())
    for (const { step } of [...hands, ...watches]) {
      const all = owners.get(step) ?? [];
      if (!all.includes(person)) owners.set(step, [...all, person]);
    }
  known.set(plan, owners);
  return owners;
}

const isBegun = ({ status }: StepView): boolean =>
  status === 'active' || status === 'checking' || status === 'unwinding';
const isHandwork = ({ step }: StepView): boolean => step.attention === 'hands';

/** Gives what has begun to people: who took it over, else who is planned, else whose hands are empty. */
function giveBegun(
  begun: readonly StepView[],
  many: number,
  wanted: (step: StepView) => readonly number[],
): readonly (readonly StepView[])[] {
  const doing: StepView[][] = Array.from({ length: many }, () => []);
  const hasHands = (person: number): boolean => doing[person]?.some(isHandwork) ?? true;
  for (const step of begun) {
    const own = wanted(step).filter((person) => person < many);
    const free = doing.findIndex((_, person) => !hasHands(person));
    const able = own.find((person) => !isHandwork(step) || !hasHands(person));
    doing[able ?? (free >= 0 && isHandwork(step) ? free : (own[0] ?? 0))]?.push(step);
  }
  return doing;
}

/** It calls for a person before anything else that they do. */
const calls = ({ status, timers }: StepView): boolean =>
  status === 'checking' || status === 'unwinding' || timers.some(({ alerting }) => alerting);

/** The first step of this person that waits still, by the timetable. */
function laterOf(
  { plan: { timetable }, steps }: RunView,
  isOwn: (step: StepView) => boolean,
): StepView | undefined {
  const startS = ({ step }: StepView): number => timetable.startS[step.id] ?? Infinity;
  return steps
    .filter((one) => one.status === 'waiting' && isOwn(one))
    .toSorted((a, b) => startS(a) - startS(b))[0];
}

/**
 * Who does what at this moment, a line a person. The plan says whose a step is; what somebody took
 * over is theirs, and whose hands are empty is offered what is planned for others whose hands are
 * full. It only tells: the engine knows of no person, and its guards of hands hold as ever.
 * @param taken steps that were handed on, by id
 */
export function crewNow(view: RunView, taken: TakenOver = {}): readonly PersonNow[] {
  const { plan, currentSteps } = view;
  const many = plan.kitchen.household.people;
  const owners = ownersOf(plan);
  const wanted = ({ step }: StepView): readonly number[] => {
    const by = taken[step.id];
    return by !== undefined && by < many ? [by] : (owners.get(step.id) ?? []);
  };
  const doing = giveBegun(currentSteps.filter(isBegun), many, wanted);
  const left = currentSteps.filter((one) => !isBegun(one));
  /** Takes the first of them out of what is left. */
  const takeFirst = (is: (step: StepView) => boolean): StepView | undefined => {
    const at = left.findIndex(is);
    return at < 0 ? undefined : left.splice(at, 1)[0];
  };
  const inHand = doing.map((mine) => mine.find(calls) ?? mine.find(isHandwork));
  const own = inHand.map((busy, person) =>
    busy ? undefined : takeFirst((one) => wanted(one)[0] === person),
  );
  return doing.map((mine, person): PersonNow => {
    const busy = inHand[person];
    const others = (step: StepView) => mine.filter((one) => one !== step);
    if (busy) return { person, step: busy, state: 'doing', watches: others(busy) };
    const begin = own[person];
    if (begin) return { person, step: begin, state: 'begin', watches: mine };
    const help = takeFirst(() => true);
    if (help) {
      const state = wanted(help).length > 0 ? 'help' : 'begin';
      return { person, step: help, state, watches: mine };
    }
    const [first] = mine;
    if (first) return { person, step: first, state: 'doing', watches: others(first) };
    const later = laterOf(view, (one) => wanted(one)[0] === person);
    return { person, state: 'free', watches: [], ...(later && { later }) };
  });
}

/**
 * The same request, with the one at whose card its step is: who begins it, who ends a stage of it.
 * @param people as `crewNow` gives them; a step at nobody's card is signed by nobody
 */
export function signed(request: Request, people: readonly PersonNow[]): Request {
  if (request.kind !== 'start-step' && request.kind !== 'confirm') return request;
  const isIt = (one: StepView | undefined): boolean => one?.step.id === request.step;
  const at = people.find(({ step, watches }) => isIt(step) || watches.some(isIt));
  return at ? { ...request, person: at.person } : request;
}
