import type { Designation, MethodId, UtensilMethod } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Band } from '../../units/index.ts';
import type { Picture } from './picture.ts';
import type { Stage } from './stage.ts';

export type Phase = 'prepare' | 'clean' | 'rest' | 'purge' | 'cool' | 'cover' | 'mark';

export type StepKind =
  | 'prepare'
  | 'unplug'
  | 'thaw'
  | 'clean'
  | 'rest'
  | 'dry'
  | 'boil'
  | 'pour'
  | 'glow'
  | 'cool'
  | 'self-clean'
  | 'high-heat'
  | 'steam'
  | 'boil-over'
  | 'cover'
  | 'switch-on'
  | 'mark';

/** Who must be where: hands busy, near and watching, or free. */
type Attention = 'hands' | 'watch' | 'none';

/** This step needs that one done; `withinS`: and started no later than that after it. */
export type Need = { readonly step: string; readonly withinS?: number };

/**
 * What a step is done on, as data; its fixture stands in the step itself.
 * - `kitchen`: all of it.
 * - `fixture`: the whole of `Step.fixture`, by its method.
 * - `burner`: one burner of `Step.fixture`.
 * - `vessel`: one kettle itself, which is purged too.
 * - `kettle`: one kettle of water of those that `Step.fixture` takes: number `kettle` of `of`.
 * - `utensils`: pots, cutlery and the like, which belong to no fixture; in a `vessel` where they go
 *   into boiling water, as one `batch` where they do so with one another.
 */
export type Work =
  | { readonly on: 'kitchen' }
  | { readonly on: 'fixture'; readonly method: MethodId; readonly minutes?: number }
  | {
      readonly on: 'burner';
      readonly burner: string;
      readonly method: MethodId;
      readonly minutes?: number;
    }
  | { readonly on: 'vessel'; readonly vessel: VesselUnit; readonly litres?: number }
  | {
      readonly on: 'kettle';
      /** From 1. */
      readonly kettle: number;
      readonly of: number;
      readonly vessel: VesselUnit;
      /** Boiled in it, or poured from it. */
      readonly litres: number;
      /** Which time over the whole fixture, of how many; absent: it is poured once. */
      readonly round?: number;
      readonly rounds?: number;
    }
  | {
      readonly on: 'utensils';
      readonly items: readonly UtensilItem[];
      /** Absent: what all of them need first. */
      readonly method?: UtensilMethod;
      readonly vessel?: VesselUnit;
      readonly batch?: UtensilBatch;
    };

/** So many of one line of the kitchen's utensils. */
export type UtensilItem = {
  /** Id in the kitchen. */
  readonly utensil: string;
  readonly name: Message;
  readonly count: number;
};

/** Which batch, of how many, and what its things were used for. */
export type UtensilBatch = {
  /** From 1. */
  readonly number: number;
  readonly of: number;
  readonly group: Designation;
};

/** One vessel of those alike: the kitchen's vessel, and which of them. */
export type VesselUnit = {
  /** Id in the kitchen; of a kettle to be bought it is in no kitchen. */
  readonly id: string;
  /** Id of this one among those alike; names its resource. */
  readonly unit: string;
  readonly name: Message;
};

export type Step = {
  readonly id: string;
  readonly kind: StepKind;
  readonly phase: Phase;
  readonly fixture?: string;
  readonly work: Work;
  readonly title: Message;
  readonly reason: Message;
  readonly sources: readonly Message[];
  readonly stages: readonly Stage[];
  readonly durationS: Band;
  readonly attention: Attention;
  readonly needs: readonly Need[];
  /** `chain`: starts by itself when its needs settle after having been begun (a rest after cleaning, a cool-down). */
  readonly startsBy: 'person' | 'chain';
  readonly demands: Readonly<Record<string, number>>;
  readonly gates: readonly string[];
  readonly standing: readonly string[];
  readonly after: readonly string[];
  readonly makeSafe?: Message;
  readonly picture?: Picture;
  /**
   * Of a rest: when it was told that the thing was last used hot, ms since 1970-01-01 UTC. The
   * timetable counts from then. The run does only once a person has confirmed it: its own clock
   * is as long as the whole rest.
   */
  readonly lastHotWallMs?: number;
};
