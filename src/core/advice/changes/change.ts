import { withAnswer, type RowAnswer } from '../../custom/index.ts';
import type { Kitchen, Override, Vessel } from '../../kitchen/index.ts';
import type { PlanOptions } from '../../plan/index.ts';

/** What a plan is made of: everything that a change can change. */
export type Situation = { readonly kitchen: Kitchen; readonly options: PlanOptions };

/** A vessel that comes to the kitchen, or one more of a vessel that is there. */
type MoreWater = {
  readonly kind: 'kettle' | 'stove-kettle' | 'urn';
  readonly vessel: Vessel;
  /** The circuit or burner it is on, as the household calls it. */
  readonly on?: string;
};

/** One thing a household could do otherwise, as data: taken by `withChange`. */
export type Change =
  | MoreWater
  | { readonly kind: 'people'; readonly people: number }
  /** ms since 1970-01-01 UTC. */
  | { readonly kind: 'start'; readonly startWallMs: number }
  /** Nothing here was used hot since; local date and time, yyyy-mm-ddThh:mm. */
  | { readonly kind: 'last-hot'; readonly lastHotAt: string }
  /** An answer that is known to be given; nobody gave it yet. */
  | {
      readonly kind: 'answer';
      readonly question: string;
      readonly answer: RowAnswer;
      readonly override: Override;
    }
  /** Covered, or closed up, in place of being purged; nobody said so yet. */
  | { readonly kind: 'cover'; readonly override: Override };

export type ChangeKind = Change['kind'];

function withVessel(kitchen: Kitchen, vessel: Vessel): Kitchen {
  const others = kitchen.vessels.filter(({ id }) => id !== vessel.id);
  const isThere = others.length < kitchen.vessels.length;
  const vessels = isThere
    ? kitchen.vessels.map((one) => (one.id === vessel.id ? vessel : one))
    : [...kitchen.vessels, vessel];
  return { ...kitchen, vessels };
}

function withHousehold(kitchen: Kitchen, change: Partial<Kitchen['household']>): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

/** The situation as it is once a change is taken; what it does not touch stays as it was. */
export function withChange({ kitchen, options }: Situation, change: Change): Situation {
  switch (change.kind) {
    case 'kettle':
    case 'stove-kettle':
    case 'urn':
      return { kitchen: withVessel(kitchen, change.vessel), options };
    case 'people':
      return { kitchen: withHousehold(kitchen, { people: change.people }), options };
    case 'last-hot':
      return { kitchen: withHousehold(kitchen, { lastHotAt: change.lastHotAt }), options };
    case 'answer':
    case 'cover':
      return { kitchen: withAnswer(kitchen, change.override), options };
    case 'start':
      return { kitchen, options: { ...options, startWallMs: change.startWallMs } };
  }
}
