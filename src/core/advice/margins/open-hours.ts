import { calendarOf, usualNights, type ClosedHours, type Plan } from '../../plan/index.ts';

type Span = { readonly fromS: number; readonly toS: number };

/** Closed hours of a plan, joined and in order: those of work, and rest days alone. s after the start. */
export type PlanHours = { readonly work: ClosedHours; readonly rests: ClosedHours };

function joined(spans: ClosedHours): ClosedHours {
  const whole: Span[] = [];
  for (const span of spans.toSorted((a, b) => a.fromS - b.fromS)) {
    const last = whole.at(-1);
    if (last && span.fromS <= last.toS)
      whole[whole.length - 1] = { fromS: last.fromS, toS: Math.max(last.toS, span.toS) };
    else whole.push(span);
  }
  return whole;
}

/** The hours that the timetable of a plan went round, unless a caller told others. */
export function hoursOf({ kitchen, days }: Plan): PlanHours {
  if (!kitchen.place || !days) return { work: usualNights(), rests: [] };
  const { closed, rests } = calendarOf(kitchen, kitchen.place, days.startWallMs);
  return { work: joined(closed), rests: joined(rests) };
}

/** The earliest start from `fromS` at which so long a piece of work touches no closed span. */
export function firstOpenS(closed: ClosedHours, fromS: number, lengthS: number): number {
  let atS = fromS;
  for (const span of closed) {
    if (span.toS <= atS) continue;
    if (span.fromS >= atS + lengthS) break;
    atS = span.toS;
  }
  return atS;
}
