import { form, number, text, whole } from './primitives.ts';
import { list, pair } from './object.ts';
import { named } from './codec.ts';

/** Letters of a name shown in lists and on labels. */
const LONGEST_NAME = 80;
/** Letters of a comment or of what a rabbi said. */
const LONGEST_WORDS = 2000;
/** Farthest corner from the origin of the plan view, metres: larger than any hall kitchen. */
const FARTHEST_M = 200;
/** Corners of one outline: rounded ends of a hall counter included. */
const MOST_CORNERS = 500;

export const nameCodec = named('name', text(LONGEST_NAME));
export const wordsCodec = named('words', text(LONGEST_WORDS));

export const idCodec = named(
  'id',
  form(
    '^[A-Za-z0-9][A-Za-z0-9_-]{0,39}$',
    '1 to 40 letters a to z, digits, - or _, in quotes',
    'Use a short name without spaces, such as "sink-left".',
  ),
);

export const dateCodec = named(
  'date',
  form(
    '^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$',
    'a date as "yyyy-mm-dd"',
    'Write the year, the month and the day, such as "2026-03-29".',
  ),
);

/** A corner of the plan view, metres. */
export const pointCodec = named(
  'point',
  pair(number(-FARTHEST_M, FARTHEST_M), 'a corner [x, y] in metres'),
);

/** Corners of an outline, once round; the last joins the first by itself. */
export const polygonCodec = named('polygon', list(pointCodec, 3, MOST_CORNERS));

/** Two neighbouring corner numbers, the first corner being 0. */
export const edgeCodec = named(
  'edge',
  pair(whole(0, MOST_CORNERS - 1), 'two neighbouring corner numbers [from, to], counted from 0'),
);

/** Electric power of an appliance or burner, watts; a large gas burner or hall urn included. */
export const powerCodec = named('power', number(0, 60_000));
/** Mains voltages in use, from 100 V nominal to a three-phase 400 V supply, with slack. */
export const voltsCodec = named('volts', number(90, 440));
