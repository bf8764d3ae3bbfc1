import { createSignal } from 'solid-js';
import type { AlertFamily } from '../../../core/run/index.ts';

/** What a household chooses about the run's screen and sound; each is a yes or a no. */
export type RunChoices = {
  /** The forward pedal presses the main action; else it moves the stage. */
  readonly pedalActs: boolean;
  /** Prompts are spoken by a voice of the device. */
  readonly spoken: boolean;
  /** The sound of "should be so by now". */
  readonly soonSounds: boolean;
  /** The sound of "a wait is over". */
  readonly doneSounds: boolean;
};

export const USUAL_CHOICES: RunChoices = {
  pedalActs: false,
  spoken: false,
  soonSounds: true,
  doneSounds: true,
};

const NAMES = Object.keys(USUAL_CHOICES) as readonly (keyof RunChoices)[];
const STORED_AS = 'run-choice-';

/** Which families may sound. What must be answered, and what is a hazard, always does. */
export function mayBeHeard(choices: RunChoices, family: AlertFamily): boolean {
  if (family === 'soon') return choices.soonSounds;
  if (family === 'done') return choices.doneSounds;
  return true;
}

/** The choices as stored; what is missing or no yes or no is as usual. */
export function readChoices(stored: Readonly<Record<string, unknown>>): RunChoices {
  const read = { ...USUAL_CHOICES };
  for (const name of NAMES) {
    const value = stored[STORED_AS + name];
    if (typeof value === 'boolean') read[name] = value;
  }
  return read;
}

/** The choices as a signal; each change is kept under its own name. */
export function createRunChoices(keep: (name: string, value: boolean) => void) {
  const [choices, setChoices] = createSignal<RunChoices>(USUAL_CHOICES);
  return {
    choices,
    restore: (stored: Readonly<Record<string, unknown>>) => setChoices(readChoices(stored)),
    choose(name: keyof RunChoices, value: boolean): void {
      setChoices((before) => ({ ...before, [name]: value }));
      keep(STORED_AS + name, value);
    },
  };
}
