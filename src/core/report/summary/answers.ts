import { message, type Message } from '../../messages/index.ts';
import { saidMessage } from '../lines/fixture.ts';
import { clockMessage, reviewMessage } from '../lines/whole-run.ts';
import type { Report } from '../model/report.ts';

/**
 * Who said what and when: the household's answers, its own rows of the custom,
 * what was answered at the tablet after a gap, and what nobody had answered
 * when the plan was made.
 */
export function answersOf(report: Report, zone: string): readonly Message[] {
  const name = (id: string): string => report.fixtures.find((row) => row.id === id)?.name ?? id;
  return [
    ...report.overrides.map((row) =>
      message('report.said-about', { name: row.name, said: saidMessage(row) }),
    ),
    ...report.ownRows.map(({ names, method, minutes, saidBy, saidOn, why }) =>
      message('report.said-row', {
        names,
        method: message(`common.method.${method}`),
        minutes: minutes ?? 0,
        saidBy,
        saidOn,
        why,
      }),
    ),
    ...report.clockQuestions.map((question) => clockMessage(question, zone)),
    ...report.reviews.map((review) => reviewMessage(review, zone)),
    ...report.questions.map(({ fixture, ask, untilThen }) =>
      message('report.unanswered', { fixture: name(fixture), ask, untilThen }),
    ),
  ];
}
