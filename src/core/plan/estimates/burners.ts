import { burnerVolts, type Burner, type BurnerType, type Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { coolToTouch, glowTime } from '../../physics/index.ts';
import { OutOfRangeError, type Band } from '../../units/index.ts';
import { remembered } from './remembered.ts';

export type BurnerEstimate = {
  /** From lighting to a glow that is seen: low in twilight, high with the lamp on. */
  readonly glowS: Band;
  /** No glow after this is a fault, s: by the model alone. */
  readonly limitS: number;
  readonly glowC: number;
  /** It senses the pan, or gets so little power, that it may never redden bare. */
  readonly mayStayDark: boolean;
  /** From off until it may be touched, s: the slow end, since it protects a hand. */
  readonly coolS: number;
};

/** What is known of a burner and of where it stands. */
export type BurnerHeat = {
  readonly burner: string;
  readonly ratedW?: number;
  readonly ratedV?: number;
  readonly supplyV?: number;
  readonly altitudeM: number;
};

/** No glow after this many times the latest it is expected is a fault: judgement, so that none is cried in vain. */
const LIMIT_FACTOR = 2;
/** Shortest limit, s: a ribbon glows within seconds, and nobody looks that fast. */
const LEAST_LIMIT_S = 300;

/** What the models ask about a burner of a kitchen. */
export function burnerHeat(
  kitchen: Pick<Kitchen, 'circuits' | 'supplyV' | 'altitudeM'>,
  burner: Burner,
): BurnerHeat {
  const { type, ratedW } = burner;
  return { burner: type, ratedW, ...burnerVolts(kitchen, burner), altitudeM: kitchen.altitudeM };
}

/** Its glow, and whether it surely comes; a burner too weak for one is timed as at full power. */
function glowOf(of: BurnerHeat) {
  try {
    const { timeS, steadyC, surelyGlows } = glowTime(of);
    return { timeS, steadyC, surelyGlows };
  } catch (refusal) {
    if (!(refusal instanceof OutOfRangeError) || refusal.input !== 'powerW') throw refusal;
    const { ratedV: _rated, supplyV: _supply, ...full } = of;
    return { ...glowTime(full), surelyGlows: false };
  }
}

const estimateOf = remembered((of: BurnerHeat, sensing: boolean): BurnerEstimate => {
  const { timeS, steadyC, surelyGlows } = glowOf(of);
  return {
    glowS: timeS,
    limitS: Math.max(LEAST_LIMIT_S, LIMIT_FACTOR * timeS.high),
    glowC: steadyC.typical,
    mayStayDark: sensing || !surelyGlows,
    coolS: coolToTouch(of).timeS.high,
  };
});

/** The same without what the catalogue does not hold: a power outside it is the usual one of its type. */
export function usualHeat({ burner, altitudeM }: BurnerHeat): BurnerHeat {
  return { burner, altitudeM };
}

/**
 * Warm-up and cool-down of a burner; none when nothing of it glows. A power
 * outside the catalogue is estimated as the usual one of its type: within a
 * type a larger burner is longer, not hotter.
 */
export function estimateBurner(
  kitchen: Pick<Kitchen, 'circuits' | 'supplyV' | 'altitudeM'>,
  burner: Burner,
): BurnerEstimate | undefined {
  if (burner.type === 'induction') return undefined;
  const of = burnerHeat(kitchen, burner);
  const sensing = burner.sensing === true;
  try {
    return estimateOf(of, sensing);
  } catch (refusal) {
    if (!(refusal instanceof OutOfRangeError)) throw refusal;
    return estimateOf(usualHeat(of), sensing);
  }
}

/** What to look for when a burner of this type glows. */
export function glowVisible(type: Exclude<BurnerType, 'induction'>): Message {
  return message(`steps.glow.visible.${type}`);
}
