import type { Message } from '../../messages/index.ts';
import type { FaultKind } from './fault.ts';

/** What an interruption does: nothing / a person judges / begin again / cannot be repeated. */
type Resumption = 'continue' | 'ask' | 'restart' | 'void';

export type TimerPurpose = 'at-least' | 'at-most' | 'unbroken';

/**
 * hold: the stage ends when it is due (or may be confirmed from then on).
 * estimate: "should be so by now", a look, never a fault.
 * limit: due means the fault named in `fault`.
 * reminder: look at it; repeats until the stage ends.
 * freshness: boiled water waiting; due means boil again.
 */
export type TimerRole = 'hold' | 'estimate' | 'limit' | 'reminder' | 'freshness';

export type TimerSpec = {
  readonly id: string;
  readonly role: TimerRole;
  readonly purpose: TimerPurpose;
  readonly lengthS: number;
  /** Says by itself what it counts: "Rest: Sink". */
  readonly label: Message;
  /** Where the label names a thing: the label without it, and the thing. "Rest", "Sink". */
  readonly of?: { readonly label: Message; readonly name: Message };
  readonly repeats?: boolean;
  readonly fault?: FaultKind;
};

/** What can hurt while a stage is active, and what Stop must make safe. */
export type Hazard = 'boiling-water' | 'flame' | 'element' | 'oven' | 'hot-surface';

/**
 * What a stage is in its step.
 * - `do`: work without stages of its own; `clean`, `cover`, `mark`: likewise, by their name.
 * - `rest`: unused, for its time. `dry`: wiped dry, or left to dry.
 * - `fill`: water in, heat on. `boil`: wait for a rolling boil. `overflow`: let it run over the rim.
 * - `pour`: boiling water over it. `immerse`: into boiling water. `cold`: cold water at once after it.
 * - `light`: a burner is turned on. `start`: an oven, a cycle or an appliance is.
 * - `warm-up`: until it glows or is at its highest. `hold`: kept there without a break.
 * - `cycle`: the appliance's own course, warm-up and hold in one.
 * - `off`: the heat is turned off. `cool`: untouched until it is safe or unlocked. `open`: opened after it.
 */
export type StageRole =
  | 'do'
  | 'clean'
  | 'rest'
  | 'dry'
  | 'fill'
  | 'boil'
  | 'overflow'
  | 'pour'
  | 'immerse'
  | 'cold'
  | 'light'
  | 'start'
  | 'warm-up'
  | 'hold'
  | 'cycle'
  | 'off'
  | 'cool'
  | 'open'
  | 'cover'
  | 'mark';

/** A step is a row of stages; each ends by a person's word (`say`), by its hold timer, or by both. */
export type Stage = {
  readonly id: string;
  readonly role: StageRole;
  /** One imperative sentence, starting with a verb. */
  readonly title: Message;
  readonly detail: readonly Message[];
  /** Label of the action that ends the stage; absent: the hold timer alone ends it. */
  readonly say?: Message;
  readonly timers: readonly TimerSpec[];
  readonly resumption: Resumption;
  /** Asked after an interruption: "Did the burner keep glowing?" */
  readonly reviewAsk?: Message;
  readonly hazards: readonly Hazard[];
};
