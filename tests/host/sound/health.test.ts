import { describe, expect, it } from 'vitest';
import { judgeSound } from '../../../src/host/sound/health.ts';

const pairs = (rate: number, count = 4, stepMs = 500) =>
  Array.from({ length: count }, (_, i) => ({
    monoMs: 1000 + i * stepMs,
    audioS: 3 + (i * stepMs * rate) / 1000,
  }));

const facts = {
  state: 'running',
  gesture: true,
  sounds: 'ready',
  pairs: pairs(1),
} as const;

describe('the sound light', () => {
  it('is armed only when the audio clock really advances', () => {
    expect(judgeSound(facts)).toEqual({ light: 'armed', reason: 'running' });
    expect(judgeSound({ ...facts, pairs: pairs(0.93) }).light).toBe('armed');
  });

  it('is blocked when the context says running and its clock stands', () => {
    expect(judgeSound({ ...facts, pairs: pairs(0) })).toEqual({
      light: 'blocked',
      reason: 'stuck',
    });
    expect(judgeSound({ ...facts, pairs: pairs(0.2) }).reason).toBe('stuck');
  });

  it('sees a clock that stops after it had run', () => {
    const ran = pairs(1, 4);
    const last = ran.at(-1) ?? { monoMs: 0, audioS: 0 };
    const stands = [1, 2].map((i) => ({ monoMs: last.monoMs + i * 500, audioS: last.audioS }));
    expect(judgeSound({ ...facts, pairs: [...ran, ...stands] }).reason).toBe('stuck');
  });

  it('is unknown until there is enough to judge by', () => {
    expect(judgeSound({ ...facts, pairs: [] }).light).toBe('unknown');
    expect(judgeSound({ ...facts, pairs: pairs(1, 2) })).toEqual({
      light: 'unknown',
      reason: 'measuring',
    });
    expect(judgeSound({ ...facts, sounds: 'loading' }).reason).toBe('loading');
  });

  it('asks for a touch when nobody touched yet, and is blocked when a touch did not help', () => {
    const asleep = { ...facts, state: 'suspended', pairs: pairs(0) };
    expect(judgeSound({ ...asleep, gesture: false })).toEqual({
      light: 'touch-to-arm',
      reason: 'no-gesture',
    });
    expect(judgeSound(asleep)).toEqual({ light: 'blocked', reason: 'suspended' });
  });

  it('is blocked without audio, without sounds, and during a call', () => {
    expect(judgeSound({ ...facts, state: undefined }).reason).toBe('no-audio');
    expect(judgeSound({ ...facts, state: 'closed' }).reason).toBe('no-audio');
    expect(judgeSound({ ...facts, sounds: 'failed' }).reason).toBe('no-sounds');
    expect(judgeSound({ ...facts, state: 'interrupted' }).reason).toBe('interrupted');
  });
});
