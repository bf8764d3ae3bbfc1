import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inEnglish } from '../../support/english.ts';

const { duration, about, range, clock, day, dateTime, plural, list } = inEnglish.format;

describe('a length of time', () => {
  it('is told as people say it', () => {
    expect(
      [0, 59, 60, 245, 600, 3599, 3600, 5400, 86_400].map((lengthS) => duration(lengthS, 'down')),
    ).toEqual([
      '0 s',
      '59 s',
      '1 min',
      '4 min 5 s',
      '10 min',
      '59 min',
      '1 h',
      '1 h 30 min',
      '24 h',
    ]);
  });

  it('never claims more than there was, and hides less than a minute', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (lengthS) => {
        const told = [...duration(lengthS, 'down').matchAll(/(\d+) (h|min|s)/g)].reduce(
          (sum, [, number, unit]) =>
            sum + Number(number) * ({ h: 3600, min: 60, s: 1 }[unit ?? ''] ?? Number.NaN),
          0,
        );
        expect(told).toBeLessThanOrEqual(lengthS + 1e-6);
        expect(lengthS - told).toBeLessThan(60);
      }),
    );
  });
});

describe('an estimate of time', () => {
  it('is told to five seconds below ten minutes, to the minute above', () => {
    expect([45, 89, 90, 142, 599, 600, 3599, 5700].map((lengthS) => duration(lengthS))).toEqual([
      '45 s',
      '89 s',
      '1 min 30 s',
      '2 min 20 s',
      '10 min',
      '10 min',
      '1 h',
      '1 h 35 min',
    ]);
  });

  it('is told in round figures where a person is told one number', () => {
    expect([2, 29, 54, 75, 125, 555, 1590, 3580, 5700, 15_540].map(about)).toEqual([
      'about 10 s',
      'about 30 s',
      'about 50 s',
      'about 1 min',
      'about 2 min',
      'about 9 min',
      'about 27 min',
      'about 1 h',
      'about 1 h 35 min',
      'about 4 h 20 min',
    ]);
  });
});

describe('numbers, times and lists', () => {
  it('are written as English writes them', () => {
    expect(range(3, 4)).toBe('3–4');
    expect(range(3.01, 3.02)).toBe('3');
    const noonMs = Date.UTC(2026, 2, 29, 15, 5);
    expect(clock(noonMs, 'Asia/Jerusalem')).toBe('18:05');
    expect(day(noonMs, 'Asia/Jerusalem')).toBe('Sunday 29 March');
    expect(dateTime(noonMs, 'UTC')).toBe('Sun 29 Mar, 15:05');
    expect(plural(1, { one: 'kettle', other: 'kettles' })).toBe('kettle');
    expect(list(['a', 'b', 'c'])).toBe('a, b and c');
  });

  it('has a dash for a moment that is no date, as a page must not end by it', () => {
    for (const none of [1e16, -1e16, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(clock(none, 'UTC')).toBe('–');
      expect(day(none, 'UTC')).toBe('–');
      expect(dateTime(none, 'UTC')).toBe('–, –');
    }
    expect(day(8.64e15, 'UTC')).toBe('Saturday 13 September');
  });
});
