import { parseArgs } from 'node:util';
import { parseMoment } from '../../core/calendar/index.ts';
import { problemMessage, type Kitchen } from '../../core/kitchen/index.ts';
import { OutOfRangeError } from '../../core/units/index.ts';
import { describeCovers, planCovers } from '../../core/covering/index.ts';
import { adviceFor, describeAdvice, surenessOf, triageOf } from '../../core/advice/index.ts';
import {
  buildPlan,
  checkPlan,
  describePlan,
  type Plan,
  type PlanOptions,
} from '../../core/plan/index.ts';
import { calendarFile } from '../../core/report/index.ts';
import { buildUtensilPlan, describeUtensils } from '../../core/utensils/index.ts';
import { englishOf, inEnglish } from '../speech/english.ts';
import { readKitchenFile } from '../input/kitchen-file.ts';
import { packageVersion } from '../input/version.ts';

const { t } = inEnglish;

const OPTIONS = {
  json: { type: 'boolean' },
  calendar: { type: 'boolean' },
  covers: { type: 'boolean' },
  utensils: { type: 'boolean' },
  advice: { type: 'boolean' },
  version: { type: 'boolean' },
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

/** The start that was told, in the kitchen's own zone unless an offset is. */
function optionsOf(kitchen: Kitchen, start: string | undefined): PlanOptions {
  if (start === undefined) return {};
  return { startWallMs: parseMoment('start', start, kitchen.place?.zone) };
}

/** What is printed: the plan in words, as data, as a calendar, or another sheet in words. */
type Form = 'text' | 'advice' | 'advice-json' | (typeof FORMS)[number];

type Asked = {
  readonly file: string;
  readonly as: Form;
  readonly start: string | undefined;
};

function adviceForm(form: Form): Form {
  return form === 'json' ? 'advice-json' : 'advice';
}

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
  if (values.version) return { out: `${packageVersion()}\n`, err: [], code: 0 };
  const starts = values.start ?? [];
  if (starts.length > 1)
    return refused([t('terminal.starts', { found: starts.length }), t('terminal.use')]);
  const [file] = positionals;
  if (file === undefined || positionals.length > 1)
    return refused([t('terminal.files', { found: positionals.length }), t('terminal.use')]);
  const forms = FORMS.filter((form) => values[form]);
  const advice = values.advice === true;
  // Advice is words or data, as the plan is.
  if (forms.length > 1 || (advice && forms.some((form) => form !== 'json'))) {
    const found = [...forms, ...(advice ? ['advice'] : [])].map((form) => `--${form}`).join(', ');
    return refused([t('terminal.several-forms', { forms: found }), t('terminal.use')]);
  }
  const [start] = starts;
  if (start === true) return refused([t('terminal.start.empty'), t('terminal.use')]);
  if (values.calendar && start === undefined)
    return refused([t('terminal.calendar.start'), t('terminal.use')]);
  const [form = 'text'] = forms;
  const as = advice ? adviceForm(form) : form;
  return { file, as, start: typeof start === 'string' ? start : undefined };
}

/** What would help and how sure the end is, in words or as data. */
function advised(kitchen: Kitchen, plan: Plan, options: PlanOptions, as: Form, nowMs: number) {
  const before = { situation: { kitchen, options }, plan };
  const names = {
    kettle: t('advice.vessel.kettle'),
    'stove-kettle': t('advice.vessel.stove-kettle'),
    urn: t('advice.vessel.urn'),
  };
  const triage = triageOf(before);
  const told = {
    ...adviceFor(before, { names, earliestWallMs: nowMs }),
    sureness: surenessOf(plan, options),
    ...(triage && { triage }),
  };
  if (as === 'advice') return describeAdvice(plan, told, englishOf(kitchen));
  const { finishS } = plan.timetable;
  const data = { format: 'glowpour-advice', version: 1, kitchen: kitchen.name, finishS, ...told };
  return `${JSON.stringify(data, null, 2)}\n`;
}

/** What is printed of a plan; undefined: a calendar in which nothing lies ahead. */
function printed(
  plan: Plan,
  as: Asked['as'],
  stampMs: number,
  { kitchen, options }: { readonly kitchen: Kitchen; readonly options: PlanOptions },
): string | undefined {
  const speech = englishOf(kitchen);
  switch (as) {
    case 'advice':
    case 'advice-json':
      return advised(kitchen, plan, options, as, stampMs);
    case 'json':
      return `${JSON.stringify(plan, null, 2)}\n`;
    case 'calendar':
      return plan.days && calendarFile(plan, plan.days.startWallMs, stampMs, speech);
    case 'covers':
      return describeCovers(planCovers(plan.kitchen, plan), plan.kitchen.name, speech);
    case 'utensils':
      return describeUtensils(buildUtensilPlan(plan.kitchen), plan.kitchen.name, speech);
    case 'text':
      return describePlan(plan, speech);
  }
}

/**
 * Answers the words after `plan`.
 * @param stampMs when this is asked: the stamp of a calendar, and before it no advice begins; ms since 1970-01-01 UTC
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
    const { kitchen } = read;
    const options = optionsOf(kitchen, start);
    const plan = buildPlan(kitchen, options);
    const problems = checkPlan(plan).map(({ say }) => t('terminal.unsound', { problem: say }));
    const code = problems.length > 0 ? 1 : 0;
    const out = printed(plan, as, stampMs, { kitchen, options });
    if (out === undefined) return refused([t('terminal.calendar.empty', { file })]);
    const isPlaceless = start !== undefined && !kitchen.place && (as === 'text' || as === 'advice');
    const hours = isPlaceless ? `${t('terminal.no-place')}\n\n` : '';
    return { out: `${hours}${out}`, err: [...warnings, ...problems], code };
  } catch (fault) {
    if (!(fault instanceof OutOfRangeError)) throw fault;
    return refused([t('terminal.refused', { file, why: fault.message })]);
  }
}
