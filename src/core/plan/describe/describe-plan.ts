import { message, type Translator } from '../../messages/index.ts';
import type { Plan } from '../model/index.ts';
import { lines, type Line, type PlanSection } from './line.ts';
import { pourLines } from './pours.ts';
import {
  headerMessages,
  methodLines,
  questionLines,
  shoppingMessages,
  totalsMessages,
} from './sections.ts';
import { dayMessages, timetableLines } from './timetable.ts';
import { gateLines, workLines } from './work.ts';

/** What one step of depth sets a line in by. */
const INDENT = '  ';

function sectionsOf(plan: Plan): readonly PlanSection[] {
  return [
    { heading: message('plan.section.methods'), lines: methodLines(plan) },
    { heading: message('plan.section.questions'), lines: questionLines(plan) },
    { heading: message('plan.section.notices'), lines: lines(plan.notices) },
    { heading: message('plan.section.shopping'), lines: lines(shoppingMessages(plan)) },
    { heading: message('plan.section.totals'), lines: lines(totalsMessages(plan)) },
    { heading: message('plan.section.pours'), lines: pourLines(plan) },
    { heading: message('plan.section.days'), lines: lines(dayMessages(plan)) },
    { heading: message('plan.section.timetable'), lines: timetableLines(plan) },
    { heading: message('plan.section.gates'), lines: gateLines(plan) },
    { heading: message('plan.section.work'), lines: workLines(plan) },
  ];
}

/**
 * The plan as plain text, for a terminal or for print. Times are those of the
 * wall clock where the plan knows its start and place; else they are counted
 * from the start of the job: "T+1 day 02:10".
 */
export function describePlan(plan: Plan, { say, t }: Translator): string {
  const print = ({ depth, text }: Line): string => `${INDENT.repeat(depth)}${say(text)}`;
  const printSection = ({ heading, lines: told }: PlanSection): readonly string[] => {
    if (told.length === 0) return [];
    const title = say(heading);
    return ['', title, '-'.repeat(title.length), ...told.map(print)];
  };
  return [
    ...headerMessages(plan).map(say),
    '',
    t('plan.customs-differ'),
    ...sectionsOf(plan).flatMap(printSection),
    '',
    t('plan.customs-differ'),
    '',
  ].join('\n');
}
