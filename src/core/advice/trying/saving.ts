import { MS_PER_SECOND, SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { Change, Situation } from '../changes/change.ts';
import { lateS } from '../due/in-time.ts';

/** What a change saves of a plan; below 0: it costs that. */
export type Saving = {
  /** The end comes sooner by, s. */
  readonly endS: number;
  /** A deadline is missed by less, s. */
  readonly lateS: number;
  /** A deadline that was missed is kept. */
  readonly inTime: boolean;
  /** From the beginning to the end it is shorter by, s. */
  readonly spanS: number;
  readonly kettles: number;
  /** Electricity and gas. */
  readonly kWh: number;
};

/** Less than this nobody notices: a judgement. */
const LEAST = { endS: 5 * SECONDS_PER_MINUTE, spanS: SECONDS_PER_HOUR, kettles: 1, kWh: 0.1 };
/** Plans that end within this of each other end together, s: how well a search for the earliest end does. */
const SAME_END_S = SECONDS_PER_MINUTE;

function energyKWh({ totals }: Plan): number {
  return totals.electricityKWh + totals.gasKWh;
}

/** The difference of two plans; both starts on the same clock where they are known. */
export function savingOf(
  before: { readonly plan: Plan; readonly situation: Situation },
  after: { readonly plan: Plan; readonly situation: Situation },
): Saving {
  const startMs = ({ situation }: typeof before): number => situation.options.startWallMs ?? 0;
  const laterS = (startMs(after) - startMs(before)) / MS_PER_SECOND;
  const spanS = before.plan.timetable.finishS - after.plan.timetable.finishS;
  const wasLateS = lateS(before.plan, before.situation.options);
  const isLateS = lateS(after.plan, after.situation.options);
  return {
    endS: spanS - laterS,
    lateS: wasLateS - isLateS,
    inTime: wasLateS > 0 && isLateS === 0,
    spanS,
    kettles: before.plan.totals.kettles.typical - after.plan.totals.kettles.typical,
    kWh: energyKWh(before.plan) - energyKWh(after.plan),
  };
}

/** What a change is there to save, beside an earlier end. */
function alsoSaves({ kind }: Change, { kettles, kWh, spanS }: Saving): boolean {
  if (kind === 'start') return spanS >= LEAST.spanS;
  if (kind === 'answer' || kind === 'cover')
    return (kettles >= LEAST.kettles && kWh > -LEAST.kWh) || (kWh >= LEAST.kWh && kettles >= 0);
  return false;
}

/** Does it save anything, without ending later than without it? */
export function helps(change: Change, saving: Saving): boolean {
  if (saving.endS < -SAME_END_S) return false;
  return saving.endS >= LEAST.endS || saving.lateS >= LEAST.endS || alsoSaves(change, saving);
}

/** What is compared, in whole units, so that what differs by less than a unit is equal. */
function worths({ lateS: late, endS, kettles, kWh, spanS }: Saving): readonly number[] {
  const minutes = (lengthS: number): number => Math.round(lengthS / SAME_END_S);
  return [minutes(late), minutes(endS), kettles, Math.round(kWh / LEAST.kWh), minutes(spanS)];
}

/** Below 0: the first is worth more. What brings a deadline nearer, then the end, water, energy, hours between. */
export function compareSavings(a: Saving, b: Saving): number {
  const [x, y] = [worths(a), worths(b)];
  const differs = x.findIndex((worth, at) => worth !== y[at]);
  return (y[differs] ?? 0) - (x[differs] ?? 0);
}

/** Do two plans end together? */
export function sameEnd(a: Saving, b: Saving): boolean {
  return Math.abs(a.endS - b.endS) < SAME_END_S;
}
