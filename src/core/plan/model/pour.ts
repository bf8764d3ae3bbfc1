import type { PourUntil } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Band } from '../../units/index.ts';

/** Water for one fixture by one aim. */
export type PourAmount = { readonly litres: Band; readonly kettles: number };

/**
 * What a fixture is poured with, and what the worst-placed spot of a strip
 * meets, °C. The `low` of a temperature is the last drop that is still fresh.
 */
export type PlannedPour = {
  readonly fixture: string;
  /** What the plan goes by. */
  readonly until: PourUntil;
  readonly handSpeedMS: number;
  readonly firstTouchC: Band;
  readonly hottestC: Band;
  readonly surfaceC: Band;
  /** First touch where water was left standing. */
  readonly wetFirstTouchC: number;
  readonly runOffC: number;
  /** What run-off makes of the same material below. */
  readonly belowC: number;
  /** Both aims, side by side. */
  readonly reached: PourAmount;
  readonly heated: PourAmount;
  /** What that means, in one sentence. */
  readonly says: Message;
};
