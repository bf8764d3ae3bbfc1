/**
 * How long planning takes beside a fixed loop, against what was kept:
 * `npm run bench:ratios` fails when a ratio has grown by half,
 * `npm run bench:ratios -- --keep` keeps those measured now.
 * Processor time, the least of several, so that a busy machine slows both alike.
 */
import { join } from 'node:path';
import { buildPlan } from '../../src/core/plan/index.ts';
import { DEMOS, kitchenOf, planOfDemo } from '../core/plan/support/plans.ts';
import { growth, keep, MOST_GROWTH, readKept } from './kept.ts';

const KEPT = join(import.meta.dirname, 'kept-ratios.json');
const WARMING = 4;
const TURNS = 15;
const MEASURED_AGAIN = 2;
const LOOP_STEPS = 1e6;

/** A million steps of a fixed arithmetic. */
function referenceLoop(): number {
  let state = 1;
  for (let step = 0; step < LOOP_STEPS; step++)
    state = (Math.imul(state, 1664525) + 1013904223) | 0;
  return state;
}

function leastMs(work: () => unknown): number {
  for (let turn = 0; turn < WARMING; turn++) work();
  let least = Infinity;
  for (let turn = 0; turn < TURNS; turn++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

function besideLoop(work: () => unknown): { readonly workMs: number; readonly ratio: number } {
  const workMs = leastMs(work);
  return { workMs, ratio: workMs / leastMs(referenceLoop) };
}

const works: Readonly<Record<string, () => unknown>> = {
  ...Object.fromEntries(
    DEMOS.map((demo) => {
      const kitchen = kitchenOf(demo);
      return [`plan of ${demo}`, () => buildPlan(kitchen)];
    }),
  ),
  'mountain-gas planned again': (() => {
    const kitchen = kitchenOf('mountain-gas');
    const { timetable } = planOfDemo('mountain-gas');
    return () => buildPlan(kitchen, { previousS: timetable.startS });
  })(),
};

const kept = readKept(KEPT);
const keeping = process.argv.includes('--keep');
const measured: Record<string, number> = {};
let slower = 0;
for (const [name, work] of Object.entries(works)) {
  const before = kept[name];
  let { workMs, ratio } = besideLoop(work);
  // What only met a busy moment is not slow three times.
  const most = keeping ? Infinity : (before ?? 0) * MOST_GROWTH;
  for (let again = 0; again < MEASURED_AGAIN && ratio > most; again++)
    ({ workMs, ratio } = besideLoop(work));
  measured[name] = Math.round(ratio * 10) / 10;
  const { isSlower, told } = growth(name, ratio, kept);
  if (isSlower) slower += 1;
  console.log(
    keeping
      ? `${name}: ${workMs.toFixed(0)} ms, ${ratio.toFixed(1)} times the loop`
      : `${workMs.toFixed(0)} ms, beside the loop: ${told}`,
  );
}
if (keeping) keep(KEPT, measured);
else if (slower > 0) {
  console.error(
    `${slower} of ${Object.keys(works).length} grew by more than half; allowed: ${MOST_GROWTH} times the kept ratio. Find what became slow, or keep the new ratios and say why.`,
  );
  process.exitCode = 1;
}
