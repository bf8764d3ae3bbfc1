import { inEnglish } from '../../support/english.ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  civilDate,
  dateText,
  dayNumber,
  momentOf,
  parseDate,
  parseMoment,
  restDays,
  sunTimes,
  wallTime,
  weekday,
} from '../../../src/core/calendar/index.ts';

const DAY_MS = 86_400_000;
const ZONES = [
  'UTC',
  'Asia/Jerusalem',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kathmandu',
  'Pacific/Apia',
];

describe('civil days', () => {
  it('are numbered as the engine numbers them', () => {
    fc.assert(
      fc.property(fc.integer({ min: -7305, max: 47_846 }), (number) => {
        const js = new Date(number * DAY_MS);
        expect(dateText(civilDate(number))).toBe(js.toISOString().slice(0, 10));
        expect(dayNumber(civilDate(number))).toBe(number);
        expect(weekday(number)).toBe(js.getUTCDay());
      }),
    );
  });

  it.each(['2026-02-29', '2026-13-01', '2026-4-1', '1949-12-31', '2101-01-01', ''])(
    'refuse "%s"',
    (text) => {
      expect(() => parseDate('date', text)).toThrow(/date is .*allowed: a date yyyy-mm-dd/);
    },
  );
});

describe('the wall clock of a zone', () => {
  it('comes back to the moment it was read at, but for the hour that comes twice', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 33_000_000 }),
        fc.constantFrom(...ZONES),
        (minutes, zone) => {
          const atMs = minutes * 60_000;
          const wall = wallTime(atMs, zone);
          const back = momentOf(wall, zone);
          expect(wallTime(back, zone)).toEqual(wall);
          expect([0, 30, 60]).toContain((atMs - back) / 60_000);
        },
      ),
    );
  });

  it('takes the first of an hour that comes twice, and moves on what the clock skips', () => {
    const zone = 'America/New_York';
    const at = (text: string) => new Date(parseMoment('start', text, zone)).toISOString();
    expect(at('2026-11-01T01:30')).toBe('2026-11-01T05:30:00.000Z');
    expect(at('2026-03-08T02:30')).toBe('2026-03-08T07:30:00.000Z');
    expect(at('2026-03-08T02:30+02:00')).toBe('2026-03-08T00:30:00.000Z');
    expect(at('2026-03-08T02:30Z')).toBe('2026-03-08T02:30:00.000Z');
  });

  it('refuses what is no time, and a time without offset where no zone is known', () => {
    expect(() => parseMoment('start', '2026-03-08 02:30', 'UTC')).toThrow('allowed: a date and');
    expect(() => parseMoment('start', '2026-03-08T24:30', 'UTC')).toThrow('allowed: a date and');
    expect(() => parseMoment('start', '2026-03-08T02:30', undefined)).toThrow('offset');
    expect(() => wallTime(0, 'Mars/Olympus')).toThrow('allowed: an IANA time-zone name');
  });
});

describe('where the sun does not rise or set', () => {
  const north = { latDeg: 70, lonDeg: 25, zone: 'Europe/Oslo' };

  it('there are no hours', () => {
    const summer = sunTimes({ ...north, date: { year: 2026, month: 6, day: 21 } });
    expect([summer.sunriseAtMs, summer.sunsetAtMs, summer.nightfallAtMs]).toEqual([
      null,
      null,
      null,
    ]);
    const winter = sunTimes({ ...north, date: { year: 2026, month: 12, day: 21 } });
    expect([winter.sunriseAtMs, winter.sunsetAtMs]).toEqual([null, null]);
    // It never rises and yet gets darker still: the sun passes 8.5° below the horizon.
    expect(winter.nightfallAtMs).not.toBeNull();
  });
});

describe('rest days', () => {
  const spot = { latDeg: 40.7, lonDeg: -74, zone: 'America/New_York' } as const;

  it.each([
    // Read off the calendar of 2026 and 2027; confidence: computed, the days are checked elsewhere.
    ['2026-05-20', 5, 'diaspora', ['Shavuot and Sabbath']],
    ['2026-05-20', 5, 'israel', ['Shavuot and Sabbath']],
    ['2026-09-09', 5, 'israel', ['Rosh Hashana and Sabbath']],
    ['2026-04-07', 4, 'diaspora', ['Passover, last days', 'Sabbath']],
    ['2027-04-20', 10, 'diaspora', ['Passover and Sabbath', 'Passover, last days']],
  ] as const)('%s and %i days on, %s', (from, days, land, names) => {
    const spans = restDays({ ...spot, from: parseDate('from', from), days, land });
    for (const { name } of spans) expect(inEnglish.say(name)).toMatch(/^[A-Z]/);
    expect(spans.map(({ name }) => inEnglish.say(name))).toEqual(names);
  });

  it('are whole and apart, whatever day is asked about first', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 19_723, max: 23_741 }),
        fc.integer({ min: 1, max: 30 }),
        (first, days) => {
          const wide = restDays({
            ...spot,
            from: civilDate(first - 10),
            days: days + 20,
            land: 'diaspora',
          });
          const some = restDays({ ...spot, from: civilDate(first), days, land: 'diaspora' });
          for (const span of some) expect(wide).toContainEqual(span);
          for (const [at, span] of some.entries())
            expect(span.startsAtMs ?? 0).toBeGreaterThan(some[at - 1]?.endsAtMs ?? 0);
        },
      ),
      { numRuns: 40 },
    );
  });
});
