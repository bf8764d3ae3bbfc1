import { HANDS } from '../context/demands.ts';
import { WATCH, WHOLE } from '../context/places.ts';
import type { Plan, Step } from '../model/index.ts';
import { inOrder, thingOf } from './groups.ts';

/** A stretch of one step in one person's day, s after the start. */
export type Turn = { readonly step: string; readonly fromS: number; readonly toS: number };

/** What one person does: with the hands, one thing at a time; and what is watched meanwhile. */
export type PersonLane = { readonly hands: readonly Turn[]; readonly watches: readonly Turn[] };

/** Times of a timetable are whole milliseconds; what touches does not overlap. */
const TOUCH_S = 0.01;

type Person = {
  readonly hands: Turn[];
  readonly watches: Turn[];
  /** Stretches in which the eyes are on a pour. */
  readonly pours: Turn[];
  freeS: number;
  last: string;
};

const somebody = (): Person => ({ hands: [], watches: [], pours: [], freeS: 0, last: '' });

function turnOf({ timetable }: Plan, { id, durationS }: Step): Turn {
  const fromS = timetable.startS[id] ?? 0;
  return { step: id, fromS, toS: fromS + durationS.typical };
}

/** Those that are free then: who did the last on the same thing first, then in their order. */
function freeAt(people: readonly Person[], fromS: number, thing: string): readonly Person[] {
  const free = people.filter(({ freeS }) => freeS <= fromS + TOUCH_S);
  return [
    ...free.filter(({ last }) => last === thing),
    ...free.filter(({ last }) => last !== thing),
  ];
}

function giveHands(plan: Plan, people: Person[], step: Step, many: number): void {
  const turn = turnOf(plan, step);
  const thing = thingOf(step);
  const free = [...freeAt(people, turn.fromS, thing)];
  // A plan that asks for more hands than it has is drawn with them: nobody does two things at once.
  while (free.length < many) {
    const more = somebody();
    people.push(more);
    free.push(more);
  }
  for (const person of free.slice(0, many)) {
    person.hands.push(turn);
    if ((step.demands[WATCH] ?? 0) >= WHOLE) person.pours.push(turn);
    person.freeS = turn.toS;
    person.last = thing;
  }
}

/** When the eyes of a person are next on a pour; at once where they are now. */
function eyesUntilS({ pours }: Person, atS: number): number {
  const next = pours.find(({ toS }) => toS > atS + TOUCH_S);
  return next ? Math.max(next.fromS, atS) : Infinity;
}

/** Whoever has eyes for it the longest; whoever has it already keeps it as long as that goes. */
function giveWatch(people: Person[], turn: Turn): void {
  let atS = turn.fromS;
  let last: Person | undefined;
  while (atS < turn.toS - TOUCH_S) {
    const nowS = atS;
    const able = people.filter((one) => eyesUntilS(one, nowS) > nowS + TOUCH_S);
    const kept = able.find((one) => one === last);
    const longest = (one: Person) => Math.min(eyesUntilS(one, nowS), turn.toS);
    let taker = kept ?? able.toSorted((a, b) => longest(b) - longest(a))[0];
    if (!taker) people.push((taker = somebody()));
    const toS = longest(taker);
    taker.watches.push({ step: turn.step, fromS: nowS, toS });
    last = taker;
    atS = toS;
  }
}

/**
 * Who does what, a lane a person, by the plan's own timetable: hands are given out in the order of
 * time, to whoever did the last on the same thing, else to the first who is free. A burner that
 * glows is watched by somebody who pours nothing meanwhile, and handed on where that begins.
 * @returns as many lanes as the household has people, or more where the plan asks for more
 */
export function peopleLanes(plan: Plan): readonly PersonLane[] {
  const people = Array.from({ length: plan.kitchen.household.people }, somebody);
  const steps = inOrder(plan);
  const handsOf = ({ demands }: Step): number => Math.ceil(demands[HANDS] ?? 0);
  for (const step of steps) {
    const many = handsOf(step);
    if (many > 0) giveHands(plan, people, step, many);
  }
  for (const step of steps)
    if (handsOf(step) === 0 && (step.demands[WATCH] ?? 0) > 0)
      giveWatch(people, turnOf(plan, step));
  return people.map(({ hands, watches }) => ({ hands, watches }));
}
