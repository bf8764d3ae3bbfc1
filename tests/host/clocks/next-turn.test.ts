import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newId, readClocks } from '../../../src/host/clocks/index.ts';
import { nextTurnMs } from '../../../src/host/clocks/next-turn.ts';

describe('the next turn', () => {
  it('comes just behind the next whole second while the page is seen', () => {
    expect(nextTurnMs(1000, null, true)).toBe(1005);
    expect(nextTurnMs(1250, null, true)).toBe(755);
    expect(nextTurnMs(1250, 30, true)).toBe(755);
  });

  it('comes sooner for what is due sooner', () => {
    expect(nextTurnMs(1250, 0.3, true)).toBe(305);
    expect(nextTurnMs(1250, 3, false)).toBe(3005);
  });

  it('comes within 55 s when the page is hidden', () => {
    expect(nextTurnMs(1250, null, false)).toBe(55_000);
    expect(nextTurnMs(1250, 86_400, false)).toBe(55_000);
  });

  it('never spins, never waits more than a second while seen (any clock, any due time)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e13, max: 1e13 }),
        fc.option(fc.double({ min: -1e6, max: 1e6, noNaN: true })),
        (wallMs, wakeInS) => {
          const ms = nextTurnMs(wallMs, wakeInS, true);
          expect(ms).toBeGreaterThanOrEqual(50);
          expect(ms).toBeLessThanOrEqual(1005);
        },
      ),
    );
  });
});

describe('ids and readings', () => {
  it('makes version 4 ids of RFC 9562, with and without the platform’s own maker', () => {
    const form = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
    const own = crypto.randomUUID;
    try {
      expect(newId()).toMatch(form);
      Object.defineProperty(crypto, 'randomUUID', { value: undefined, configurable: true });
      const ids = new Set(Array.from({ length: 200 }, () => newId()));
      expect(ids.size).toBe(200);
      for (const id of ids) expect(id).toMatch(form);
    } finally {
      Object.defineProperty(crypto, 'randomUUID', { value: own, configurable: true });
    }
  });

  it('reads both clocks under one session', () => {
    const [a, b] = [readClocks(), readClocks()];
    expect(a.session).toBe(b.session);
    expect(b.monoMs).toBeGreaterThanOrEqual(a.monoMs);
    expect(Math.abs(a.wallMs - Date.now())).toBeLessThan(1000);
  });
});
