import { parseArgs } from 'node:util';
import { parseMoment } from '../../core/calendar/index.ts';
import { problemMessage, type Kitchen } from '../../core/kitchen/index.ts';
import { OutOfRangeError } from '../../core/units/index.ts';
import { describeCovers, planCovers } from '../../core/covering/index.ts';
import { buildPlan, checkPlan, describePlan, type Plan } from '../../core/plan/index.ts';
import { calendarFile } from '../../core/report/index.ts';
import { buildUtensilPlan, describeUtensils } from '../../core/utensils/index.ts';
import { inEnglish } from '../speech/english.ts';
import { readKitchenFile } from '../input/kitchen-file.ts';

const { t } = inEnglish;

const OPTIONS = {
  json: { type: 'boolean' },
  calendar: { type: 'boolean' },
  covers: { type: 'boolean' },
  utensils: { type: 'boolean' },
  start: { type: 'string', multiple: true },
} as const;
const FORMS = ['json', 'calendar', 'covers', 'utensils'] as const;

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

/** What is printed: the plan in words, as data, as a calendar, or another sheet in words. */
type Form = 'text' | (typeof FORMS)[number];

type Asked = {
  readonly file: string;
  readonly as: Form;
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
    return refused([t('terminal.option.unknown', { option: strange.rawName }), t('terminal.use')]);
  const starts = values.start ?? [];
  if (starts.length > 1)
    return refused([t('terminal.starts', { found: starts.length }), t('terminal.use')]);
  const [file] = positionals;
  if (file === undefined || positionals.length > 1)
    return refused([t('terminal.files', { found: positionals.length }), t('terminal.use')]);
  const forms = FORMS.filter((form) => values[form]);
  if (forms.length > 1) {
    const found = forms.map((form) => `--${form}`).join(', ');
    return refused([t('terminal.several-forms', { forms: found }), t('terminal.use')]);
  }
  const [start] = starts;
  if (start === true) return refused([t('terminal.start.empty'), t('terminal.use')]);
  if (values.calendar && start === undefined)
    return refused([t('terminal.calendar.start'), t('terminal.use')]);
  return { file, as: forms[0] ?? 'text', start: typeof start === 'string' ? start : undefined };
}

/** What is printed of a plan; undefined: a calendar in which nothing lies ahead. */
function printed(plan: Plan, as: Asked['as'], stampMs: number): string | undefined {
  switch (as) {
    case 'json':
      return `${JSON.stringify(plan, null, 2)}\n`;
    case 'calendar':
      return plan.days && calendarFile(plan, plan.days.startWallMs, stampMs, inEnglish);
    case 'covers':
      return describeCovers(planCovers(plan.kitchen, plan), plan.kitchen.name, inEnglish);
    case 'utensils':
      return describeUtensils(buildUtensilPlan(plan.kitchen), plan.kitchen.name, inEnglish);
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
    return refused([
      t('terminal.refused.problems', { file, problems: read.problems.length }),
      ...read.problems.map(({ text }) => `  ${text}`),
    ]);
  }
  if (read.kitchen.fixtures.length === 0) return refused([t('terminal.refused.empty', { file })]);
  if (as === 'calendar' && !read.kitchen.place)
    return refused([t('terminal.calendar.place', { file })]);
  const warnings = read.warnings.map((warning) =>
    t('terminal.warning', { warning: problemMessage(warning) }),
  );
  try {
    const plan = planned(read.kitchen, start);
    const problems = checkPlan(plan).map(({ say }) => t('terminal.unsound', { problem: say }));
    const code = problems.length > 0 ? 1 : 0;
    const out = printed(plan, as, stampMs);
    if (out === undefined) return refused([t('terminal.calendar.empty', { file })]);
    return { out, err: [...warnings, ...problems], code };
  } catch (fault) {
    if (!(fault instanceof OutOfRangeError)) throw fault;
    return refused([t('terminal.refused', { file, why: fault.message })]);
  }
}
