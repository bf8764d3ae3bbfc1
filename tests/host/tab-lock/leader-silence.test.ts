import { describe, expect, it } from 'vitest';
import { leaderSilence } from '../../../src/host/tab-lock/index.ts';

const HOUR_MS = 3_600_000;
const beat = (wallMs: number) => ({ wallMs, monoMs: 0, session: 'other' });
const now = (wallMs: number, monoMs: number) => ({ wallMs, monoMs, session: 'own' });

describe('is the writing tab still alive', () => {
  it('beats: the last heartbeat is young', () => {
    const watched = { heartbeat: beat(HOUR_MS), firstSeenMonoMs: 0 };
    expect(leaderSilence(watched, now(HOUR_MS + 20_000, 20_000))).toBe('beating');
  });

  it('is not called silent by an old heartbeat alone: the device may just have woken', () => {
    const watched = { heartbeat: beat(0), firstSeenMonoMs: 1000 };
    expect(leaderSilence(watched, now(8 * HOUR_MS, 2000))).toBe('unsure');
    expect(leaderSilence(watched, now(8 * HOUR_MS, 37_000))).toBe('silent');
  });

  it('is silent after 90 s of watching, whatever the wall clock says', () => {
    const ahead = { heartbeat: beat(5 * HOUR_MS), firstSeenMonoMs: 0 };
    expect(leaderSilence(ahead, now(HOUR_MS, 60_000))).toBe('unsure');
    expect(leaderSilence(ahead, now(HOUR_MS, 90_000))).toBe('silent');
  });

  it('is silent when it never beat while this tab watched', () => {
    const none = { heartbeat: null, firstSeenMonoMs: 0 };
    expect(leaderSilence(none, now(0, 10_000))).toBe('unsure');
    expect(leaderSilence(none, now(0, 35_000))).toBe('silent');
  });
});
