import { isSaid } from '../../run/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { NotDone, Report } from '../model/report.ts';
import { fixtureSection } from './fixture.ts';
import { deeper, line, type ReportLine, type ReportSection } from './line.ts';
import { stepLines } from './steps.ts';
import { wholeRunSections } from './whole-run.ts';

/**
 * The report section by section: what it is of, fixture by fixture, then what
 * concerns the whole run. Shown on the page, printed and saved from here alone.
 * @param zone IANA name of the zone whose wall clock is told
 */
export function reportSections(report: Report, zone: string): readonly ReportSection[] {
  const name = (id: string): string => report.fixtures.find((row) => row.id === id)?.name ?? id;
  const all: readonly ReportSection[] = [
    headSection(report, zone),
    ...report.fixtures.map((fixture) => fixtureSection(report, fixture, zone)),
    {
      heading: message('report.section.general'),
      lines: deeper(report.general.flatMap((step) => stepLines(step, zone))),
    },
    {
      heading: message(
        report.outcome === 'open' ? 'report.section.not-done-yet' : 'report.section.not-done',
      ),
      lines: report.notDone.map((row) => notDoneLine(row, name)),
    },
    ...wholeRunSections(report, zone),
    {
      heading: message('report.section.questions'),
      lines: report.questions.map(({ fixture, ask, untilThen }) =>
        line(1, message('report.question', { fixture: name(fixture), ask, untilThen })),
      ),
    },
    {
      heading: message('report.section.assumed'),
      lines: report.assumed.map(({ what, taken }) =>
        line(1, message('report.assumed', { what, taken })),
      ),
    },
    {
      heading: message('report.section.standing'),
      lines: report.standing.map((text) => line(1, text)),
    },
  ];
  return all.filter(({ lines }) => lines.length > 0);
}

function notDoneLine(row: NotDone, name: (id: string) => string): ReportLine {
  const { fixture, title, reason } = row;
  const said = { step: title, outcome: message(`report.outcome.${row.outcome}`) };
  return line(
    1,
    fixture === null
      ? message('report.not-done', said)
      : message('report.not-done-at', { ...said, fixture: name(fixture) }),
    ...(isSaid(reason) ? [message('report.reason', { reason })] : []),
  );
}

/** What a closed run is without, where nobody can overlook it. */
function missingLine(what: 'not-purged' | 'left-out', step: Message, reason: Message): ReportLine {
  return line(
    0,
    message(`report.missing.${what}`, { step }),
    ...(isSaid(reason) ? [message('report.reason', { reason })] : []),
  );
}

function headSection(report: Report, zone: string): ReportSection {
  const { startedWallMs, closedWallMs } = report;
  const outcome = message(`report.run.${report.outcome}`);
  const told: readonly Message[] = [
    message('report.purpose', { purpose: message(`common.purpose.${report.purpose}`) }),
    message('report.custom', { custom: report.customName }),
    startedWallMs === null
      ? message('report.planned', { wallMs: report.draftedWallMs, zone })
      : message('report.started', { wallMs: startedWallMs, zone }),
    closedWallMs === null
      ? message('report.stands', { wallMs: report.lastWallMs, zone, outcome })
      : message('report.closed', { wallMs: closedWallMs, zone, outcome }),
    ...(!isSaid(report.reason) || report.outcome === 'completed'
      ? []
      : [message('report.reason', { reason: report.reason })]),
  ];
  return {
    heading: message('report.title', { kitchen: report.kitchen }),
    lines: [
      ...told.map((text) => line(0, text)),
      ...report.notPurged.map(({ title, reason }) => missingLine('not-purged', title, reason)),
      ...report.leftOut.map(({ title, reason }) => missingLine('left-out', title, reason)),
    ],
  };
}
