import { message } from '../../messages/index.ts';
import { LIMITS } from '../model/limits.ts';
import { named } from './codec.ts';
import { list, pair } from './object.ts';
import { form, number, text, whole } from './primitives.ts';

export const nameCodec = named('name', text(LIMITS.nameLetters));
export const wordsCodec = named('words', text(LIMITS.textLetters));

export const idCodec = named(
  'id',
  form(
    `^[A-Za-z0-9][A-Za-z0-9_-]{0,${LIMITS.idLetters.most - 1}}$`,
    message('problems.id.allowed', LIMITS.idLetters),
    message('problems.id.advice'),
  ),
);

export const dateCodec = named(
  'date',
  form(
    '^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$',
    message('problems.date.allowed'),
    message('problems.date.advice'),
  ),
);

/** A moment on the wall of the kitchen, to the minute. */
export const localTimeCodec = named(
  'localTime',
  form(
    '^(19[5-9]|20[0-9])[0-9]-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])T([01][0-9]|2[0-3]):[0-5][0-9]$',
    message('problems.local-time.allowed'),
    message('problems.local-time.advice'),
  ),
);

/** A corner of the plan view, metres. */
export const pointCodec = named(
  'point',
  pair(number(LIMITS.planM), message('problems.point.allowed')),
);

/** Corners of an outline, once round; the last joins the first by itself. */
export const polygonCodec = named('polygon', list(pointCodec, LIMITS.corners));

/** Two neighbouring corner numbers, the first corner being 0. */
export const edgeCodec = named(
  'edge',
  pair(whole({ least: 0, most: LIMITS.corners.most - 1 }), message('problems.edge.allowed')),
);

export const powerCodec = named('power', number(LIMITS.powerW));
export const voltsCodec = named('volts', number(LIMITS.voltsV));
