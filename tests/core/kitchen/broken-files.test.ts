import { describe, expect, it } from 'vitest';
import {
  LARGEST_FILE_BYTES,
  parseKitchen,
  problemMessage,
  problemWhere,
  type KitchenProblem,
} from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import { BROKEN_SENSE, BROKEN_SHAPES } from './broken-files.ts';
import { DEMO_TEXTS, demoJson } from './demos.ts';

/** A problem as a reader of English sees it. */
function told(problem: KitchenProblem | undefined) {
  if (!problem) throw new Error('There is no problem.');
  return {
    where: inEnglish.say(problemWhere(problem)),
    found: inEnglish.say(problem.found),
    allowed: inEnglish.say(problem.allowed),
    advice: inEnglish.say(problem.advice),
    all: inEnglish.say(problemMessage(problem)),
  };
}

function problemsOf(text: string): readonly KitchenProblem[] {
  const outcome = parseKitchen(text);
  return 'problems' in outcome ? outcome.problems : [];
}

describe.each([
  ['a field is wrong', BROKEN_SHAPES],
  ['things do not fit together', BROKEN_SENSE],
])('a file in which %s', (_, cases) => {
  it.each(cases)('$what: told at $path', ({ spoil, path, found, allowed, advice }) => {
    const problems = problemsOf(JSON.stringify(spoil(), null, 2));
    expect(problems.map((problem) => problem.path)).toEqual([path]);
    const { all, ...parts } = told(problems[0]);
    expect(parts.found).toContain(found);
    expect(parts.allowed).toContain(allowed);
    expect(parts.advice).toContain(advice);
    for (const part of [path, ...Object.values(parts)]) expect(all).toContain(part);
  });
});

describe('a text that is no kitchen file', () => {
  const coils = DEMO_TEXTS[0]?.[1] ?? '';

  it.each([
    ['nothing', '', 'file', 'an empty file', 'a kitchen file', 'demo kitchen'],
    ['blank lines', ' \r\n\t\n', 'file', 'an empty file', 'a kitchen file', 'demo kitchen'],
    ['a list', '[]', 'file', 'a list of 0', 'one object', '*.kitchen.json'],
    ['a number', '12', 'file', '12', 'one object', '*.kitchen.json'],
    ['prose', 'Dear all', 'line 1, column 1', '"Dear"', 'a value', 'double quotes'],
    [
      'more than 1 MB',
      `"${'é'.repeat(LARGEST_FILE_BYTES / 2)}"`,
      'file',
      '1.0 MB',
      'at most 1 MB',
      'words and numbers only',
    ],
    [
      'a lost comma',
      coils.replace('"US",', '"US"'),
      'line 7, column 3',
      '"altitudeM"',
      'a comma or }',
      'Put a comma before it',
    ],
    [
      'half a file',
      coils.slice(0, coils.indexOf('"circuits": [') + 13),
      'line 66, column 16',
      'end of the file',
      'a value',
      'breaks off',
    ],
  ])('%s', (_, text, path, found, allowed, advice) => {
    const problems = problemsOf(text);
    expect(problems).toHaveLength(1);
    const parts = told(problems[0]);
    expect(parts.where).toContain(path);
    expect(parts.found).toContain(found);
    expect(parts.allowed).toContain(allowed);
    expect(parts.advice).toContain(advice);
  });

  it('takes exactly 1 MB', () => {
    const padding = ' '.repeat(LARGEST_FILE_BYTES - new TextEncoder().encode(coils).length);
    expect(problemsOf(coils + padding)).toEqual([]);
    expect(problemsOf(`${coils + padding} `)).toHaveLength(1);
  });
});

describe('a file with several problems', () => {
  it('tells all of them at once, each with its line', () => {
    const kitchen = demoJson('flat-coils.kitchen.json');
    kitchen.household.people = 9;
    kitchen.vessels[0].maxFillL = -1;
    kitchen.fixtures[2].material = 'stainless';
    kitchen.fixtures[11].outlines = [];
    const text = JSON.stringify(kitchen, null, 2);
    const problems = problemsOf(text);
    expect(problems.map(({ path }) => path)).toEqual([
      'household.people',
      'vessels[0].maxFillL',
      'fixtures[2].material',
      'fixtures[11].outlines',
    ]);
    const lines = text.split('\n');
    expect(problems.map(({ line }) => lines[(line ?? 0) - 1]?.trim().split(':')[0])).toEqual([
      '"people"',
      '"maxFillL"',
      '"material"',
      '"outlines"',
    ]);
    expect(told(problems[0]).all).toMatch(/^Line \d+, household\.people: found 9; allowed: /);
  });

  it('tells a misspelt required field once', () => {
    const kitchen = demoJson('flat-coils.kitchen.json');
    kitchen.fixture = kitchen.fixtures;
    delete kitchen.fixtures;
    expect(problemsOf(JSON.stringify(kitchen)).map(({ path }) => path)).toEqual(['fixture']);
  });

  it('tells a field written twice', () => {
    const text = (DEMO_TEXTS[0]?.[1] ?? '').replace(
      '"altitudeM": 20,',
      '"altitudeM": 20,\n"altitudeM": 30,',
    );
    expect(problemsOf(text)).toMatchObject([
      { path: 'altitudeM', found: { key: 'problems.twice.found' } },
    ]);
  });

  it('stops counting at a hundred', () => {
    const kitchen = demoJson('flat-coils.kitchen.json');
    kitchen.fixtures = Array.from({ length: 300 }, () => ({ kind: 'door' }));
    expect(problemsOf(JSON.stringify(kitchen))).toHaveLength(100);
  });
});
