import type { Area } from './differences.ts';

/** A difference that is meant: a bug of the version before that the version after mends. */
export type Known = {
  readonly area: Area;
  /** Matches the place of the difference, `scene: place`. */
  readonly place: RegExp;
  /** For texts: matches the line before or the line after. */
  readonly line?: RegExp;
  /** What was wrong before. */
  readonly reason: string;
};

export const KNOWN: readonly Known[] = [];
