import type { TextFile } from '../../host/files/index.ts';
import { fileName } from './file-name.ts';

/** An iCalendar text (RFC 5545) of the purge of a kitchen as a file; the day is that of its begin, ms. */
export function calendarDownload(text: string, kitchen: string, atWallMs: number): TextFile {
  return {
    name: fileName({ called: kitchen, atWallMs, ending: '.ics' }),
    text,
    type: 'text/calendar',
  };
}
