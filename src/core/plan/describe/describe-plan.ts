import { inEnglish } from '../../messages/temporary.ts';
import type { Plan } from '../model/types.ts';
import { headerLines, methodLines, questionLines, shoppingLines, totalsLines } from './sections.ts';
import { dayLines, timetableLines } from './timetable.ts';
import { gateLines, workLines } from './work.ts';
import { CUSTOMS_DIFFER } from './words.ts';

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', title, '-'.repeat(title.length), ...lines];
}

/**
 * The plan as plain text, for a terminal or for print. Times are those of the
 * wall clock where the plan knows its start and place; else they are counted
 * from the start of the job: "T+1 day 02:10".
 */
export function describePlan(plan: Plan): string {
  return [
    ...headerLines(plan),
    '',
    CUSTOMS_DIFFER,
    ...section('Methods', methodLines(plan)),
    ...section('Questions to ask', questionLines(plan)),
    ...section('Before you start', plan.notices.map(inEnglish)),
    ...section('To buy and gather', shoppingLines(plan)),
    ...section('Totals', totalsLines(plan)),
    ...section('Days', dayLines(plan)),
    ...section('Timetable', timetableLines(plan)),
    ...section('Confirmed once, before the work', gateLines(plan)),
    ...section('How it is done', workLines(plan)),
    '',
    CUSTOMS_DIFFER,
    '',
  ].join('\n');
}
