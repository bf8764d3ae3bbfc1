import { describe, expect, it } from 'vitest';
import { localDateTime, momentIn } from '../../../../src/app/parts/time/local-date-time.ts';

const AT_MS = Date.parse('2027-03-14T18:30:00Z');

describe('a picker of date and time', () => {
  // Offsets of IANA tzdata: New York is on summer time from 2027-03-14 07:00Z.
  it.each([
    ['UTC', '2027-03-14T18:30'],
    ['America/New_York', '2027-03-14T14:30'],
    ['Asia/Jerusalem', '2027-03-14T20:30'],
    ['Asia/Kolkata', '2027-03-15T00:00'],
  ])('shows the clock on the wall of %s and reads it back', (zone, shown) => {
    expect(localDateTime(AT_MS, zone)).toBe(shown);
    expect(momentIn(shown, zone)).toBe(AT_MS);
  });

  it.each(['', '2027-03-14', '2027-03-14T25:00', 'soon'])('takes %o for half a date', (text) => {
    expect(momentIn(text, 'UTC')).toBeUndefined();
  });
});
