import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { utcText } from '../../../../src/core/report/ical/utc.ts';

const EARLIEST_MS = Date.parse('0000-01-01T00:00:00Z');
const LATEST_MS = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

/** The date functions of ECMAScript, in the form of the standard. */
const reference = (wallMs: number): string =>
  `${new Date(wallMs).toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`;

describe('a moment in UTC', () => {
  it('writes the examples of the standard', () => {
    // Check: RFC 5545, 3.3.5, read in a copy; exact. 07:00 UTC on 19 January 1998; 17:30 UTC on 14 July 1997.
    expect(utcText('at', Date.UTC(1998, 0, 19, 7))).toBe('19980119T070000Z');
    expect(utcText('at', Date.UTC(1997, 6, 14, 17, 30))).toBe('19970714T173000Z');
  });

  it('agrees with the date functions of ECMAScript at every edge of the calendar', () => {
    // Check: ECMAScript Date of the runtime, computed; exact.
    for (const year of [
      '0000',
      '0004',
      '0100',
      '0400',
      '1900',
      '1970',
      '2000',
      '2026',
      '2100',
      '9998',
    ]) {
      for (const day of ['01-01', '02-28', '03-01', '12-31']) {
        const lastSecondMs = Date.parse(`${year}-${day}T23:59:59Z`);
        expect(utcText('at', lastSecondMs)).toBe(reference(lastSecondMs));
        expect(utcText('at', lastSecondMs + 1000)).toBe(reference(lastSecondMs + 1000));
      }
    }
    expect(utcText('at', EARLIEST_MS)).toBe('00000101T000000Z');
    expect(utcText('at', LATEST_MS)).toBe('99991231T235959Z');
  });

  it('agrees with them at any moment of its range', () => {
    // Check: ECMAScript Date of the runtime, computed; exact.
    fc.assert(
      fc.property(fc.double({ min: EARLIEST_MS, max: LATEST_MS, noNaN: true }), (wallMs) => {
        expect(utcText('at', wallMs)).toBe(reference(Math.floor(wallMs)));
      }),
      { numRuns: 2000 },
    );
  });

  it('refuses what four digits of a year cannot hold', () => {
    for (const wrong of [LATEST_MS + 1, EARLIEST_MS - 1, Number.NaN, Infinity]) {
      expect(() => utcText('startMs', wrong)).toThrow(
        /^startMs is .*allowed: .*years 0000 to 9999/,
      );
    }
  });
});
