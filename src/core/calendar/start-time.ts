import { MS_PER_MINUTE, OutOfRangeError } from '../units/index.ts';
import { parseDate } from './civil.ts';
import { momentOf } from './zone.ts';

const ALLOWED = 'a date and time like 2026-03-29T18:00, with or without an offset like +02:00 or Z';
const SHAPE = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2})(?::00)?(Z|[+-]\d{2}:\d{2})?$/;

/**
 * The moment of "2026-03-29T18:00" on the wall of a zone, or of the same with an offset (ISO 8601);
 * ms since 1970-01-01 UTC. Whole minutes.
 * @param input name of the field, for the refusal
 * @param zone undefined: an offset must be told
 * @throws OutOfRangeError
 */
export function parseMoment(input: string, text: string, zone: string | undefined): number {
  const [, day = '', h = '', m = '', offset] = SHAPE.exec(text) ?? [];
  const hour = Number(h);
  const minute = Number(m);
  if (day === '' || hour > 23 || minute > 59)
    throw new OutOfRangeError(input, text, ALLOWED, 'Write it like that.');
  const wall = { ...parseDate(input, day), hour, minute };
  if (offset === undefined) {
    if (zone !== undefined) return momentOf(wall, zone);
    throw new OutOfRangeError(
      input,
      text,
      'a time with its offset from UTC, as the kitchen tells no time zone',
      'Add the offset, or add place to the kitchen.',
    );
  }
  const sign = offset.startsWith('-') ? -1 : 1;
  const [oh = 0, om = 0] = offset === 'Z' ? [] : offset.slice(1).split(':').map(Number);
  return momentOf(wall, 'UTC') - sign * (oh * 60 + om) * MS_PER_MINUTE;
}
