import { parseMoment } from '../core/calendar/index.ts';
import type { Kitchen } from '../core/kitchen/index.ts';
import { OutOfRangeError } from '../core/units/index.ts';
import { buildPlan, checkPlan, describePlan, type Plan } from '../core/plan/index.ts';
import { readKitchenFile } from './kitchen-file.ts';

const USE = 'Use: npm run --silent plan -- FILE [--json] [--start=2026-03-29T18:00]';
const START = '--start=';

/** What is printed, what is said beside it, and the exit code: 2 for what was given, 1 for a plan that does not hold. */
export type Said = {
  readonly out: string;
  readonly err: readonly string[];
  readonly code: 0 | 1 | 2;
};

function refused(err: readonly string[]): Said {
  return { out: '', err, code: 2 };
}

/** The plan from the start that was told, in the kitchen's own zone unless an offset is. */
function planned(kitchen: Kitchen, start: string | undefined): Plan {
  if (start === undefined) return buildPlan(kitchen);
  return buildPlan(kitchen, { startWallMs: parseMoment('start', start, kitchen.place?.zone) });
}

/** Answers the words after `plan`. */
export function planAnswer(words: readonly string[]): Said {
  const flags = words.filter((word) => word.startsWith('--'));
  const files = words.filter((word) => !word.startsWith('--'));
  const strange = flags.find((flag) => flag !== '--json' && !flag.startsWith(START));
  if (strange !== undefined)
    return refused([`${strange} is no option; allowed: --json, ${START}TIME.`, USE]);
  const starts = flags.filter((flag) => flag.startsWith(START));
  if (starts.length > 1)
    return refused([`Found ${starts.length} starts; allowed: one. Remove the others.`, USE]);
  const [file] = files;
  if (file === undefined || files.length > 1)
    return refused([`Found ${files.length} files; allowed: one.`, USE]);
  const read = readKitchenFile(file);
  if ('problems' in read) {
    const count = read.problems.length;
    return refused([
      `${file} cannot be planned: ${count} ${count === 1 ? 'problem' : 'problems'}.`,
      ...read.problems.map(({ message }) => `  ${message}`),
    ]);
  }
  if (read.kitchen.fixtures.length === 0)
    return refused([
      `${file} cannot be planned: fixtures: found none; allowed: at least one. Describe what is in the kitchen.`,
    ]);
  const warnings = read.warnings.map(({ message }) => `Look at this: ${message}`);
  try {
    const plan = planned(read.kitchen, starts[0]?.slice(START.length));
    const problems = checkPlan(plan).map(({ say }) => `The plan does not hold: ${say}.`);
    const out = flags.includes('--json')
      ? `${JSON.stringify(plan, null, 2)}\n`
      : describePlan(plan);
    return { out, err: [...warnings, ...problems], code: problems.length > 0 ? 1 : 0 };
  } catch (fault) {
    if (!(fault instanceof OutOfRangeError)) throw fault;
    return refused([`${file} cannot be planned: ${fault.message}`]);
  }
}
