import { RESTS_ON } from '../../core/plan/index.ts';
import { nearest } from '../../core/kitchen/index.ts';
import { OutOfRangeError, type Band } from '../../core/units/index.ts';
import { packageVersion } from '../input/version.ts';
import { Refusal, type Found, type Model } from './model/model.ts';
import { inEnglish } from '../speech/english.ts';
import { FILE_MODELS, MODELS } from './registry.ts';
import { valuesOf } from './model/values.ts';

/** What is printed, and the exit code. */
export type Answer = { readonly print: object; readonly code: 0 | 2 };

const names = () => [...MODELS, ...FILE_MODELS].map(({ name }) => name).concat('list', '--version');

function isBand(value: unknown): value is Band {
  return typeof value === 'object' && value !== null && 'typical' in value && 'low' in value;
}

/** Bands apart: what to expect in `result`, the ends in `low` and `high`. */
function spread(found: Found): object {
  const bands = Object.entries(found).filter((entry): entry is [string, Band] => isBand(entry[1]));
  const end = (pick: (band: Band) => number) =>
    Object.fromEntries(bands.map(([name, band]) => [name, pick(band)]));
  const result = Object.fromEntries(
    Object.entries(found).map(([name, value]) => [name, isBand(value) ? value.typical : value]),
  );
  if (bands.length === 0) return { result };
  return { result, low: end(({ low }) => low), high: end(({ high }) => high) };
}

/** The models with their inputs, units and ranges, and what no published figure holds. */
function list(): object {
  const models = MODELS.map(({ name, about, inputs, results, sources }) => ({
    name,
    about,
    inputs: inputs.map(({ usual, optional, ...input }) => ({
      ...input,
      ...(usual !== undefined && { default: usual }),
      ...(optional && { optional: true }),
    })),
    results,
    sources,
  }));
  const files = FILE_MODELS.map(({ name }) => ({ name, use: `${name} FILE.json` }));
  const restsOn = RESTS_ON.map(({ id, kind, says }) => ({ id, kind, says: inEnglish.say(says) }));
  return { use: 'MODEL name=value …', models, files, restsOn };
}

function refused(fault: unknown): Answer {
  if (!(fault instanceof Refusal || fault instanceof OutOfRangeError)) throw fault;
  const { input, found, allowed, message } = fault;
  return { print: { error: { input, found: found ?? null, allowed, message } }, code: 2 };
}

function ofFile(model: (typeof FILE_MODELS)[number], words: readonly string[]): Answer {
  const [path] = words;
  if (path === undefined || words.length > 1) {
    throw new Refusal('file', words.join(' ') || 'not given', 'the path of one file', 'Give it.');
  }
  const print = model.run(path);
  return { print, code: 'error' in print ? 2 : 0 };
}

function ofModel(model: Model, words: readonly string[]): Answer {
  const inputs = valuesOf(model, words);
  const { name, sources } = model;
  return { print: { model: name, inputs, ...spread(model.evaluate(inputs)), sources }, code: 0 };
}

/** Answers the words after `reckon`. */
export function answer(words: readonly string[]): Answer {
  const [name, ...rest] = words;
  try {
    if (name === '--version') return { print: { version: packageVersion() }, code: 0 };
    if (name === 'list') return { print: list(), code: 0 };
    const fileModel = FILE_MODELS.find((model) => model.name === name);
    if (fileModel) return ofFile(fileModel, rest);
    const model = MODELS.find((found) => found.name === name);
    if (model) return ofModel(model, rest);
    const near = name === undefined ? undefined : nearest(name, names());
    const advice = near ? `Did you mean ${near}?` : 'Choose one of these.';
    throw new Refusal('model', name ?? 'not given', names().join(', '), advice);
  } catch (fault) {
    return refused(fault);
  }
}
