import { describe, expect, it } from 'vitest';
import type { Alert } from '../../../src/core/run/index.ts';
import {
  trackAlerts,
  timedAlerts,
  type TrackedAlert,
} from '../../../src/host/sound/track-alerts.ts';

const alert = (inS: number, sounding = inS === 0): Alert => ({
  id: 'rest!due',
  timer: 'rest',
  family: 'due',
  inS,
  sounding,
});
const none: ReadonlyMap<string, TrackedAlert> = new Map();
const heardAll = (): boolean => true;
const heardNone = (): boolean => false;
const startOf = (tracked: ReadonlyMap<string, TrackedAlert>) => tracked.get('rest!due')?.startMonoS;

describe('an alert followed from view to view', () => {
  it('starts when it is due, and jitter of the clocks does not move it', () => {
    const first = trackAlerts(none, [alert(30)], 100, heardNone);
    const second = trackAlerts(first, [alert(28.97)], 101, heardNone);
    expect(startOf(second)).toBe(130);
    expect(timedAlerts(second, 101)).toEqual([
      { id: 'rest!due', family: 'due', round: 1, startInS: 29 },
    ]);
  });

  it('moves when the due time really moves', () => {
    const first = trackAlerts(none, [alert(30)], 100, heardNone);
    expect(startOf(trackAlerts(first, [alert(25)], 101, heardNone))).toBe(126);
  });

  it('goes on growing from its start once it was heard', () => {
    let tracked = trackAlerts(none, [alert(1)], 100, heardNone);
    tracked = trackAlerts(tracked, [alert(0)], 101.4, heardAll);
    tracked = trackAlerts(tracked, [alert(0)], 140, heardAll);
    expect(startOf(tracked)).toBe(101);
    expect(tracked.get('rest!due')).toMatchObject({ round: 1, heard: true });
  });

  it('starts afresh, now, when it should have sounded and did not', () => {
    let tracked = trackAlerts(none, [alert(1)], 100, heardNone);
    tracked = trackAlerts(tracked, [alert(0)], 101.2, heardNone);
    expect(startOf(tracked)).toBe(101);
    tracked = trackAlerts(tracked, [alert(0)], 108, heardNone);
    expect(tracked.get('rest!due')).toMatchObject({ startMonoS: 108, round: 2, heard: false });
  });

  it('starts at once when it came due earlier than foreseen', () => {
    const first = trackAlerts(none, [alert(60)], 100, heardNone);
    expect(startOf(trackAlerts(first, [alert(0)], 103, heardNone))).toBe(103);
  });

  it('is forgotten when it is answered', () => {
    const first = trackAlerts(none, [alert(0)], 100, heardNone);
    expect(trackAlerts(first, [], 101, heardAll).size).toBe(0);
  });

  it('is a new sound when it was extended after being heard', () => {
    const first = trackAlerts(none, [alert(0)], 100, heardNone);
    const second = trackAlerts(first, [alert(60)], 105, heardAll);
    expect(second.get('rest!due')).toMatchObject({ startMonoS: 165, round: 2, heard: false });
  });
});
