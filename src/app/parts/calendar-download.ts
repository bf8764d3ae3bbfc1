import type { TextFile } from '../../host/files/index.ts';

/** An iCalendar text (RFC 5545) as a file. */
export function calendarDownload(text: string): TextFile {
  return { name: 'purge.ics', text, type: 'text/calendar' };
}
