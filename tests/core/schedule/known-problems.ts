import { readFileSync } from 'node:fs';
import type { Problem } from '../../../src/core/schedule/index.ts';
import { problemOf } from '../../../src/cli/reckon/solvers/schedule.ts';

/** A published problem and what is known about its best finish (tests/data/schedule/README.md). */
export type Known = {
  readonly name: string;
  readonly kind: 'optimal' | 'best-known' | 'infeasible';
  readonly known: number | null;
  readonly lowerBound: number | null;
  readonly problem: Problem;
};

/** The problems of one file of tests/data/schedule. */
export function knownProblems(file: string): Known[] {
  const path = new URL(`../../data/schedule/${file}.jsonl`, import.meta.url);
  const lines = readFileSync(path, 'utf8').trim().split('\n');
  return lines.map((line) => {
    const row = JSON.parse(line) as Omit<Known, 'problem'>;
    return { ...row, problem: problemOf(row) };
  });
}
