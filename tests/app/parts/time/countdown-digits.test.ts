import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countdown, countdownDigits } from '../../../../src/app/parts/time/countdown-digits.ts';
import { inEnglish } from '../../../support/english.ts';

describe('the huge digits', () => {
  it('count in minutes and seconds below an hour, in hours and minutes above', () => {
    expect(countdownDigits(1781)).toEqual({ minutes: 29, seconds: 41 });
    expect(countdownDigits(59.2)).toEqual({ minutes: 1, seconds: 0 });
    expect(countdownDigits(86_400)).toEqual({ hours: 24, minutes: 0 });
    expect(countdownDigits(86_399)).toEqual({ hours: 24, minutes: 0 });
    expect(countdownDigits(3_599)).toEqual({ minutes: 59, seconds: 59 });
    expect(countdownDigits(-3_659)).toEqual({ hours: 1, minutes: 0 });
  });

  it('are told in one line too', () => {
    expect(inEnglish.say(countdown(1781))).toBe('29:41');
    expect(inEnglish.say(countdown(86_400))).toBe('24 h 00 min');
  });

  it('never show less than is left of a timer that must run out', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200_000, noNaN: true }), (leftS) => {
        const digits = countdownDigits(leftS);
        const fine = 'seconds' in digits;
        const shownS = fine
          ? digits.minutes * 60 + digits.seconds
          : digits.hours * 3600 + digits.minutes * 60;
        expect(shownS).toBeGreaterThanOrEqual(Math.floor(leftS));
        expect(shownS - leftS).toBeLessThan(fine ? 1.001 : 61);
      }),
    );
  });
});
