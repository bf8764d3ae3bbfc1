import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { calendarFile, restEvents } from '../../../../src/core/report/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { demoKitchen } from '../../kitchen/demos.ts';

/**
 * Zones as a calendar program has them, with their changes of the hour. New York is the example
 * of RFC 5545, 3.6.5; Jerusalem changes on the Friday before the last Sunday of March and on the
 * last Sunday of October (IANA time zone database, rule Zion).
 */
const ZONES = {
  'America/New_York': [
    'TZID:America/New_York',
    'BEGIN:STANDARD',
    'DTSTART:20071104T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU',
    'TZOFFSETFROM:-0400',
    'TZOFFSETTO:-0500',
    'END:STANDARD',
    'BEGIN:DAYLIGHT',
    'DTSTART:20070311T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU',
    'TZOFFSETFROM:-0500',
    'TZOFFSETTO:-0400',
    'END:DAYLIGHT',
  ],
  'Asia/Jerusalem': [
    'TZID:Asia/Jerusalem',
    'BEGIN:STANDARD',
    'DTSTART:20131027T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU',
    'TZOFFSETFROM:+0300',
    'TZOFFSETTO:+0200',
    'END:STANDARD',
    'BEGIN:DAYLIGHT',
    'DTSTART:20130329T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=3;BYMONTHDAY=23,24,25,26,27,28,29;BYDAY=FR',
    'TZOFFSETFROM:+0200',
    'TZOFFSETTO:+0300',
    'END:DAYLIGHT',
  ],
} as const;

function zoneOf(id: keyof typeof ZONES): ICAL.Timezone {
  const text = ['BEGIN:VTIMEZONE', ...ZONES[id], 'END:VTIMEZONE'].join('\r\n');
  return new ICAL.Timezone({ component: new ICAL.Component(ICAL.parse(text) as unknown[]) });
}

/** Date and time as the browser's own tables have it in a zone: "2026-03-08T07:30". */
function wallOf(ms: number, zone: string): string {
  const format = new Intl.DateTimeFormat('sv-SE', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
  });
  return format.format(ms).replace(' ', 'T');
}

describe('a calendar over a change of the hour', () => {
  // Check: ical.js 2.2.1 with the zones above, against Intl's tables (IANA); computed; exact.
  it.each([
    ['flat-coils', 'America/New_York', Date.UTC(2026, 2, 7, 13)],
    ['flat-coils', 'America/New_York', Date.UTC(2026, 9, 31, 13)],
    ['hall', 'Asia/Jerusalem', Date.UTC(2027, 2, 25, 6)],
    ['hall', 'Asia/Jerusalem', Date.UTC(2026, 9, 24, 18)],
  ] as const)('%s in %s has each event at its hour there', (demo, zone, startWallMs) => {
    const kitchen = demoKitchen(`${demo}.kitchen.json`);
    const plan = buildPlan(kitchen, { startWallMs });
    expect(kitchen.place?.zone).toBe(zone);
    const events = restEvents(plan, startWallMs, inEnglish);
    const file = calendarFile(plan, startWallMs, startWallMs, inEnglish) ?? '';
    const read = new ICAL.Component(ICAL.parse(file) as unknown[])
      .getAllSubcomponents('vevent')
      .map((one) => new ICAL.Event(one));
    expect(read).toHaveLength(events.length);
    for (const [at, { startMs, uid }] of events.entries()) {
      const one = read[at];
      expect(one?.uid).toBe(uid);
      const local = one?.startDate.convertToZone(zoneOf(zone)).toString().slice(0, 16);
      expect(local, uid).toBe(wallOf(Math.floor(startMs / 1000) * 1000, zone));
    }
    // The change lies in it: the last begins on the other side of it.
    const aheadMs = (ms: number): number => Date.parse(`${wallOf(ms, zone)}:00Z`) - ms;
    const last = Math.max(...events.map(({ startMs }) => startMs));
    expect(Math.abs(aheadMs(last) - aheadMs(startWallMs))).toBeGreaterThan(3_500_000);
  });
});
