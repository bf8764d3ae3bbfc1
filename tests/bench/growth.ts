/**
 * How planning grows with the number of counters: `npm run bench:growth`.
 * Processor time, the median of a few plans of each size once the code is warm.
 */
import type { Fixture, Kitchen } from '../../src/core/kitchen/index.ts';
import { buildPlan } from '../../src/core/plan/index.ts';
import { kitchenOf } from '../core/plan/support/plans.ts';

const SIZES = [10, 30, 100, 300] as const;
const WARMING = 20;
const PLANS = 5;
/** Counters stand in a row, so far apart that none meets another, m. */
const APART_M = 5;

/** The flat with so many counters and nothing else. */
function withCounters(count: number): Kitchen {
  const kitchen = kitchenOf('flat-coils');
  const counter = kitchen.fixtures.find((one) => one.kind === 'counter' && one.holes.length === 0);
  if (counter?.kind !== 'counter') throw new Error('the flat has no plain counter');
  const fixtures = Array.from({ length: count }, (_, at): Fixture => ({
    ...counter,
    id: `counter-${at}`,
    name: `Counter ${at}`,
    outline: counter.outline.map(([x, y]) => [x + APART_M * at, y] as const),
  }));
  return { ...kitchen, fixtures };
}

function cpuS(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

for (let turn = 0; turn < WARMING; turn++) buildPlan(withCounters(SIZES[0]));
let first: number | undefined;
for (const size of SIZES) {
  const kitchen = withCounters(size);
  const plan = buildPlan(kitchen);
  const seconds = median(Array.from({ length: PLANS }, () => cpuS(() => void buildPlan(kitchen))));
  first ??= seconds;
  const { finishS, lowerBoundS } = plan.timetable;
  console.log(
    `${size} counters, ${plan.steps.length} steps: ${seconds.toFixed(2)} s of processor time, ` +
      `${(seconds / first).toFixed(1)} times the smallest; ends ` +
      `${(100 * (finishS / lowerBoundS - 1)).toFixed(1)} % above its bound`,
  );
}
