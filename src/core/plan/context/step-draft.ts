import type { Message } from '../../messages/index.ts';
import type { Burner, Fixture, VesselKind } from '../../kitchen/index.ts';
import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import type { Stage, StageRole, Step, StepKind, TimerSpec } from '../model/index.ts';
import type { Fuel } from './purging.ts';

/** What a step is about, for the triggers of the cautions. */
export type About = {
  readonly fixture?: Fixture;
  readonly burner?: Burner;
  readonly vessel?: VesselKind;
  readonly fuel?: Fuel;
  /** The fixture rests after this step. */
  readonly rests?: boolean;
};

/** A step before its cautions are attached, with what orders it in the timetable only. */
export type StepDraft = {
  readonly step: Step;
  readonly about: About;
  /** Steps that the timetable puts earlier; the run does not insist. */
  readonly follows: readonly string[];
  /** How the timetable ties it to others besides; the run does not insist. */
  readonly ties: readonly Tie[];
  /** A rest that began before the work: not over before this, s after the start. Its length follows from the timetable. */
  readonly overS?: number;
};

/** Not before the other step has begun (`start`) or is over (`end`); and no more than `mostS` after that. */
export type Tie = { readonly step: string; readonly to: 'start' | 'end'; readonly mostS?: number };

type Needed = Pick<
  Step,
  'id' | 'kind' | 'phase' | 'work' | 'title' | 'reason' | 'stages' | 'durationS'
>;
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
  ties: readonly Tie[] = [],
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
    ties,
  };
}

/** A stage that loses nothing by an interruption, unless told otherwise. A step has one of each role, so its role is its id. */
export function stage(
  role: StageRole,
  title: Message,
  more: Partial<Omit<Stage, 'id' | 'role' | 'title'>> = {},
): Stage {
  return {
    id: role,
    role,
    title,
    detail: [],
    timers: [],
    resumption: 'continue',
    hazards: [],
    ...more,
  };
}

/** A hold of so many minutes that must not be broken. */
export function unbrokenHold(minutes: number, label: Message): TimerSpec {
  return {
    id: 'hold',
    role: 'hold',
    purpose: 'unbroken',
    lengthS: minutes * SECONDS_PER_MINUTE,
    label,
  };
}

/** "It should be so by about now": a look, never a fault. */
export function estimateTimer(id: string, lengthS: number, label: Message): TimerSpec {
  return { id, role: 'estimate', purpose: 'at-least', lengthS, label };
}

/** Asks again and again while its stage lasts. */
export function reminder(id: string, lengthS: number, label: Message): TimerSpec {
  return { id, role: 'reminder', purpose: 'at-most', lengthS, label, repeats: true };
}

/** Heat that has done its work is asked about again after this, s: common practice, no published source. */
const OFF_REMIND_S = 60;

/** Reminds whoever stopped looking when the hold was over. */
export function offReminder(label: Message): TimerSpec {
  return reminder('off', OFF_REMIND_S, label);
}
