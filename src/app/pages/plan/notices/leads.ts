import type { Message } from '../../../../core/messages/index.ts';

/** What is said in the first line of the plan, and drawn: it is not said once more among the notices. */
const LATENESS: ReadonlySet<string> = new Set([
  'plan.notice.purge-late',
  'plan.notice.plan-late',
  'plan.notice.after-fourth-hour',
  'plan.notice.after-candles',
]);

export function isAboutLateness({ key }: Message): boolean {
  return LATENESS.has(key);
}

/** Where what a notice is about is changed or looked at: a page of the app, or a part of the plan. */
export type Lead =
  | { readonly page: 'kitchen' | 'kitchen/air' | 'kitchen/where' | 'kitchen/water' }
  | { readonly part: 'methods' | 'pours' | 'heat' | 'ask' };

const AIR: Lead = { page: 'kitchen/air' };
const KITCHEN: Lead = { page: 'kitchen' };

/** Of every notice that is more than good to know. A test holds it against the table of gravity. */
const LEADS: Readonly<Record<string, Lead>> = {
  'plan.notice.room-blocked': AIR,
  'plan.notice.room-hot': AIR,
  'plan.notice.no-air': AIR,
  'plan.notice.room-tiny': AIR,
  'plan.notice.room-unknown': AIR,
  'plan.notice.room-too-much': AIR,
  'plan.notice.hood-filters': AIR,
  'plan.notice.circuit-overloaded': { page: 'kitchen/water' },
  'plan.notice.days-unknown': { page: 'kitchen/where' },
  'plan.notice.last-hot.later': KITCHEN,
  'plan.notice.last-hot.long-ago': KITCHEN,
  'plan.notice.last-hot.unplaced': KITCHEN,
  'plan.notice.inside-passover': { part: 'ask' },
  'plan.notice.past-fourth-hour': { part: 'ask' },
  'plan.notice.induction': { part: 'methods' },
  'plan.notice.much-water': { part: 'pours' },
  'plan.notice.unreached': { part: 'pours' },
  'plan.notice.may-stay-dark': { part: 'heat' },
};

export function leadOf({ key }: Message): Lead | undefined {
  return Object.hasOwn(LEADS, key) ? LEADS[key] : undefined;
}
