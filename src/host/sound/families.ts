import manifest from '../../../sounds/manifest.json';
import type { AlertFamily } from '../../core/run/index.ts';

/**
 * How a family goes on until a person answers. Choices of ours, no published
 * source: the pause must leave room to speak, the growth must not startle a
 * person who holds boiling water.
 */
type Manner = {
  /** From one sounding to the next while it grows, s. */
  readonly growingPeriodS: number;
  /** And once it has grown, s. */
  readonly grownPeriodS: number;
  /** Gain of each sounding, full = 1; the last one stays. */
  readonly gains: readonly number[];
  /** Soundings at most; Infinity: until answered. */
  readonly most: number;
  /** Vibration, ms on and off by turns. */
  readonly vibrationMs: readonly number[];
};

export const MANNERS: Readonly<Record<AlertFamily, Manner>> = {
  hazard: {
    growingPeriodS: 4,
    grownPeriodS: 3,
    gains: [0.85, 1],
    most: Infinity,
    vibrationMs: [150, 60, 150, 220, 150, 60, 150],
  },
  due: {
    growingPeriodS: 7,
    grownPeriodS: 4,
    gains: [0.45, 0.6, 0.75, 0.9, 1],
    most: Infinity,
    vibrationMs: [350, 130, 150, 80, 150, 80, 450],
  },
  soon: {
    growingPeriodS: 20,
    grownPeriodS: 20,
    gains: [0.5],
    most: 3,
    vibrationMs: [120],
  },
  done: {
    growingPeriodS: 20,
    grownPeriodS: 20,
    gains: [0.55],
    most: 3,
    vibrationMs: [120, 80, 250],
  },
};

/** The most urgent first. */
export const URGENCY: readonly AlertFamily[] = ['hazard', 'due', 'soon', 'done'];

/** Seconds from the first sounding to sounding `k` (0, 1, 2 …). */
export function offsetS(family: AlertFamily, k: number): number {
  const { growingPeriodS, grownPeriodS, gains } = MANNERS[family];
  const growing = Math.min(k, gains.length - 1);
  return growing * growingPeriodS + (k - growing) * grownPeriodS;
}

export function gainOf(family: AlertFamily, k: number): number {
  const { gains } = MANNERS[family];
  return gains[Math.min(k, gains.length - 1)] ?? 1;
}

/** First `k` whose offset is at least `fromS`. */
export function firstFrom(family: AlertFamily, fromS: number): number {
  const { growingPeriodS, grownPeriodS, gains } = MANNERS[family];
  const grownAtS = (gains.length - 1) * growingPeriodS;
  if (fromS <= grownAtS) return Math.max(0, Math.ceil(fromS / growingPeriodS));
  return gains.length - 1 + Math.ceil((fromS - grownAtS) / grownPeriodS);
}

/** Length of a family's sound, s. */
export function soundLengthS(family: AlertFamily): number {
  const sound = manifest.sounds.find((one) => one.family === family);
  if (!sound)
    throw new Error(`sounds/manifest.json has no family ${family}; make the sounds anew.`);
  return sound.durationS;
}
