import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Alert } from '../../../src/core/run/index.ts';
import { createSound, type Sound } from '../../../src/host/sound/index.ts';
import type { SoundBank } from '../../../src/host/sound/sound-bank.ts';

/** Looks of a page that is hidden for long are this far apart, s, and one of them may be missed. */
const LOOK_S = 60;
/** How late a look may run, s. */
const LATE_S = 5;

/** Starts of sounds on the audio clock that were not taken off it again, s. */
const begins = new Set<number>();

/** An audio clock that runs with that of the page, with the little of it that is used. */
const audio = {
  state: 'running',
  destination: {},
  get currentTime() {
    return performance.now() / 1000;
  },
  addEventListener: () => undefined,
  resume: () => Promise.resolve(),
  createGain: () => ({ gain: { value: 1 }, connect: () => undefined }),
  createBufferSource: () => {
    let beginS = NaN;
    return {
      connect: (to: unknown) => to,
      disconnect: () => undefined,
      start: (whenS: number) => begins.add((beginS = whenS)),
      stop: () => begins.delete(beginS),
    };
  },
};

vi.mock('../../../src/host/sound/sound-bank.ts', () => ({
  createSoundBank: (): SoundBank => ({
    context: () => audio as unknown as AudioContext,
    status: () => 'ready',
    bufferOf: () => ({ duration: 1 }) as AudioBuffer,
    play: () => undefined,
    load: () => Promise.resolve(),
  }),
}));

const alert = (inS: number): Alert => ({
  id: `t${inS}!due`,
  timer: `t${inS}`,
  family: 'due',
  inS,
  sounding: false,
});

describe('what is handed to the audio clock at one look of a hidden page', () => {
  let sound: Sound;
  beforeEach(async () => {
    vi.useFakeTimers();
    vi.stubGlobal('navigator', {});
    begins.clear();
    sound = createSound({ onHealth: () => undefined });
    const armed = sound.arm();
    await vi.advanceTimersByTimeAsync(2000);
    expect((await armed).light).toBe('armed');
  });
  afterEach(() => {
    sound.stop();
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('is all that comes due before the next but one', () => {
    for (const inS of [1, LOOK_S, LOOK_S + LATE_S, 2 * LOOK_S, 2 * LOOK_S + LATE_S]) {
      sound.syncAlerts([alert(inS)]);
      expect([inS, sound.isHanded(alert(inS).id)]).toEqual([inS, true]);
    }
  });

  it('is taken off it where its clock ended, and moved where it was made longer', () => {
    const [nowS, one] = [performance.now() / 1000, alert(2 * LOOK_S)];
    sound.syncAlerts([one]);
    expect(Math.min(...begins)).toBeCloseTo(nowS + 2 * LOOK_S, 3);
    sound.syncAlerts([{ ...one, inS: one.inS + LATE_S }]);
    expect(Math.min(...begins)).toBeCloseTo(nowS + 2 * LOOK_S + LATE_S, 3);
    sound.syncAlerts([]);
    expect(begins.size).toBe(0);
  });
});
