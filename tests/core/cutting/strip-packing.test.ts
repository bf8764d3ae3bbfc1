import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planCuts } from '../../../src/core/cutting/index.ts';
import { replay, separable } from './replay.ts';

type Strip = {
  readonly name: string;
  readonly stripWidth: number;
  readonly optimalHeight: number;
  readonly pieces: readonly (readonly [number, number])[];
};

// Hopper & Turton 2001, sets C1 to C7; see the README beside the file.
const STRIPS = readFileSync(
  new URL('../../data/cutting/strip-packing.jsonl', import.meta.url),
  'utf8',
)
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Strip);

/** Allowed mean and worst over the perfect length: what a plan for scissors promises, and what was measured with room. */
const MOST_MEAN = 0.05;
const MOST_WORST = 0.07;

function percent(share: number): string {
  return `${(100 * share).toFixed(2)} %`;
}

describe('published strips', () => {
  // Lengths in centimetres: pieces of the size that is cut here.
  const problems = STRIPS.map(({ name, stripWidth, optimalHeight, pieces }) => ({
    name,
    perfectM: optimalHeight / 100,
    problem: {
      rollWidthM: stripWidth / 100,
      pieces: pieces.map(([width, length], at) => ({
        id: `${at}`,
        widthM: width / 100,
        lengthM: length / 100,
      })),
    },
  }));

  it('holds two strips of each of the seven sets, each with its perfect length', () => {
    expect(STRIPS.length).toBe(14);
    for (const { perfectM, problem } of problems) {
      const areaM2 = problem.pieces.reduce((sum, { widthM, lengthM }) => sum + widthM * lengthM, 0);
      expect(areaM2).toBeCloseTo(perfectM * problem.rollWidthM, 9);
    }
  });

  it('are cut with little more than the perfect length, by cuts that can be made', () => {
    const gaps = problems.map(({ name, perfectM, problem }) => {
      const plan = planCuts(problem);
      expect(replay(problem, plan), name).toEqual([]);
      expect(separable(plan.cuts), name).toBe(true);
      expect(plan.leastLengthM, name).toBeLessThanOrEqual(perfectM + 1e-9);
      return { name, gap: plan.usedLengthM / perfectM - 1 };
    });
    const mean = gaps.reduce((sum, { gap }) => sum + gap, 0) / gaps.length;
    const [worst] = gaps.toSorted((a, b) => b.gap - a.gap);
    const perfect = gaps.filter(({ gap }) => gap < 1e-9).length;
    console.log(
      `strip packing: ${gaps.length} strips, mean ${percent(mean)} over the perfect length ` +
        `(allowed ${percent(MOST_MEAN)}), worst ${percent(worst!.gap)} (${worst!.name}), perfect ${perfect}`,
    );
    expect(mean).toBeLessThanOrEqual(MOST_MEAN);
    expect(worst!.gap).toBeLessThanOrEqual(MOST_WORST);
  }, 60_000);
});
