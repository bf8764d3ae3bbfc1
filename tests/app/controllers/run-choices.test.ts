import { describe, expect, it } from 'vitest';
import {
  mayBeHeard,
  readChoices,
  USUAL_CHOICES,
} from '../../../src/app/controllers/run/run-choices.ts';

const silent = { ...USUAL_CHOICES, soonSounds: false, doneSounds: false };

describe('what a household chooses', () => {
  it('never silences what must be answered, nor a hazard', () => {
    expect(mayBeHeard(silent, 'due')).toBe(true);
    expect(mayBeHeard(silent, 'hazard')).toBe(true);
  });
  it('silences each of the others by itself', () => {
    expect(mayBeHeard(silent, 'soon')).toBe(false);
    expect(mayBeHeard(silent, 'done')).toBe(false);
    expect(mayBeHeard({ ...silent, soonSounds: true }, 'soon')).toBe(true);
    expect(mayBeHeard({ ...silent, soonSounds: true }, 'done')).toBe(false);
  });
  it('is as usual where nothing, or no yes or no, was stored', () => {
    expect(readChoices({})).toEqual(USUAL_CHOICES);
    expect(readChoices({ 'run-choice-pedalActs': 'yes', 'run-choice-spoken': 1 })).toEqual(
      USUAL_CHOICES,
    );
    expect(readChoices({ 'run-choice-pedalActs': true, theme: 'night' })).toEqual({
      ...USUAL_CHOICES,
      pedalActs: true,
    });
  });
});
