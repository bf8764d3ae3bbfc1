import { message, type Message } from '../../messages/index.ts';
import { BASIS } from '../../physics/index.ts';

/** One thing a plan rests on that no published figure holds. */
type RestsOn = {
  readonly id: string;
  readonly kind: 'judgement' | 'computed';
  /** What is taken, and what it moves. */
  readonly says: Message;
};

/** What the figures of every plan rest on, judgement first. */
export const RESTS_ON: readonly RestsOn[] = BASIS.map(({ id, kind }) => ({
  id,
  kind,
  says: message(`plan.basis.${id}`),
}));
