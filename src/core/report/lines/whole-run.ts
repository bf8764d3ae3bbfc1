import { message, type Message } from '../../messages/index.ts';
import type { ClockQuestion, GapReport, Report } from '../model/report.ts';
import { line, type ReportLine, type ReportSection } from './line.ts';
import { faultLine } from './steps.ts';

type Period = { readonly fromWallMs: number; readonly toWallMs: number | null };

/** What concerns the run as a whole; sections without lines are left out by who prints them. */
export function wholeRunSections(report: Report, zone: string): readonly ReportSection[] {
  const section = (heading: Message, texts: readonly Message[]): ReportSection => ({
    heading,
    lines: texts.map((text) => line(1, text)),
  });
  return [
    section(
      message('report.section.overridden'),
      report.overriddenGates
        .filter((row) => row.fixture === null)
        .map(({ wallMs, ask, reason }) =>
          message('report.override-run', { wallMs, zone, ask, reason }),
        ),
    ),
    {
      heading: message('report.section.faults'),
      lines: report.faults
        .filter((row) => row.fixture === null)
        .map((fault) => ({ ...faultLine(fault, zone), depth: 1 })),
    },
    {
      heading: message('report.section.gaps'),
      lines: report.gaps.map((gap) => gapLine(gap, zone)),
    },
    section(message('report.section.asked'), [
      ...report.clockQuestions.map((question) => clockMessage(question, zone)),
      ...report.reviews.map((review) => reviewMessage(review, zone)),
    ]),
    section(
      message('report.section.late'),
      report.lateTimers.map(({ stepTitle, label, lateByS, toldWallMs }) =>
        message('report.late', {
          step: stepTitle,
          timer: label,
          lateByS,
          wallMs: toldWallMs,
          zone,
        }),
      ),
    ),
    section(
      message('report.section.silent'),
      report.silentAlarms.map(({ stepTitle, label, text, wallMs }) =>
        message('report.silent', { step: stepTitle, timer: label, text, wallMs, zone }),
      ),
    ),
    section(
      message('report.section.paused'),
      report.pauses.map((pause) => pauseMessage(pause, zone)),
    ),
    section(
      message('report.section.storage'),
      report.storage.map(({ text, fromWallMs, mendedWallMs }) =>
        mendedWallMs === null
          ? message('report.storage-since', { wallMs: fromWallMs, zone, text })
          : message('report.storage', { fromWallMs, toWallMs: mendedWallMs, zone, text }),
      ),
    ),
    section(
      message('report.section.notes'),
      report.notes.map(({ wallMs, text }) => message('report.note', { wallMs, zone, text })),
    ),
  ];
}

export function reviewMessage(review: Report['reviews'][number], zone: string): Message {
  const { stepTitle, gapS, ask, answer, answeredWallMs } = review;
  const said = answer === null ? null : message(`report.answer.${answer}`);
  return message('report.review-asked', {
    step: stepTitle,
    gapS,
    ask,
    answer: answered(said, answeredWallMs, zone),
  });
}

function pauseMessage({ fromWallMs, toWallMs }: Period, zone: string): Message {
  return toWallMs === null
    ? message('report.paused-since', { wallMs: fromWallMs, zone })
    : message('report.paused', { fromWallMs, toWallMs, zone });
}

function gapLine(gap: GapReport, zone: string): ReportLine {
  const { kind, fromWallMs, toWallMs, unprovedS, tornRecords } = gap;
  return line(
    1,
    message(`report.gap.${kind}`, { fromWallMs, toWallMs, zone, unprovedS }),
    ...(tornRecords === 0 ? [] : [message('report.gap.torn', { count: tornRecords })]),
  );
}

function answered(answer: Message | null, wallMs: number | null, zone: string): Message {
  return answer === null || wallMs === null
    ? message('report.answer.none')
    : message('report.answer', { answer, wallMs, zone });
}

export function clockMessage(question: ClockQuestion, zone: string): Message {
  const { askedWallMs, answeredWallMs, answer, actualWallMs } = question;
  const said =
    answer === null
      ? null
      : answer === 'corrected'
        ? message('report.answer.clock-corrected', { wallMs: actualWallMs ?? 0, zone })
        : message(`report.answer.clock-${answer}`);
  return message('report.clock-asked', {
    wallMs: askedWallMs,
    zone,
    answer: answered(said, answeredWallMs, zone),
  });
}
