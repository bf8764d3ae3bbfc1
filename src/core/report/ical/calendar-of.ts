import { OutOfRangeError } from '../../units/index.ts';
import { escapeText, fold } from './content-line.ts';
import { utcText } from './utc.ts';

/** One entry of a calendar. Wall times, ms. */
export type CalendarEvent = {
  /** Stays the same when the same thing is handed out again, so that a calendar replaces it. */
  readonly uid: string;
  readonly startMs: number;
  /** Absent: a moment without length. */
  readonly endMs?: number;
  readonly title: string;
  readonly text: string;
  /** Somebody's time is taken (default). A moment without length takes none (RFC 5545, 3.6.1). */
  readonly busy?: boolean;
};

// not shown: PRODID of RFC 5545, read by programs.
const PRODUCT = '-//Glowpour//Glowpour 1//EN';

/**
 * An iCalendar object (RFC 5545) of these events, all times in UTC. No alarms
 * are put in: a phone must not ring into a day of rest.
 * @param stampMs when it was made, wall ms: the host's reading
 * @throws OutOfRangeError when an event ends before it starts, has no uid, or there is none
 */
export function calendarOf(events: readonly CalendarEvent[], stampMs: number): string {
  if (events.length === 0)
    throw new OutOfRangeError(
      'events',
      'none',
      'one or more',
      'There is nothing to put into a calendar.',
    );
  const stamp = utcText('stampMs', stampMs);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${PRODUCT}`,
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => eventLines(event, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map(fold).join('');
}

function eventLines(event: CalendarEvent, stamp: string): readonly string[] {
  const { uid, startMs, endMs, title, text } = event;
  if (uid === '')
    throw new OutOfRangeError('uid', '""', 'a name that is never used twice', 'Name the event.');
  if (endMs !== undefined && !(endMs >= startMs))
    throw new OutOfRangeError('endMs', endMs, `${startMs} (startMs) or later`, 'Check both times.');
  const start = utcText('startMs', startMs);
  const end = endMs === undefined ? start : utcText('endMs', endMs);
  // An end must be later than its start (3.8.2.2): a moment has none.
  const lasts = end !== start;
  return [
    'BEGIN:VEVENT',
    `UID:${escapeText(uid)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART:${start}`,
    ...(lasts ? [`DTEND:${end}`] : []),
    `SUMMARY:${escapeText(title)}`,
    ...(text === '' ? [] : [`DESCRIPTION:${escapeText(text)}`]),
    `TRANSP:${lasts && event.busy !== false ? 'OPAQUE' : 'TRANSPARENT'}`,
    'END:VEVENT',
  ];
}
