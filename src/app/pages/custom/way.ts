import { LIMITS, type MethodId } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';

/** What a person fills in about one answer: a way to purge, and whose word it is. */
export type SaidWay = {
  readonly method: MethodId;
  /** As typed; empty where no time belongs to the method. */
  readonly minutes: string;
  readonly cover: boolean;
  readonly saidBy: string;
  /** yyyy-mm-dd */
  readonly saidOn: string;
  readonly words: string;
};

const WITH_MINUTES: ReadonlySet<MethodId> = new Set<MethodId>(['glow', 'light-heat', 'steam']);
const COVERED: ReadonlySet<MethodId> = new Set<MethodId>(['line', 'cover']);
const COVER_ASKED: ReadonlySet<MethodId> = new Set<MethodId>([
  'pour',
  'clean',
  'glow',
  'light-heat',
  'self-clean',
  'steam',
]);
const { least, most } = LIMITS.ownRowMin;
const MINUTE_MS = 60_000;

/** Does a length of time belong to this method? */
export function takesMinutes(method: MethodId): boolean {
  return WITH_MINUTES.has(method);
}

/** Is it left to the household whether a cover follows? */
export function asksCover(method: MethodId): boolean {
  return COVER_ASKED.has(method);
}

/** Whether it ends under a cover: some methods are covers. */
export function endsCovered({ method, cover }: Pick<SaidWay, 'method' | 'cover'>): boolean {
  return COVERED.has(method) || (asksCover(method) && cover);
}

/** Minutes as a number; absent where none were typed or none belong to the method. */
export function minutesOf({ method, minutes }: SaidWay): number | undefined {
  return takesMinutes(method) && minutes.trim() !== '' ? Number(minutes) : undefined;
}

/** What is still missing; nothing when it can be kept. */
export function missingIn(way: SaidWay, wordsNeeded: boolean): Message | undefined {
  const minutes = minutesOf(way);
  if (minutes !== undefined && !(minutes >= least && minutes <= most))
    return message('kitchen.custom.missing.minutes', { least, most });
  if (way.saidBy.trim() === '') return message('kitchen.custom.missing.said-by');
  if (!/^\d{4}-\d\d-\d\d$/.test(way.saidOn)) return message('kitchen.custom.missing.said-on');
  if (wordsNeeded && way.words.trim() === '') return message('kitchen.custom.missing.why');
  return undefined;
}

/** The day of a moment where the reader is, yyyy-mm-dd. */
export function dayOf(at: Date): string {
  const shifted = new Date(at.getTime() - at.getTimezoneOffset() * MINUTE_MS);
  return shifted.toISOString().slice(0, 10);
}
