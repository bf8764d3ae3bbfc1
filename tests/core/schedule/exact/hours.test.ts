import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OpenTime } from '../../../../src/core/schedule/exact/hours.ts';
import {
  forbiddenStarts,
  lastStart,
  nextStart,
} from '../../../../src/core/schedule/model/start-holes.ts';

/** Closed spans, sorted and apart, in whole ticks. */
const closedSpans = fc
  .array(fc.integer({ min: 1, max: 9 }), { maxLength: 10 })
  .map((lengths) => lengths.slice(0, lengths.length - (lengths.length % 2)))
  .map((lengths) => {
    let at = 0;
    return lengths.map((length) => (at += length));
  });

const LAST = 100;

describe('hours of the exact search', () => {
  it('forbid the starts that touch what is closed, and lead to the next and the last one that does not', () => {
    fc.assert(
      fc.property(closedSpans, fc.integer({ min: 0, max: 8 }), (closed, duration) => {
        const forbidden = forbiddenStarts(closed, duration);
        const isFree = (start: number) =>
          !closed.some(
            (from, k) => k % 2 === 0 && start < closed[k + 1]! && from < start + duration,
          );
        for (let start = 0; start < LAST; start++) {
          let next = start;
          while (!isFree(next)) next++;
          let last = start;
          while (!isFree(last)) last--;
          expect([nextStart(forbidden, start), lastStart(forbidden, start)]).toEqual([next, last]);
        }
      }),
    );
  });

  it('count open time as it is counted tick by tick, and back', () => {
    fc.assert(
      fc.property(closedSpans, (closed) => {
        const open = new OpenTime(closed);
        const isOpen = (tick: number) =>
          !closed.some((from, k) => k % 2 === 0 && from <= tick && tick < closed[k + 1]!);
        let counted = 0;
        for (let moment = 0; moment < LAST; moment++) {
          expect(open.until(moment)).toBe(counted);
          expect(open.earliest(counted)).toBeLessThanOrEqual(moment);
          expect(open.latest(counted)).toBeGreaterThanOrEqual(moment);
          expect(open.until(open.earliest(counted))).toBe(counted);
          expect(open.until(open.latest(counted))).toBe(counted);
          if (isOpen(moment)) counted++;
        }
      }),
    );
  });
});
