import { describe, expect, it } from 'vitest';
import {
  agreement,
  carry,
  elapsed,
  gainInSession,
  gainOverGap,
  startInterval,
} from '../../../../src/core/run/model/elapsed-interval.ts';
import type { Readings } from '../../../../src/core/run/index.ts';

const at = (wallS: number, monoS: number, session = 'a'): Readings => ({
  wallMs: wallS * 1000,
  monoMs: monoS * 1000,
  session,
});

/** Tolerance of two clocks that agree, s; common practice, no published source. */
const TOLERANCE_S = 5;

describe('elapsed time by two clocks', () => {
  // Verifies: I-08
  it('agrees: no less than the monotonic clock, no more than the tolerance above it', () => {
    const gain = gainInSession(at(0, 0), at(1000, 1000));
    expect(agreement(at(0, 0), at(1000, 1000))).toBe('agree');
    expect(gain.atLeastS).toBeCloseTo(1000 * (1 - 1e-4), 6);
    expect(gain.atMostS).toBeCloseTo(1000 * (1 + 1e-4) + TOLERANCE_S, 6);
    expect(gain).toMatchObject({ claimS: 0, bound: 'finite' });
  });

  it('slept or set forward: at least the monotonic, at most the wall', () => {
    const gain = gainInSession(at(0, 0), at(8 * 3600, 600));
    expect(agreement(at(0, 0), at(8 * 3600, 600))).toBe('slept');
    expect(gain.atLeastS).toBeCloseTo(600, 0);
    expect(gain.atMostS).toBeCloseTo(8 * 3600 + TOLERANCE_S, 6);
    expect(gain.claimS).toBe(8 * 3600 - 600);
  });

  it('set back: at least the monotonic, and nothing bounds it', () => {
    expect(agreement(at(7200, 0), at(3600, 600))).toBe('back');
    const span = carry(
      startInterval(at(7200, 0), 'known'),
      gainInSession(at(7200, 0), at(3600, 600)),
      at(3600, 600),
    );
    expect(elapsed(span, at(3600, 600)).atLeastS).toBeCloseTo(600, 0);
    expect(elapsed(span, at(3600, 600)).atMostS).toBe(Infinity);
  });

  it('a new page: at least until the last proof of life, at most the wall', () => {
    const gain = gainOverGap(at(0, 0), at(120, 120), at(900, 3, 'b'), 0);
    expect(gain.atLeastS).toBeCloseTo(120, 0);
    expect(gain.atMostS).toBeGreaterThanOrEqual(900);
    expect(gain.atMostS).toBeLessThan(900 + 3 * TOLERANCE_S);
    expect(gain).toMatchObject({ claimS: 780, bound: 'finite' });
  });

  it('a new page with a wall clock before the last proof of life, or before the app was built', () => {
    expect(gainOverGap(at(5000, 0), at(5120, 120), at(900, 3, 'b'), 0).bound).toBe('until-clock');
    expect(gainOverGap(at(5000, 0), at(5120, 120), at(6000, 3, 'b'), 7_000_000).bound).toBe(
      'until-clock',
    );
  });

  it('a heartbeat of another page proves nothing', () => {
    expect(gainOverGap(at(0, 0), at(500, 500, 'x'), at(900, 3, 'b'), 0).atLeastS).toBe(0);
  });
});
