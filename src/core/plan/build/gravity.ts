import type { Message } from '../../messages/index.ts';

/** How grave a notice is: work must not begin as things are, look at it first, or good to know. */
export type Gravity = 'stop' | 'look' | 'know';

/** Keys of notices that are more than good to know. A test holds them against the catalogue. */
export const GRAVE: Readonly<Record<string, Exclude<Gravity, 'know'>>> = {
  'plan.notice.room-blocked': 'stop',
  'plan.notice.room-hot': 'look',
  'plan.notice.no-air': 'stop',
  'plan.notice.room-tiny': 'stop',
  'plan.notice.room-unknown': 'stop',
  'plan.notice.room-too-much': 'stop',
  'plan.notice.inside-passover': 'stop',
  'plan.notice.past-fourth-hour': 'stop',
  'plan.notice.circuit-overloaded': 'stop',
  'plan.notice.after-candles': 'stop',
  'plan.notice.after-fourth-hour': 'look',
  'plan.notice.purge-late': 'look',
  'plan.notice.plan-late': 'look',
  'plan.notice.induction': 'look',
  'plan.notice.hood-filters': 'look',
  'plan.notice.days-unknown': 'look',
  'plan.notice.last-hot.later': 'look',
  'plan.notice.last-hot.long-ago': 'look',
  'plan.notice.last-hot.unplaced': 'look',
  'plan.notice.much-water': 'look',
  'plan.notice.unreached': 'look',
  'plan.notice.may-stay-dark': 'look',
};

const RANK: Readonly<Record<Gravity, number>> = { stop: 0, look: 1, know: 2 };

export function gravityOf({ key }: Message): Gravity {
  return Object.hasOwn(GRAVE, key) ? (GRAVE[key] ?? 'know') : 'know';
}

/** Notices by gravity; those of one gravity keep their order. */
export function gravestFirst(notices: readonly Message[]): readonly Message[] {
  return notices.toSorted((a, b) => RANK[gravityOf(a)] - RANK[gravityOf(b)]);
}
