import type { PlaceState } from '../../../core/report/index.ts';
import type { FixturePhase } from '../../../core/run/index.ts';

/**
 * The fill patterns of all pictures of the kitchen, one a meaning, told apart without colour:
 * what a pattern means in a run it means in the record.
 */
export type Motif =
  | 'plain'
  /** Dots: to be cleaned. */
  | 'dots'
  /** Waves: rests. */
  | 'waves'
  /** Empty: ready. */
  | 'clear'
  /** Slanted bars: boiling water. */
  | 'water'
  /** Crossed lines on a glow: heat. */
  | 'heat'
  /** Solid: done, clean. */
  | 'done'
  /** A weave: covered. */
  | 'sheet'
  /** Upright bars: closed up. */
  | 'bars'
  /** Crosses apart from each other: not purged. */
  | 'crosses'
  /** Dashes: left out, not finished. */
  | 'dashes';

/** How a place stands during a run. */
export const PHASE_MOTIFS: Readonly<Record<FixturePhase, Motif>> = {
  untouched: 'plain',
  'to-clean': 'dots',
  resting: 'waves',
  ready: 'clear',
  purging: 'water',
  hot: 'heat',
  'not-purged': 'crosses',
  'left-out': 'dashes',
  done: 'done',
  covered: 'sheet',
};

/** What a place is after it. */
export const STATE_MOTIFS: Readonly<Record<PlaceState, Motif>> = {
  heated: 'heat',
  poured: 'water',
  steamed: 'water',
  covered: 'sheet',
  cleaned: 'done',
  'closed-up': 'bars',
  'not-purged': 'crosses',
  'not-done': 'dashes',
  'not-yet': 'plain',
  untouched: 'plain',
};
