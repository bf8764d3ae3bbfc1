import { message, type Message } from '../../messages/index.ts';
import type { Step, Timetable } from '../model/index.ts';
import { shares } from '../context/shares.ts';
import type { ClosedHours } from './timetable.ts';

/**
 * One link of what decides an end, s after the start: a step, or the part of a night or rest day
 * in which what comes next had to wait.
 */
export type ChainLink =
  | { readonly kind: 'step'; readonly step: string; readonly fromS: number; readonly toS: number }
  | { readonly kind: 'closed'; readonly fromS: number; readonly toS: number };

/** Times of a timetable are whole milliseconds; what touches does not overlap. */
const TOUCH_S = 0.01;
/** So many of the longest links are told. */
const TOLD = 3;
/** Shorter than this nobody looks at a link, s: a judgement. */
const WORTH_TELLING_S = 1800;

type Placed = { readonly step: Step; readonly fromS: number; readonly toS: number };

function placedOf(steps: readonly Step[], startS: Timetable['startS']): readonly Placed[] {
  return steps.flatMap((step) => {
    const fromS = startS[step.id];
    return fromS === undefined ? [] : [{ step, fromS, toS: fromS + step.durationS.typical }];
  });
}

function needs({ step }: Placed, { step: earlier }: Placed): boolean {
  return step.needs.some(({ step: id }) => id === earlier.id);
}

/** What could have held a step back: what it needs, and what held the same hands, kettle or circuit. */
function earlierThan(at: Placed, all: readonly Placed[], seen: ReadonlySet<string>) {
  return all.filter(
    (one) =>
      !seen.has(one.step.id) &&
      one.toS <= at.fromS + TOUCH_S &&
      (needs(at, one) || shares(at.step, one.step)),
  );
}

/** The night or rest day that ends as a step begins. */
function closedBefore({ step, fromS }: Placed, closed: ClosedHours) {
  if (step.attention === 'none') return undefined;
  return closed.find((one) => one.fromS < fromS && Math.abs(one.toS - fromS) <= TOUCH_S);
}

function touches(at: Placed, earlier: Placed): boolean {
  return earlier.toS >= at.fromS - TOUCH_S;
}

/** Does something hold it back in its turn, so that a chain does not end in the air? */
function isHeld(at: Placed, all: readonly Placed[], closed: ClosedHours): boolean {
  return (
    at.fromS <= TOUCH_S ||
    closedBefore(at, closed) !== undefined ||
    earlierThan(at, all, new Set([at.step.id])).some((one) => touches(at, one))
  );
}

/** What is held itself first, then what is needed, then the longest; then by name. */
function nearest(at: Placed, from: readonly Placed[], all: readonly Placed[], closed: ClosedHours) {
  const rank = (one: Placed): readonly number[] => [
    isHeld(one, all, closed) ? 0 : 1,
    needs(at, one) ? 0 : 1,
    one.fromS - one.toS,
  ];
  return from.toSorted((a, b) => {
    const [x, y] = [rank(a), rank(b)];
    const differs = x.findIndex((value, n) => value !== y[n]);
    return differs < 0 ? (a.step.id < b.step.id ? -1 : 1) : (x[differs] ?? 0) - (y[differs] ?? 0);
  })[0];
}

/** Since when it waits: hours close on what would not have been over before them a little sooner. */
function waitsFromS({ step }: Placed, lastS: number, hours: ClosedHours[number]): number {
  return lastS + step.durationS.typical > hours.fromS ? lastS : hours.fromS;
}

/**
 * What decides when the last of some steps is over: back from its end, always to the step that
 * touches by need or by what both hold, else over the night or rest day that ends there, else to
 * what came last before it. In the order of time.
 * @param closed nights and rest days in which nothing that needs a person is planned, s after the start
 * @param ends the steps of whose end it is asked
 */
export function criticalChain(
  steps: readonly Step[],
  startS: Timetable['startS'],
  closed: ClosedHours,
  ends: (step: Step) => boolean = () => true,
): readonly ChainLink[] {
  const all = placedOf(steps, startS);
  const seen = new Set<string>();
  const links: ChainLink[] = [];
  let at = all.filter(({ step }) => ends(step)).toSorted((a, b) => b.toS - a.toS)[0];
  while (at) {
    const now: Placed = at;
    seen.add(now.step.id);
    links.push({ kind: 'step', step: now.step.id, fromS: now.fromS, toS: now.toS });
    const earlier = earlierThan(now, all, seen);
    const touching = earlier.filter((one) => touches(now, one));
    const hours = touching.length > 0 ? undefined : closedBefore(now, closed);
    const lastS = Math.max(0, ...earlier.map(({ toS }) => toS));
    at = nearest(
      now,
      touching.length > 0 ? touching : earlier.filter(({ toS }) => toS >= lastS - TOUCH_S),
      all,
      closed,
    );
    if (hours) links.push({ kind: 'closed', fromS: waitsFromS(now, lastS, hours), toS: hours.toS });
  }
  return links.toReversed();
}

function linkMessage(link: ChainLink, steps: readonly Step[]): Message {
  const lengthS = link.toS - link.fromS;
  if (link.kind === 'closed') return message('plan.chain.closed', { lengthS });
  const step = steps.find(({ id }) => id === link.step);
  const key = step?.attention === 'none' ? 'plan.chain.by-itself' : 'plan.chain.step';
  return message(key, { step: step?.title ?? message('plan.chain.work'), lengthS });
}

/** The longest links of a chain, the longest first, in words. */
export function longestLinks(
  chain: readonly ChainLink[],
  steps: readonly Step[],
): readonly Message[] {
  return chain
    .filter(({ fromS, toS }) => toS - fromS >= WORTH_TELLING_S)
    .toSorted((a, b) => b.toS - b.fromS - (a.toS - a.fromS) || a.fromS - b.fromS)
    .slice(0, TOLD)
    .map((link) => linkMessage(link, steps));
}
