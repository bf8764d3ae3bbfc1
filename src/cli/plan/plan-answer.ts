import { parseArgs } from 'node:util';
import { parseMoment } from '../../core/calendar/index.ts';
import { problemMessage, type Kitchen } from '../../core/kitchen/index.ts';
import { OutOfRangeError } from '../../core/units/index.ts';
import { buildPlan, checkPlan, describePlan, type Plan } from '../../core/plan/index.ts';
import { calendarFile } from '../../core/report/index.ts';
import { inEnglish } from '../speech/english.ts';
import { readKitchenFile } from '../input/kitchen-file.ts';

const USE = 'Use: npm run --silent plan -- FILE [--json | --calendar] [--start=2026-03-29T18:00]';

const OPTIONS = {
  json: { type: 'boolean' },
  calendar: { type: 'boolean' },
  start: { type: 'string', multiple: true },
} as const;

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

type Asked = {
  readonly file: string;
  readonly as: 'text' | 'json' | 'calendar';
  readonly start: string | undefined;
};

/** The words after `plan` apart, or why they cannot be taken. */
function askedOf(words: readonly string[]): Asked | Said {
  const { values, positionals, tokens } = parseArgs({
    args: [...words],
    options: OPTIONS,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const strange = tokens.find((token) => token.kind === 'option' && !(token.name in OPTIONS));
  if (strange?.kind === 'option')
    return refused([
      `${strange.rawName} is no option; allowed: --json, --calendar, --start=TIME.`,
      USE,
    ]);
  const starts = values.start ?? [];
  if (starts.length > 1)
    return refused([`Found ${starts.length} starts; allowed: one. Remove the others.`, USE]);
  const [file] = positionals;
  if (file === undefined || positionals.length > 1)
    return refused([`Found ${positionals.length} files; allowed: one.`, USE]);
  if (values.json && values.calendar)
    return refused(['Found --json and --calendar; allowed: one of them.', USE]);
  const [start] = starts;
  if (start === true) return refused(['--start has no time; allowed: --start=TIME.', USE]);
  if (values.calendar && start === undefined)
    return refused(['--calendar has no start; allowed: with --start=TIME.', USE]);
  const as = values.json ? 'json' : values.calendar ? 'calendar' : 'text';
  return { file, as, start: typeof start === 'string' ? start : undefined };
}

/** What is printed of a plan; undefined: a calendar in which nothing lies ahead. */
function printed(plan: Plan, as: Asked['as'], stampMs: number): string | undefined {
  switch (as) {
    case 'json':
      return `${JSON.stringify(plan, null, 2)}\n`;
    case 'calendar':
      return plan.days && calendarFile(plan, plan.days.startWallMs, stampMs, inEnglish);
    case 'text':
      return describePlan(plan, inEnglish);
  }
}

/**
 * Answers the words after `plan`.
 * @param stampMs when this is asked, for the stamp of a calendar; ms since 1970-01-01 UTC
 */
export function planAnswer(words: readonly string[], stampMs: number = Date.now()): Said {
  const asked = askedOf(words);
  if ('code' in asked) return asked;
  const { file, as, start } = asked;
  const read = readKitchenFile(file);
  if ('problems' in read) {
    const count = read.problems.length;
    return refused([
      `${file} cannot be planned: ${count} ${count === 1 ? 'problem' : 'problems'}.`,
      ...read.problems.map(({ text }) => `  ${text}`),
    ]);
  }
  if (read.kitchen.fixtures.length === 0)
    return refused([
      `${file} cannot be planned: fixtures: found none; allowed: at least one. Describe what is in the kitchen.`,
    ]);
  if (as === 'calendar' && !read.kitchen.place)
    return refused([
      `${file} has no calendar: place: found none; allowed: latitude, longitude, zone, land. Tell where the kitchen is.`,
    ]);
  const warnings = read.warnings.map(
    (warning) => `Look at this: ${inEnglish.say(problemMessage(warning))}`,
  );
  try {
    const plan = planned(read.kitchen, start);
    const problems = checkPlan(plan).map(({ say }) => `The plan does not hold: ${say}.`);
    const code = problems.length > 0 ? 1 : 0;
    const out = printed(plan, as, stampMs);
    if (out === undefined)
      return refused([
        `${file} has no calendar: nothing in it rests or is purged. Leave --calendar away.`,
      ]);
    return { out, err: [...warnings, ...problems], code };
  } catch (fault) {
    if (!(fault instanceof OutOfRangeError)) throw fault;
    return refused([`${file} cannot be planned: ${fault.message}`]);
  }
}
