import { describe, expect, it } from 'vitest';
import {
  formatKitchen,
  parseKitchen,
  problemMessage,
  type KitchenProblem,
} from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from './demos.ts';

/** Time of the processor that a person waits without a second thought, s, whatever else the machine does. */
const SOON_S = 2;

const HEAD = '"format":"glowpour-kitchen","version":1';

function many(count: number, one: (i: number) => string): string {
  return Array.from({ length: count }, (_, i) => one(i)).join(',');
}

/** The problems of a file, and the seconds of the processor it took to find them. */
function read(text: string): { problems: readonly KitchenProblem[]; tookS: number } {
  const from = process.cpuUsage();
  const outcome = parseKitchen(text);
  const { user, system } = process.cpuUsage(from);
  const problems = 'problems' in outcome ? outcome.problems : [];
  return { problems, tookS: (user + system) / 1e6 };
}

function told(problems: readonly KitchenProblem[]): readonly string[] {
  return problems.map((problem) => inEnglish.say(problemMessage(problem)));
}

describe('a big kitchen file', () => {
  it.each([60_000, 90_000])('of %i unknown fields is answered soon', (count) => {
    const { problems, tookS } = read(`{${HEAD},${many(count, (i) => `"x${i}":1`)}}`);
    expect(tookS).toBeLessThan(SOON_S);
    expect(problems.length).toBeLessThan(60);
  });

  it('names a few of its unknown fields and counts the others', () => {
    const { problems } = read(`{${HEAD},${many(60_000, (i) => `"x${i}":1`)}}`);
    const lines = told(problems);
    expect(lines.filter((line) => line.includes('the unknown field "x'))).toHaveLength(20);
    expect(lines.filter((line) => line.includes('59980 more unknown fields'))).toHaveLength(1);
    // What is missing is told beside it.
    expect(lines.some((line) => line.includes('household'))).toBe(true);
  });

  it('of unknown fields in every fixture is answered soon', () => {
    const fixture = `{"kind":"sink",${many(300, (i) => `"x${i}":1`)}}`;
    const { problems, tookS } = read(`{${HEAD},"fixtures":[${many(290, () => fixture)}]}`);
    expect(problems.length).toBeLessThanOrEqual(100);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it('of one name written again and again is answered soon, in few problems', () => {
    const { problems, tookS } = read(`{${many(150_000, () => '"x":1')}}`);
    expect(problems.length).toBeLessThanOrEqual(100);
    expect(tookS).toBeLessThan(SOON_S);
  });

  it('with names as long as itself tells their beginnings', () => {
    const { problems } = read(`{${HEAD},"${'fixture'.repeat(140_000)}":1}`);
    for (const problem of problems) expect(JSON.stringify(problem).length).toBeLessThan(2000);
  });

  it('a misspelt field beside others is still asked about once', () => {
    const text = formatKitchen(demoKitchen('flat-coils.kitchen.json'));
    const { problems } = read(text.replace('"fixtures"', '"fixturs"'));
    expect(told(problems)).toEqual([expect.stringContaining('Did you mean "fixtures"?')]);
  });
});
