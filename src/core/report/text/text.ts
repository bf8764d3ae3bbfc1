import { inEnglish } from '../../messages/temporary.ts';
import { faultLine, fixtureLines, indent, stepLines, type FormatTime } from './text-fixture.ts';
import type { GapReport, Report } from '../types.ts';
import {
  ANSWER_WORDS,
  lengthText,
  oneLine,
  OUTCOME_WORDS,
  PURPOSE_WORDS,
  RUN_OUTCOME_WORDS,
  sentence,
} from '../words.ts';

/**
 * The record as plain text, for sharing and printing: fixture by fixture, then
 * what concerns the whole run. Lines end in `\n`; what people wrote stands on
 * one line each.
 * @param formatTime makes words of a wall time in ms, in the reader's zone
 */
export function reportText(record: Report, formatTime: FormatTime): string {
  const name = (id: string | null): string =>
    record.fixtures.find((fixture) => fixture.id === id)?.name ?? id ?? '';
  const parts: readonly (readonly string[])[] = [
    headLines(record, formatTime),
    ...record.fixtures.map((fixture) => fixtureLines(record, fixture, formatTime)),
    section(
      'Without a place of their own',
      record.general.flatMap((step) => stepLines(step, formatTime)),
    ),
    section(
      record.outcome === 'open' ? 'Not done yet' : 'Not done',
      record.notDone.map((one) => {
        const where = one.fixture === null ? '' : `${oneLine(name(one.fixture))}: `;
        const why = one.reason === '' ? '' : ` Reason: ${sentence(one.reason)}`;
        return `${where}${oneLine(one.title).replace(/\.$/, '')}: ${OUTCOME_WORDS[one.outcome]}.${why}`;
      }),
    ),
    ...wholeRun(record, formatTime),
    section(
      'Open when the plan was made',
      record.questions.map(
        (one) =>
          `${oneLine(name(one.fixture))}: ${oneLine(inEnglish(one.ask))} Until then: ${sentence(inEnglish(one.untilThen))}`,
      ),
    ),
    section(
      'Taken as usual, since nobody told',
      record.assumed.map((one) => `${oneLine(one.what)}: ${sentence(one.taken)}`),
    ),
    section('What stands whatever was done', record.standing),
  ];
  return `${parts
    .filter((part) => part.length > 0)
    .map((part) => part.join('\n'))
    .join('\n\n')}\n`;
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...indent(lines)];
}

function headLines(record: Report, formatTime: FormatTime): readonly string[] {
  const { startedWallMs, closedWallMs } = record;
  const end =
    closedWallMs === null
      ? `As it stands: ${formatTime(record.lastWallMs)}, ${RUN_OUTCOME_WORDS[record.outcome]}.`
      : `Closed: ${formatTime(closedWallMs)}, ${RUN_OUTCOME_WORDS[record.outcome]}.`;
  const why =
    record.reason === '' || record.outcome === 'completed'
      ? []
      : [`Reason: ${sentence(record.reason)}`];
  return [
    `Record: ${oneLine(record.kitchen)}`,
    `Purpose: ${PURPOSE_WORDS[record.purpose]}`,
    `Custom: ${oneLine(record.customName)}`,
    startedWallMs === null
      ? `Planned: ${formatTime(record.draftedWallMs)}. Not started.`
      : `Started: ${formatTime(startedWallMs)}`,
    end,
    ...why,
  ];
}

function wholeRun(record: Report, formatTime: FormatTime): readonly (readonly string[])[] {
  const range = (fromMs: number, toMs: number | null): string =>
    toMs === null ? `since ${formatTime(fromMs)}` : `${formatTime(fromMs)} to ${formatTime(toMs)}`;
  return [
    section(
      'Confirmations overridden for the whole run',
      record.overriddenGates
        .filter((one) => one.fixture === null)
        .map(
          (one) =>
            `${formatTime(one.wallMs)}: “${oneLine(one.ask)}” Reason: ${sentence(one.reason)}`,
        ),
    ),
    section(
      'Faults of no one place',
      record.faults.filter((one) => one.fixture === null).map((one) => faultLine(one, formatTime)),
    ),
    section(
      'Gaps',
      record.gaps.map((gap) => gapLine(gap, formatTime)),
    ),
    section('Asked after gaps', questionLines(record, formatTime)),
    section(
      'Told late',
      record.lateTimers.map(
        (one) =>
          `${oneLine(one.stepTitle)}: “${oneLine(one.label)}” was told ${lengthText(one.lateByS)} late, ${formatTime(one.toldWallMs)}.`,
      ),
    ),
    section(
      'Alarms that could not sound',
      record.silentAlarms.map(
        (one) =>
          `${formatTime(one.wallMs)}: ${oneLine(one.stepTitle)}, “${oneLine(one.label)}”. ${sentence(one.text)}`,
      ),
    ),
    section(
      'Paused',
      record.pauses.map((one) => `${range(one.fromWallMs, one.toWallMs)}.`),
    ),
    section(
      'Nothing could be written down',
      record.storage.map(
        (one) => `${range(one.fromWallMs, one.mendedWallMs)}: ${sentence(one.text)}`,
      ),
    ),
    section(
      'Notes',
      record.notes.map((one) => `${formatTime(one.wallMs)}: ${sentence(one.text)}`),
    ),
  ];
}

function gapLine(gap: GapReport, formatTime: FormatTime): string {
  const range = `${formatTime(gap.fromWallMs)} to ${formatTime(gap.toWallMs)}`;
  const torn =
    gap.tornRecords === 0
      ? ''
      : ` ${gap.tornRecords} half-written ${gap.tornRecords === 1 ? 'entry was' : 'entries were'} dropped.`;
  switch (gap.kind) {
    case 'not-running':
      return `${range}: the app was not running, ${lengthText(gap.unprovedS)}.${torn}`;
    case 'slept-or-set':
      return `${range}: the tablet slept or its clock was set forward, ${lengthText(gap.unprovedS)}.`;
    case 'set-back':
      return `Until ${formatTime(gap.toWallMs)}: the tablet’s clock was set back by ${lengthText(gap.unprovedS)}.`;
  }
}

function questionLines(record: Report, formatTime: FormatTime): readonly string[] {
  const answered = (answer: string | null, atMs: number | null): string =>
    answer === null || atMs === null ? 'not answered' : `${answer}, answered ${formatTime(atMs)}`;
  return [
    ...record.clockQuestions.map((one) => {
      const answer =
        one.answer === 'right'
          ? 'yes'
          : one.answer === 'wrong'
            ? 'no, the right time is not known'
            : one.answer === null
              ? null
              : `no, it was ${formatTime(one.actualWallMs ?? 0)}`;
      return `Does the tablet show the right time (${formatTime(one.askedWallMs)})? ${answered(answer, one.answeredWallMs)}.`;
    }),
    ...record.reviews.map(
      (one) =>
        `${oneLine(one.stepTitle)}, a gap of ${lengthText(one.gapS)}: ${oneLine(one.ask)} ${answered(
          one.answer === null ? null : ANSWER_WORDS[one.answer],
          one.answeredWallMs,
        )}.`,
    ),
  ];
}
