import {
  BURNER_TYPES,
  CONDITIONS,
  FIXTURE_KINDS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PURPOSES,
} from '../kitchen/index.ts';
import { SOURCE_KEYS } from './sources.ts';
import type { CustomTable } from './types.ts';

type Raw = Readonly<Record<string, unknown>>;

const LISTS: Readonly<Record<string, readonly string[]>> = {
  kinds: FIXTURE_KINDS,
  materials: MATERIALS,
  conditions: CONDITIONS,
  purposes: PURPOSES,
  burners: BURNER_TYPES,
  cleaning: OVEN_CLEANINGS,
  methods: METHODS,
};
const ABOUT: readonly string[] = ['ruling', 'material', 'condition'];
const TEXTS = ['id', 'reason', 'source'];
const FIELDS = new Set([
  ...Object.keys(LISTS),
  ...TEXTS,
  'method',
  'cover',
  'coverWith',
  'minutes',
  'term',
  'wouldChange',
  'note',
  'checked',
  'question',
]);
/** Longest a row may ask for, min. */
const MOST_MINUTES = 600;

function bad(at: string, found: unknown, allowed: string): never {
  throw new TypeError(
    `${at} is ${JSON.stringify(found) ?? 'missing'}; allowed: ${allowed}. Correct the table.`,
  );
}

function isRaw(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function checkText(at: string, value: unknown): void {
  if (typeof value !== 'string' || value.trim() === '') bad(at, value, 'words');
}

function checkList(at: string, value: unknown, allowed: readonly string[]): void {
  if (!Array.isArray(value) || value.length === 0)
    return bad(at, value, 'a list that is not empty');
  for (const one of value) {
    if (!allowed.includes(one)) bad(at, one, allowed.join(', '));
  }
}

function checkMinutes(at: string, minutes: unknown): void {
  const isIn = typeof minutes === 'number' && minutes >= 1 && minutes <= MOST_MINUTES;
  if (minutes !== undefined && !isIn) bad(at, minutes, `1 to ${MOST_MINUTES}`);
}

function checkAnswer(at: string, answer: unknown): void {
  if (!isRaw(answer)) return bad(at, answer, 'an object');
  checkText(`${at}.words`, answer['words']);
  if (!METHODS.includes(answer['method'] as never))
    bad(`${at}.method`, answer['method'], METHODS.join(', '));
  if (typeof answer['cover'] !== 'boolean') bad(`${at}.cover`, answer['cover'], 'true or false');
  checkMinutes(`${at}.minutes`, answer['minutes']);
}

/** A question for the rabbi names the answers that are given; the others are answered by looking. */
function checkQuestion(at: string, question: unknown): void {
  if (!isRaw(question)) return bad(at, question, 'an object');
  for (const field of ['ask', 'why', 'untilThen']) checkText(`${at}.${field}`, question[field]);
  const { about, answers } = question;
  if (!ABOUT.includes(String(about))) bad(`${at}.about`, about, ABOUT.join(', '));
  if (about !== 'ruling' && answers === undefined) return;
  if (!Array.isArray(answers) || answers.length < 2)
    return bad(`${at}.answers`, answers, 'a list of two answers or more');
  answers.forEach((answer: unknown, n) => checkAnswer(`${at}.answers[${n}]`, answer));
}

function checkRow(at: string, row: unknown, isRule: boolean): void {
  if (!isRaw(row)) return bad(at, row, 'an object');
  for (const field of Object.keys(row)) {
    if (!FIELDS.has(field)) bad(`${at}.${field}`, row[field], 'a field of a row');
  }
  for (const field of TEXTS) checkText(`${at}.${field}`, row[field]);
  for (const [field, allowed] of Object.entries(LISTS)) {
    if (row[field] !== undefined) checkList(`${at}.${field}`, row[field], allowed);
  }
  checkList(`${at}.kinds`, row['kinds'], FIXTURE_KINDS);
  if (!SOURCE_KEYS.includes(String(row['source'])))
    bad(`${at}.source`, row['source'], 'a key of the sources');
  if (typeof row['cover'] !== 'boolean') bad(`${at}.cover`, row['cover'], 'true or false');
  if (typeof row['checked'] !== 'boolean') bad(`${at}.checked`, row['checked'], 'true or false');
  const { minutes, method, question } = row;
  checkMinutes(`${at}.minutes`, minutes);
  if (!(isRule && method === undefined) && !METHODS.includes(method as never))
    bad(`${at}.method`, method, METHODS.join(', '));
  if (isRule) {
    checkList(`${at}.methods`, row['methods'], METHODS);
    checkList(`${at}.conditions`, row['conditions'], CONDITIONS);
  } else {
    checkText(`${at}.wouldChange`, row['wouldChange']);
  }
  if (question !== undefined) checkQuestion(`${at}.question`, question);
}

function checkRows(at: string, rows: unknown, isRule: boolean): void {
  if (!Array.isArray(rows) || rows.length === 0) return bad(at, rows, 'a list of rows');
  const ids = new Set<unknown>();
  rows.forEach((row: unknown, number) => {
    checkRow(`${at}[${number}]`, row, isRule);
    const id = isRaw(row) ? row['id'] : undefined;
    if (ids.has(id)) bad(`${at}[${number}].id`, id, 'an id that no other row has');
    ids.add(id);
  });
}

/**
 * A custom's table as read from JSON.
 * @throws TypeError naming the place, what was found and what is allowed
 */
export function readCustomTable(raw: unknown): CustomTable {
  if (!isRaw(raw)) return bad('custom', raw, 'an object');
  if (raw['id'] !== 'sephardic' && raw['id'] !== 'ashkenazic')
    bad('custom.id', raw['id'], 'sephardic or ashkenazic');
  checkText('custom.name', raw['name']);
  const { restHours } = raw;
  if (!(typeof restHours === 'number' && restHours >= 1 && restHours <= 168))
    bad('custom.restHours', restHours, '1 to 168');
  for (const field of ['restSource', 'coldSource', 'kettleSource']) {
    if (!SOURCE_KEYS.includes(String(raw[field])))
      bad(`custom.${field}`, raw[field], 'a key of the sources');
  }
  checkRows('custom.rows', raw['rows'], false);
  checkRows('custom.conditionRules', raw['conditionRules'], true);
  return raw as unknown as CustomTable;
}
