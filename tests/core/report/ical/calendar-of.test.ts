import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarOf, type CalendarEvent } from '../../../../src/core/report/index.ts';

const STAMP_MS = Date.UTC(2026, 2, 1, 18);
const HOUR_MS = 3_600_000;

const rest: CalendarEvent = {
  uid: 'rest-sink@example.invalid',
  startMs: Date.UTC(2026, 2, 2, 18, 10),
  title: 'Rest over: Sink, left; "the deep one"',
  text: 'Until then do not use it.\nPath: C:\\kitchen',
};

/** Reads a calendar with a library that this project did not make. */
function read(calendar: string): readonly ICAL.Event[] {
  const component = new ICAL.Component(ICAL.parse(calendar) as unknown[]);
  return component.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
}

const ms = (time: ICAL.Time): number => time.toJSDate().getTime();

describe('a calendar', () => {
  it('is read by another library as it was meant', () => {
    // Check: ical.js 2.2.1 (reads RFC 5545), computed; exact.
    const purge = { ...rest, uid: 'purge', endMs: rest.startMs + HOUR_MS };
    const [first, second, ...more] = read(calendarOf([rest, purge], STAMP_MS));
    expect(more).toEqual([]);
    expect(first).toMatchObject({ uid: rest.uid, summary: rest.title, description: rest.text });
    expect(first && ms(first.startDate)).toBe(rest.startMs);
    expect(first && ms(first.endDate)).toBe(rest.startMs);
    expect(second && ms(second.endDate)).toBe(purge.endMs);
    expect(second?.startDate.zone).toBe(ICAL.Timezone.utcTimezone);
  });

  it('carries what the standard asks of every calendar and event', () => {
    // Check: RFC 5545, 3.6 and 3.6.1 (PRODID and VERSION; UID, DTSTAMP and DTSTART once each), from memory; exact.
    const component = new ICAL.Component(ICAL.parse(calendarOf([rest], STAMP_MS)) as unknown[]);
    expect(component.name).toBe('vcalendar');
    expect(component.getFirstPropertyValue('version')).toBe('2.0');
    expect(component.getFirstPropertyValue('prodid')).toMatch(/^-\/\/.+\/\/EN$/);
    const event = component.getFirstSubcomponent('vevent');
    for (const name of ['uid', 'dtstamp', 'dtstart']) {
      expect(event?.getAllProperties(name)).toHaveLength(1);
    }
    expect(String(event?.getFirstPropertyValue('dtstamp'))).toBe('2026-03-01T18:00:00Z');
  });

  it('takes nobody’s time for a moment, and has no alarm that rings into a day of rest', () => {
    const calendar = calendarOf(
      [
        { ...rest, busy: true },
        { ...rest, uid: 'two', endMs: rest.startMs + HOUR_MS },
        { ...rest, uid: 'three', endMs: rest.startMs + 400 },
      ],
      STAMP_MS,
    );
    const [moment, block, instant] = read(calendar);
    const transparency = (event: ICAL.Event | undefined): unknown =>
      event?.component.getFirstPropertyValue('transp');
    expect(transparency(moment)).toBe('TRANSPARENT');
    expect(transparency(block)).toBe('OPAQUE');
    // Less than a second apart: an end must be later than its start (3.8.2.2), so there is none.
    expect(instant?.component.hasProperty('dtend')).toBe(false);
    expect(calendar).not.toContain('VALARM');
  });

  it('ends every line with CR LF', () => {
    const calendar = calendarOf([rest], STAMP_MS);
    expect(calendar.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(calendar.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('comes back whole through that library for any names, texts and times', () => {
    // Check: ical.js 2.2.1, computed; exact after what the format forbids was dropped.
    const text = fc.string({ unit: 'binary', maxLength: 300 });
    const at = fc.integer({ min: Date.UTC(1970, 0, 1), max: Date.UTC(2200, 0, 1) });
    const event = fc
      .record({ uid: text, startMs: at, title: text, text })
      .filter(({ uid }) => uid !== '');
    fc.assert(
      fc.property(fc.array(event, { minLength: 1, maxLength: 4 }), (events) => {
        const back = read(calendarOf(events, STAMP_MS));
        expect(back).toHaveLength(events.length);
        for (const [number, one] of events.entries()) {
          expect(back[number]?.uid ?? '').toBe(allowed(one.uid));
          expect(back[number]?.summary ?? '').toBe(allowed(one.title));
          expect(back[number]?.description ?? '').toBe(allowed(one.text));
          const start = back[number]?.startDate;
          expect(start && ms(start)).toBe(Math.floor(one.startMs / 1000) * 1000);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('refuses an event that ends before it starts, one without a name, and no event at all', () => {
    expect(() => calendarOf([{ ...rest, endMs: rest.startMs - 1 }], STAMP_MS)).toThrow(/^endMs is/);
    expect(() => calendarOf([{ ...rest, uid: '' }], STAMP_MS)).toThrow(/^uid is/);
    expect(() => calendarOf([], STAMP_MS)).toThrow(/^events is none/);
  });
});

/** What the format lets through: line ends as LF, no control characters, a tab allowed. */
function allowed(text: string): string {
  return [...text.replaceAll(/\r\n?/g, '\n')]
    .filter(
      (letter) =>
        letter === '\n' || letter === '\t' || !/\p{Cc}/u.test(letter) || letter >= '\u0080',
    )
    .join('');
}
