import { message } from '../../messages/index.ts';
import { crossCheck, warningsFor } from '../checks/index.ts';
import { countryOf, kettlePlateV } from '../model/country.ts';
import { readJsonText } from '../codec/json-text.ts';
import { FILE_FORMAT, FILE_VERSION, kitchenCodec } from '../codec/kitchen-codec.ts';
import { isObject } from '../codec/object.ts';
import { MOST_PROBLEMS, Notes, type Defaults, type FilledIn } from '../codec/codec.ts';
import {
  foundValue,
  onLine,
  problemAt,
  quoted,
  type KitchenProblem,
  type KitchenWarning,
} from '../model/problem.ts';
import type { Kitchen } from '../model/kitchen.ts';

/** Largest file that is read: 1 MB, in bytes of UTF-8. */
export const LARGEST_FILE_BYTES = 1_048_576;

/** A kitchen that can be planned, with what to look at and what was filled in for it. */
export type ParsedKitchen = {
  readonly kitchen: Kitchen;
  readonly warnings: readonly KitchenWarning[];
  /** Those of the warnings that tell of texts which were read without some of their letters. */
  readonly cleaned: readonly KitchenWarning[];
  readonly filled: readonly FilledIn[];
};

export type ParseOutcome = ParsedKitchen | { readonly problems: readonly KitchenProblem[] };

const BYTE_ORDER_MARK = '\uFEFF';

/** Length in bytes of a text as UTF-8. */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
}

function defaultsFor(raw: unknown): Defaults {
  const fields = isObject(raw) ? raw : {};
  const country = countryOf(fields['country']);
  const told = fields['supplyV'];
  const supplyV = typeof told === 'number' ? told : (country?.supplyV ?? 0);
  return {
    supplyV,
    kettleW: country?.kettleW ?? 0,
    // Another mains than the country's: its plates are not the country's either.
    kettleV: supplyV === country?.supplyV ? kettlePlateV(country.code, supplyV) : supplyV,
  };
}

/** A file of another kind or a later version is told so, and nothing else about it. */
function wrongFile(raw: unknown): KitchenProblem | undefined {
  if (!isObject(raw)) {
    const allowed = message('problems.file.one-object');
    return problemAt('', foundValue(raw), allowed, message('problems.file.open'));
  }
  const { format, version } = raw;
  if (typeof format === 'string' && format !== FILE_FORMAT) {
    const advice = message('problems.file.other-kind');
    return problemAt('format', foundValue(format), quoted(FILE_FORMAT), advice);
  }
  if (typeof version === 'number' && version > FILE_VERSION) {
    const allowed = message('problems.file.versions', { version: FILE_VERSION });
    const advice = message('problems.file.newer-app', { version: FILE_VERSION });
    return problemAt('version', foundValue(version), allowed, advice);
  }
  return undefined;
}

/**
 * Checks a value that is already JSON: its fields, then what must fit together.
 * @param raw as read from JSON
 */
export function readKitchen(raw: unknown): ParseOutcome {
  const wrong = wrongFile(raw);
  if (wrong) return { problems: [wrong] };
  const notes = new Notes(defaultsFor(raw));
  const kitchen = kitchenCodec.read(raw, '', notes);
  if (kitchen === undefined) return { problems: notes.problems };
  const problems = crossCheck(kitchen).slice(0, MOST_PROBLEMS);
  if (problems.length > 0) return { problems };
  const { cleaned, filled } = notes;
  return { kitchen, warnings: [...cleaned, ...warningsFor(kitchen)], cleaned, filled };
}

/** A file larger than is read. */
export function tooLarge(bytes: number): KitchenProblem {
  return problemAt(
    '',
    message('problems.file.megabytes', { megabytes: bytes / LARGEST_FILE_BYTES }),
    message('problems.file.one-megabyte'),
    message('problems.file.words-only'),
  );
}

/** The line of a path; for a missing field, the line where the thing it belongs to begins. */
function lineOfPath(path: string, lineOf: ReadonlyMap<string, number>): number | undefined {
  let at = path;
  while (at !== '') {
    const line = lineOf.get(at);
    if (line !== undefined) return line;
    at = at.slice(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['), 0));
  }
  return lineOf.get('');
}

/**
 * Reads a kitchen file (`*.kitchen.json`, version 1). Every problem comes back
 * as a value with its path; nothing is thrown. A byte-order mark and either
 * kind of line end are fine.
 * @param text the whole file, at most 1 MB
 */
export function parseKitchen(text: string): ParseOutcome {
  const bytes = utf8Bytes(text);
  if (bytes > LARGEST_FILE_BYTES) {
    return { problems: [tooLarge(bytes)] };
  }
  const body = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  if (body.trim() === '') {
    const found = message('problems.file.empty');
    const allowed = message('problems.file.kitchen');
    return { problems: [problemAt('', found, allowed, message('problems.file.choose'))] };
  }
  const json = readJsonText(body);
  if ('fault' in json) {
    const { line, column, found, allowed, advice } = json.fault;
    return {
      problems: [{ ...problemAt('', found, allowed, advice), line, column }],
    };
  }
  const twice = json.repeated.map((path) =>
    problemAt(
      path,
      message('problems.twice.found'),
      message('problems.twice.allowed'),
      message('problems.twice.advice'),
    ),
  );
  const outcome = readKitchen(json.value);
  const problems = [...twice, ...('problems' in outcome ? outcome.problems : [])];
  const placed = (all: readonly KitchenProblem[]) =>
    all.map((problem) => onLine(problem, lineOfPath(problem.path, json.lineOf)));
  if (problems.length > 0 || 'problems' in outcome) {
    return { problems: placed(problems.slice(0, MOST_PROBLEMS)) };
  }
  return { ...outcome, warnings: placed(outcome.warnings), cleaned: placed(outcome.cleaned) };
}
