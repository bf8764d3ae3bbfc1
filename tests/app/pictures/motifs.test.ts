import { describe, expect, it } from 'vitest';
import { PHASE_MOTIFS, STATE_MOTIFS } from '../../../src/app/pictures/motifs/motifs.ts';

describe('patterns of the pictures', () => {
  it('mean the same in a run and in its record', () => {
    expect(PHASE_MOTIFS.purging).toBe(STATE_MOTIFS.poured);
    expect(PHASE_MOTIFS.hot).toBe(STATE_MOTIFS.heated);
    expect(PHASE_MOTIFS.covered).toBe(STATE_MOTIFS.covered);
    expect(PHASE_MOTIFS['not-purged']).toBe(STATE_MOTIFS['not-purged']);
    expect(PHASE_MOTIFS['left-out']).toBe(STATE_MOTIFS['not-done']);
    expect(PHASE_MOTIFS.done).toBe(STATE_MOTIFS.cleaned);
  });
  it('of what is still to be done in a run stand for nothing else in the record', () => {
    const recorded = new Set(Object.values(STATE_MOTIFS));
    expect(recorded.has(PHASE_MOTIFS['to-clean'])).toBe(false);
    expect(recorded.has(PHASE_MOTIFS.resting)).toBe(false);
  });
  it('are told apart within a picture', () => {
    const phases = Object.values(PHASE_MOTIFS);
    expect(new Set(phases).size).toBe(phases.length);
  });
});
