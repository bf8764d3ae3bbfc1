import {
  byName,
  faultKind,
  fields,
  flag,
  list,
  number,
  oneOf,
  stepShape,
  text,
  type ShapeOf,
} from '../plan/check/index.ts';
import {
  EXTEND_MAX_S,
  type ClosedAs,
  type CoolingEnd,
  type Fact,
  type FactBody,
  type Outcome,
  type Readings,
} from '../run/index.ts';
import { LATEST_WALL_MS, MS_PER_SECOND } from '../units/index.ts';

/** More than this of one record is not listed; the file is refused all the same. */
const MOST = 20;

/** A length that reaches from 1970 to the last moment that a page could tell. */
const LATEST_S = LATEST_WALL_MS / MS_PER_SECOND;

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** Names of the fields that may be absent, and of the others. */
type MayOf<T> = {
  [K in keyof T]-?: Record<never, never> extends Pick<T, K> ? K : never;
}[keyof T];
type MustOf<T> = Exclude<keyof T, MayOf<T> | 'kind'>;

/** A shape for each field: of those that must be there, then of those that may be. */
type FieldsOf<T> = readonly [
  must: Readonly<Record<MustOf<T>, ShapeOf>>,
  ...([MayOf<T>] extends [never] ? [] : [may: Readonly<Record<MayOf<T>, ShapeOf>>]),
];

type AnyFields = readonly [
  must: Readonly<Record<string, ShapeOf>>,
  may?: Readonly<Record<string, ShapeOf>>,
];

/** One of the words of a type, each of which is to be named. */
function word<T extends string>(words: Readonly<Record<T, true>>): ShapeOf {
  return oneOf(...Object.keys(words));
}

function orNull(shape: ShapeOf): ShapeOf {
  return (value, at, bad) => {
    if (value !== null) shape(value, at, bad);
  };
}

const moment = number(0, LATEST_WALL_MS);
const lengthS = number(0, LATEST_S);
const count = number();
const attempt = number(1);
const textOrNull = orNull(text);

/** What fills a sentence: texts, numbers, sentences, bands and lists of them, never nothing. */
const param: ShapeOf = (value, at, bad) => {
  if (typeof value === 'string' || typeof value === 'boolean' || value === undefined) return;
  if (Array.isArray(value)) list(param)(value, at, bad);
  else if (typeof value === 'object' && value !== null) byName(param)(value, at, bad);
  else number(-Infinity)(value, at, bad);
};
const sentence = fields({ key: text, params: byName(param) });
const written = fields({ key: text, params: fields({ text }) });

/** A sentence of the catalogue, or what a person wrote. */
const reason: ShapeOf = (value, at, bad) => {
  const isWritten = (value as { readonly key?: unknown } | null)?.key === 'common.as-written';
  (isWritten ? written : sentence)(value, at, bad);
};

const READINGS: FieldsOf<Readings> = [{ wallMs: moment, monoMs: number(-Infinity), session: text }];
const readings = fields(...READINGS);

const closed: FieldsOf<Body<'run-closed'>> = [
  { as: word<ClosedAs>({ completed: true, failed: true, stopped: true }), reason },
];
const outcome = word<Outcome>({
  done: true,
  skipped: true,
  failed: true,
  stopped: true,
  'not-run': true,
});
const alarm = { timer: text, cause: count };

/** What each kind of fact holds; the compiler keeps it whole, kind by kind and field by field. */
const BODIES: { readonly [K in FactBody['kind']]: FieldsOf<Body<K>> } = {
  // Its plan has a reader of its own.
  drafted: [{ plan: () => undefined, notBeforeWallMs: moment }, { app: text }],
  'run-started': [{}, { clockRight: flag }],
  paused: [{}],
  resumed: [{}],
  'closing-begun': closed,
  'run-closed': closed,
  'plan-amended': [{ steps: list(stepShape), startS: byName(count), reason }],
  noted: [{ text }],
  'recheck-reported': [{ fixture: text, text }],
  'recheck-withdrawn': [{ fixture: text }],
  'step-started': [
    {
      step: text,
      attempt,
      by: word<Body<'step-started'>['by']>({ person: true, chain: true }),
    },
    { person: count },
  ],
  'stage-ended': [
    {
      step: text,
      attempt,
      stage: text,
      by: word<Body<'stage-ended'>['by']>({ person: true, timer: true }),
    },
    { person: count },
  ],
  'stage-restarted': [{ step: text, attempt, stage: text, reason }],
  'step-unwinding': [{ step: text, attempt, outcome, reason }, { renew: reason }],
  'safe-confirmed': [{ step: text, attempt }],
  'step-settled': [{ step: text, attempt, outcome, reason }],
  'step-repeated': [{ step: text, attempt, reason }],
  'timer-due': [{ ...alarm, lateByS: lengthS }],
  'timer-acknowledged': [alarm],
  'timer-extended': [{ timer: text, byS: number(0, EXTEND_MAX_S) }],
  'time-corrected': [
    { timer: text, sinceWallMs: moment, reason: text },
    { elapsedS: lengthS, clockRight: flag },
  ],
  'gate-answered': [
    {
      gate: text,
      scopeKey: text,
      answer: word<Body<'gate-answered'>['answer']>({ yes: true, no: true }),
    },
  ],
  'gate-overridden': [{ gate: text, scopeKey: text, reason: text }],
  'fault-raised': [
    { fault: text, faultKind, step: textOrNull, text, timer: textOrNull, cause: count },
  ],
  'fault-cleared': [{ fault: text }],
  'cooling-ended': [
    {
      fault: text,
      as: word<CoolingEnd>({ cooled: true, 'taken-over': true, mistake: true }),
      cooledS: lengthS,
    },
  ],
  'clocks-disagree': [
    {
      cause: word<Body<'clocks-disagree'>['cause']>({ slept: true, back: true }),
      wallS: number(-LATEST_S, LATEST_S),
      monoS: lengthS,
    },
  ],
  'clock-answered': [{ right: flag, actualWallMs: orNull(moment) }, { passed: flag }],
  'clock-answer-withdrawn': [{}],
  'review-answered': [
    {
      question: text,
      answer: word<Body<'review-answered'>['answer']>({
        'went-on': true,
        'broke-off': true,
        unknown: true,
      }),
    },
  ],
  'review-answer-withdrawn': [{ question: text }],
  'session-opened': [
    { lastHeartbeat: orNull(readings), tornRecords: count },
    { missingRecords: count },
  ],
  'session-closed': [{}],
  'storage-failed': [{ text }],
  'storage-mended': [{}],
  'alarm-handed': [alarm],
  'alarm-failed': [{ ...alarm, text }],
};

/**
 * What a fact of a known kind lacks to be one at all, field by field; empty:
 * its shape is right. Says nothing of its sense, nor of the plan it may carry.
 */
export function factShapeProblems({ id, at, body }: Fact): readonly string[] {
  const found: string[] = [];
  const bad = (what: string): void => {
    if (found.length < MOST) found.push(what);
  };
  text(id, 'id', bad);
  readings(at, 'at', bad);
  const [must, may = {}]: AnyFields = BODIES[body.kind];
  fields(must, may)(body, body.kind, bad);
  return found;
}
