import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bandInWords,
  countdownParts,
  countdownText,
  lengthInWords,
  offsetInWords,
} from '../../../src/app/labels/time.ts';

describe('words for times', () => {
  it.each([
    [40, '40 s'],
    [340, '5 min 40 s'],
    [600, '10 min'],
    [1800, '30 min'],
    [5_400, '90 min'],
    [7_200, '2 h'],
    [86_400, '24 h'],
    [8_000, '2 h 13 min'],
  ])('%d s is "%s"', (lengthS, words) => expect(lengthInWords(lengthS)).toBe(words));

  it('counts down in minutes and seconds below an hour, in hours and minutes above', () => {
    expect(countdownText(1781)).toBe('29:41');
    expect(countdownText(59.2)).toBe('1:00');
    expect(countdownText(86_400)).toBe('24 h 00 min');
    expect(countdownText(86_399)).toBe('24 h 00 min');
    expect(countdownText(3_599)).toBe('59:59');
  });

  it('never shows less than is left of a clock that must run out', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200_000, noNaN: true }), (leftS) => {
        const [first, second] = countdownParts(leftS);
        const shownS = second
          ? Number(first?.digits) * 3600 + Number(second.digits) * 60
          : (() => {
              const [m = 0, s = 0] = (first?.digits ?? '').split(':').map(Number);
              return m * 60 + s;
            })();
        expect(shownS).toBeGreaterThanOrEqual(Math.floor(leftS));
        expect(shownS - leftS).toBeLessThan(second ? 61 : 1.001);
      }),
    );
  });

  it('names the day of an offset', () => {
    expect(offsetInWords(0)).toBe('Day 1, +0:00');
    expect(offsetInWords(86_400 + 3 * 3600 + 600)).toBe('Day 2, +3:10');
  });

  it('joins the ends of a band that round to the same', () => {
    expect(bandInWords(3, 4)).toBe('3–4');
    expect(bandInWords(2.9, 3.2)).toBe('3');
  });
});
