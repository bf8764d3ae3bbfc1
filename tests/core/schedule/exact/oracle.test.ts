import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkSchedule,
  ScheduleRefusal,
  solve,
  type Problem,
  type SolveOptions,
} from '../../../../src/core/schedule/index.ts';
import { crowdedProblem, kettleProblem, twinnedProblem } from '../problems.ts';
import { earliestFinish } from './milp.ts';

/** `.ci/run` compares more. */
const PROBLEMS = Number(process.env['GLOWPOUR_SCHEDULES'] ?? 60);
/** Three days: a problem that is refused has no schedule in them. */
const HORIZON_S = 64;

function answerOf(problem: Problem, options: SolveOptions) {
  try {
    return solve(problem, options);
  } catch (fault) {
    if (fault instanceof ScheduleRefusal) return fault;
    throw fault;
  }
}

/** Solves samples of a kind of problems both ways. */
function compare(kind: fc.Arbitrary<Problem>, seed: number) {
  let only = 0;
  let without = 0;
  for (const problem of fc.sample(kind, { numRuns: PROBLEMS, seed })) {
    const answer = answerOf(problem, { rounds: 0 });
    if (answer instanceof ScheduleRefusal) {
      expect(earliestFinish(problem, HORIZON_S), JSON.stringify(problem)).toBeUndefined();
      without++;
      continue;
    }
    expect(checkSchedule(problem, answer)).toEqual([]);
    const { finishS, lowerBoundS, optimal } = answer;
    // The finish is kept by a schedule that was checked: the other need not look beyond.
    const best = earliestFinish(problem, finishS);
    expect({ finishS, lowerBoundS, optimal }, JSON.stringify(problem)).toEqual({
      finishS: best,
      lowerBoundS: best,
      optimal: true,
    });
    const quick = answerOf(problem, { rounds: 0, steps: 0 });
    if (quick instanceof ScheduleRefusal || !quick.optimal) only++;
  }
  console.log(
    `beside a mixed integer program: ${PROBLEMS - without} problems equal, ${without} without a ` +
      `schedule; of ${only} only the exact search knew the best finish`,
  );
  return only;
}

describe('the exact search beside a mixed integer program', () => {
  it(`finishes ${PROBLEMS} random problems as early, and knows it`, () => {
    expect(compare(crowdedProblem, 17)).toBeGreaterThan(PROBLEMS / 5);
  });

  it(`finishes ${PROBLEMS} problems full of work that is the same but for its name as early, and knows it`, () => {
    expect(compare(twinnedProblem, 18)).toBeGreaterThan(PROBLEMS / 5);
  });

  it(`finishes ${PROBLEMS} problems of kettles that are poured while their burner stands idle as early, and knows it`, () => {
    expect(compare(kettleProblem, 19)).toBeGreaterThan(PROBLEMS / 5);
  });
});
