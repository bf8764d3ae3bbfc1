import { unkeyed } from '../../messages/temporary.ts';
import type { Burner, Fixture, Kitchen, VesselKind } from '../../kitchen/index.ts';
import type { Choice, BurnerChoice, CustomTable } from '../../custom/index.ts';
import type { BoilEstimate, BurnerEstimate, Kettle, AtOnce } from '../estimates/index.ts';
import type { Calibration, Stage, Step, StepKind, TimerSpec } from '../model/types.ts';

/** Everything the builders of steps look at; made once a plan. */
export type PlanContext = {
  readonly kitchen: Kitchen;
  readonly custom: CustomTable;
  readonly boilingC: number;
  readonly choices: ReadonlyMap<string, Choice>;
  readonly burners: ReadonlyMap<string, BurnerChoice & { readonly reckoned?: BurnerEstimate }>;
  readonly kettles: readonly Kettle[];
  /** What each kettle is filled with, L. */
  readonly filledL: number;
  readonly boils: ReadonlyMap<string, BoilEstimate>;
  readonly room: AtOnce;
  /** What of earlier runs' lessons this kitchen can use; in `burners` and `boils` it is used already. */
  readonly calibration?: Calibration;
};

/** What a step is about, for the triggers of the cautions. */
export type About = {
  readonly fixture?: Fixture;
  readonly burner?: Burner;
  readonly vessel?: VesselKind;
  readonly fuel?: 'gas' | 'electric';
  /** The fixture rests after this step. */
  readonly rests?: boolean;
};

/** A step before its cautions are attached, with what orders it in the timetable only. */
export type StepDraft = {
  readonly step: Step;
  readonly about: About;
  /** Steps that the timetable puts earlier; the run does not insist. */
  readonly follows: readonly string[];
};

type Needed = Pick<Step, 'id' | 'kind' | 'phase' | 'title' | 'reason' | 'stages' | 'durationS'>;
type More = Partial<Omit<Step, keyof Needed>>;

const WATCHED: ReadonlySet<StepKind> = new Set([
  'boil',
  'glow',
  'self-clean',
  'high-heat',
  'steam',
]);

/** A draft; a person starts it with one pair of hands unless told otherwise. */
export function stepDraft(
  needed: Needed,
  more: More = {},
  about: About = {},
  follows: readonly string[] = [],
): StepDraft {
  const attention = more.attention ?? (WATCHED.has(needed.kind) ? 'watch' : 'hands');
  return {
    step: {
      sources: [],
      needs: [],
      startsBy: 'person',
      gates: [],
      standing: [],
      after: [],
      ...more,
      ...needed,
      attention,
      demands: { ...(attention === 'hands' && { hands: 1 }), ...more.demands },
    },
    about,
    follows,
  };
}

/** A stage that loses nothing by an interruption, unless told otherwise. */
export function stage(id: string, title: string, more: Partial<Stage> = {}): Stage {
  return {
    id,
    title: unkeyed(title),
    detail: [],
    timers: [],
    resumption: 'continue',
    hazards: [],
    ...more,
  };
}

/** Heat that has done its work is asked about again after this, s: common practice, no published source. */
const OFF_REMIND_S = 60;

/** Reminds whoever stopped looking when the clock ran out. */
export function offReminder(label: string): TimerSpec {
  return {
    id: 'off',
    role: 'reminder',
    purpose: 'at-most',
    lengthS: OFF_REMIND_S,
    label: unkeyed(label),
    repeats: true,
  };
}
