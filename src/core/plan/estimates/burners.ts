import type { Burner, BurnerType } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { coolToTouch, glowTime } from '../../physics/index.ts';
import { OutOfRangeError, type Band } from '../../units/index.ts';

export type BurnerEstimate = {
  /** From lighting to a glow that is seen: low in twilight, high with the lamp on. */
  readonly glowS: Band;
  /** No glow after this is a fault, s: by the model alone. */
  readonly limitS: number;
  readonly glowC: number;
  /** From off until it may be touched, s. */
  readonly coolS: number;
};

/** No glow after this many times the estimate is a fault: the household's hardware is not as told. */
const LIMIT_FACTOR = 3;
/** Shortest limit, s: a ribbon glows within seconds, and nobody looks that fast. */
const LEAST_LIMIT_S = 120;

function estimateOf(type: string, ratedW: number | undefined): BurnerEstimate {
  const of = { burner: type, ...(ratedW !== undefined && { ratedW }) };
  const { timeS, steadyC } = glowTime(of);
  const cool = coolToTouch(of);
  return {
    glowS: timeS,
    limitS: Math.max(LEAST_LIMIT_S, LIMIT_FACTOR * timeS.typical),
    glowC: steadyC,
    coolS: cool.timeS,
  };
}

/**
 * Warm-up and cool-down of a burner; none when nothing of it glows. A power
 * outside the catalogue is estimated as the usual one of its type: within a
 * type a larger burner is longer, not hotter.
 */
export function estimateBurner({ type, ratedW }: Burner): BurnerEstimate | undefined {
  if (type === 'induction') return undefined;
  try {
    return estimateOf(type, ratedW);
  } catch (refusal) {
    if (!(refusal instanceof OutOfRangeError)) throw refusal;
    return estimateOf(type, undefined);
  }
}

/** What to look for when a burner of this type glows. */
export function glowVisible(type: Exclude<BurnerType, 'induction'>): Message {
  return message(`steps.glow.visible.${type}`);
}
