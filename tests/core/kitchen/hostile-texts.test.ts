import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBackup } from '../../../src/core/backup/index.ts';
import {
  formatKitchen,
  parseKitchen,
  plainLine,
  problemMessage,
  readKitchen,
  seenText,
} from '../../../src/core/kitchen/index.ts';
import { planShapeProblems } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMO_TEXTS } from './demos.ts';

const [[, TEXT] = ['', '']] = DEMO_TEXTS;

type Raw = Record<string, unknown>;
const demo = (): Raw & { fixtures: Raw[] } => JSON.parse(TEXT) as never;

/** Texts that try to be something else than text. */
const pieces = fc.constantFrom(
  '<img src=x onerror=alert(1)>',
  '<script>alert(1)</script>',
  '</text></svg><svg onload=alert(1)>',
  'javascript:alert(1)',
  '" onclick="alert(1)',
  "'-alert(1)-'",
  '{{constructor.constructor("alert(1)")()}}',
  '${alert(1)}',
  '\u202Edesrever',
  '\u2066open',
  '\u2069\u2069closed',
  '\u202A\u202B\u202D',
  '\u200F\u200E',
  'a\u200Bb\u2060c\uFEFF',
  `Z${'\u0301'.repeat(40)}`,
  '\u05E9\u05C1\u05BC\u05B8\u0596',
  '👩‍🍳',
  '\u0000\u0007\u001B[31m',
  '\uD800',
  '\uDC00tail',
  '\u2028line\u2029paragraph',
  '__proto__',
  'constructor',
  'הכיור',
);
const texts = fc
  .oneof(
    fc.array(pieces, { minLength: 1, maxLength: 4 }).map((some) => some.join(' ')),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }),
    fc
      .array(fc.integer({ min: 0, max: 0xffff }), { minLength: 1, maxLength: 60 })
      .map((codes) => String.fromCharCode(...codes)),
    pieces.map((one) => one.repeat(400)),
  )
  .filter((one) => one !== '');

/** What would turn or hide the words around a name, or break the line it stands in. */
const TURNS = /[\u202A-\u202E\u2066-\u2069]/u;
// oxlint-disable-next-line no-control-regex -- these are what is looked for
const HIDES = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u200B\u2060\uFEFF]|\p{Cs}/u;
const PILES = /\p{M}{7}/u;

function expectSafe(text: string): void {
  expect(text).not.toMatch(TURNS);
  expect(text).not.toMatch(HIDES);
  expect(text).not.toMatch(PILES);
}

describe('texts that are hostile', () => {
  it('are safe once read, or refused by field; what a cook can see of them is all there', () => {
    fc.assert(
      fc.property(texts, texts, (name, comment) => {
        const raw = demo();
        raw['name'] = name;
        (raw.fixtures[0] as Raw)['name'] = comment;
        const outcome = readKitchen(raw);
        if ('problems' in outcome) {
          for (const problem of outcome.problems) {
            expect(problem.path).toMatch(/^(?:name|fixtures\[0\]\.name)$/);
            expectSafe(inEnglish.say(problemMessage(problem)));
          }
          return;
        }
        expect(outcome.kitchen.name).toBe(seenText(name));
        expectSafe(outcome.kitchen.name);
        expectSafe(outcome.kitchen.fixtures[0]?.name ?? '');
        const told = outcome.cleaned.map(({ path }) => path);
        expect(told.includes('name')).toBe(seenText(name) !== name);
        for (const one of outcome.cleaned) expectSafe(inEnglish.say(problemMessage(one)));
        // What is written down again needs no cleaning.
        const again = parseKitchen(formatKitchen(outcome.kitchen));
        expect(again).toMatchObject({ kitchen: outcome.kitchen, cleaned: [] });
      }),
      { numRuns: 400 },
    );
  });

  it('keep Hebrew with all its marks, joiners, letters of two places and marks of direction', () => {
    const kept = 'הַמִּטְבָּח\u200E 2 שֻׁ֖ל 👩‍🍳 Ünï می‌شود';
    expect(seenText(kept)).toBe(kept);
  });

  it('stand on one line of ours, whatever they are', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const line = plainLine(text);
        expectSafe(line);
        expect(line).not.toMatch(/[\n\r\t\u2028\u2029]/u);
        expect(plainLine(line)).toBe(line);
      }),
      { numRuns: 400 },
    );
  });

  it('are told with field, value, what is allowed and what to do, the value as escapes', () => {
    const outcome = readKitchen({ ...demo(), name: 'Flat \u202Etalf\u0000' });
    if ('problems' in outcome) throw new Error('It is to be read.');
    expect(outcome.kitchen.name).toBe('Flat talf');
    expect(outcome.cleaned.map((one) => inEnglish.say(problemMessage(one)))).toEqual([
      'name: found "Flat \\u202etalf\\u0000"; allowed: text without control codes and without marks that turn or pile up letters. It was read without them: look whether it says what it should.',
    ]);
  });

  it.each(['__proto__', 'constructor', 'prototype', 'toString', '<b>', '\u202E'])(
    'as the name of a field (%j) are refused by name, and change no object',
    (field) => {
      const text = TEXT.replace('{', `{${JSON.stringify(field)}: {"polluted": true},`);
      const outcome = parseKitchen(text);
      if (!('problems' in outcome)) throw new Error('It was taken.');
      for (const problem of outcome.problems) expectSafe(inEnglish.say(problemMessage(problem)));
      expect(outcome.problems.length).toBeGreaterThan(0);
      expect(({} as Raw)['polluted']).toBeUndefined();
    },
  );

  it('in a backup cost only the part they stand in, and change no object', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const read = readBackup(
          `{"format":"glowpour-backup","version":1,
            "kitchens":[{"name":${JSON.stringify(text)},"savedWallMs":1,"text":${JSON.stringify(TEXT)}}],
            "runs":[{"name":${JSON.stringify(text)},"openedWallMs":1,"journal":{}}],
            "settings":{${JSON.stringify(text)}:"x","__proto__":"y"}}`,
        );
        if ('refused' in read) throw new Error(inEnglish.say(problemMessage(read.refused)));
        expect(read.backup.kitchens).toHaveLength(1);
        for (const { name } of [...read.backup.kitchens, ...read.backup.runs]) expectSafe(name);
        expect(Object.keys(read.backup.settings)).toContain(text);
        expect(Object.getPrototypeOf(read.backup.settings)).toBe(Object.prototype);
      }),
      { numRuns: 100 },
    );
  });

  it('in the plan of a run are refused by field: no plan is made with any', () => {
    const plan = { kitchen: demo(), title: 'a\u202Eb' };
    const problems = planShapeProblems(plan);
    expect(problems.length).toBeGreaterThan(0);
  });
});
