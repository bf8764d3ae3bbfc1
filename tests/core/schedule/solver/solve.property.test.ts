import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkSchedule,
  ScheduleRefusal,
  solve,
  type Problem,
  type Schedule,
} from '../../../../src/core/schedule/index.ts';
import { smallProblem, solvedProblem } from '../problems.ts';

const RUNS = 400;

function attempt(problem: Problem): Schedule | ScheduleRefusal {
  try {
    return solve(problem, { rounds: 20 });
  } catch (fault) {
    if (fault instanceof ScheduleRefusal) return fault;
    throw fault;
  }
}

/** The earliest finish in whole seconds, by trying every start; undefined: there is no schedule. */
function bestByTrying(problem: Problem, horizonS: number): number | undefined {
  let best: number | undefined;
  const startS: Record<string, number> = {};
  const visit = (at: number) => {
    const activity = problem.activities[at];
    if (!activity) {
      const finishS = Math.max(...problem.activities.map((one) => startS[one.id]! + one.durationS));
      if (best !== undefined && finishS >= best) return;
      const bound = { lowerBoundS: 0, bound: { kind: 'critical path' as const }, optimal: false };
      if (checkSchedule(problem, { startS, finishS, ...bound }).length === 0) best = finishS;
      return;
    }
    for (let start = 0; start <= horizonS; start++) {
      startS[activity.id] = start;
      visit(at + 1);
    }
  };
  visit(0);
  return best;
}

describe('solve', () => {
  it('keeps every rule, and finds a schedule where one is known', () => {
    let tried = 0;
    let missed = 0;
    fc.assert(
      fc.property(solvedProblem, ({ problem, startS }) => {
        const answer = attempt(problem);
        tried++;
        if (answer instanceof ScheduleRefusal) {
          missed++;
          // Giving up is honest; a proof that nothing exists would be false here.
          expect(answer.code).toBe('not-found');
          return;
        }
        expect(checkSchedule(problem, answer)).toEqual([]);
        const knownFinish = Math.max(
          ...problem.activities.map(({ id, durationS }) => startS[id]! + durationS),
        );
        expect(answer.lowerBoundS).toBeLessThanOrEqual(knownFinish);
      }),
      { numRuns: RUNS, seed: 7 },
    );
    console.log(`random problems with a known schedule: ${tried}, not found: ${missed}`);
    expect(missed / tried).toBeLessThanOrEqual(0.02);
  });

  it('agrees with trying every start on small problems', () => {
    let optimal = 0;
    let solved = 0;
    fc.assert(
      fc.property(smallProblem, (problem) => {
        const answer = attempt(problem);
        const best = bestByTrying(problem, 11);
        if (answer instanceof ScheduleRefusal) {
          expect(best).toBeUndefined();
          return;
        }
        expect(checkSchedule(problem, answer)).toEqual([]);
        // A schedule beyond the horizon of the trial is possible, but not within it.
        if (best === undefined) return expect(answer.finishS).toBeGreaterThan(11);
        solved++;
        if (answer.finishS === best) optimal++;
        expect(answer.lowerBoundS).toBeLessThanOrEqual(best);
        if (answer.optimal) expect(answer.finishS).toBe(best);
      }),
      { numRuns: RUNS, seed: 11 },
    );
    console.log(`small problems: ${solved} solved, ${optimal} of them optimally`);
    expect(optimal / solved).toBeGreaterThanOrEqual(0.97);
  });

  it('gives the same answer every time', () => {
    fc.assert(
      fc.property(solvedProblem, ({ problem }) => {
        expect(attempt(problem)).toEqual(attempt(problem));
      }),
      { numRuns: 40, seed: 3 },
    );
  });
});

describe('checkSchedule', () => {
  it('catches work moved to where it may not be', () => {
    let moved = 0;
    fc.assert(
      fc.property(solvedProblem, ({ problem }) => {
        const answer = attempt(problem);
        if (answer instanceof ScheduleRefusal) return;
        for (const { id, after = [] } of problem.activities) {
          for (const lag of after) {
            const from = problem.activities.find((one) => one.id === lag.id)!;
            const least = answer.startS[lag.id]! + from.durationS + (lag.minLagS ?? 0);
            const startS = { ...answer.startS, [id]: least - 1 };
            const rules = checkSchedule(problem, { ...answer, startS }).map(({ rule }) => rule);
            expect(rules).toContain('minimum lag');
            moved++;
          }
        }
      }),
      { numRuns: 100, seed: 5 },
    );
    expect(moved).toBeGreaterThan(100);
  });
});
