import { isSaid } from '../../run/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { line, type ReportSection } from '../lines/line.ts';
import type { Report } from '../model/report.ts';
import type { PlaceState } from '../model/summary.ts';
import { answersOf } from './answers.ts';
import { lacksOf } from './lacks.ts';
import { placesOf } from './places.ts';
import { utensilsOf } from './rows.ts';

/** Whose kitchen, what for, by which custom, from when to when: a line each. */
export function headOf(report: Report, zone: string): readonly Message[] {
  const { startedWallMs, closedWallMs } = report;
  const outcome = message(`report.run.${report.outcome}`);
  return [
    message('report.purpose', { purpose: message(`common.purpose.${report.purpose}`) }),
    message('report.custom', { custom: report.customName }),
    startedWallMs === null
      ? message('report.planned', { wallMs: report.draftedWallMs, zone })
      : message('report.head.begun', { wallMs: startedWallMs, zone }),
    closedWallMs === null
      ? message('report.head.stands', { wallMs: report.lastWallMs, zone, outcome })
      : message('report.head.ended', { wallMs: closedWallMs, zone, outcome }),
    ...(!isSaid(report.reason) || report.outcome === 'completed'
      ? []
      : [message('report.reason', { reason: report.reason })]),
  ];
}

/** What was done, in one line of counts; no ruling. */
export function verdictOf(report: Report): Message {
  const places = placesOf(report);
  const count = (...states: readonly PlaceState[]): number =>
    places.filter(({ state }) => states.includes(state)).length;
  const named = (wanted: PlaceState): readonly string[] =>
    places.filter(({ state }) => state === wanted).map(({ name }) => name);
  return message('report.verdict', {
    isOpen: report.outcome === 'open',
    purged: count('heated', 'poured', 'steamed'),
    toPurge: places.filter(({ purges }) => purges.planned > 0).length,
    notPurged: named('not-purged'),
    covered: count('covered'),
    cleaned: count('cleaned'),
    closedUp: count('closed-up'),
    notDone: named('not-done'),
  });
}

/**
 * The first page of a record as text: its head, what it lacks, who said what.
 * @param zone IANA name of the zone whose wall clock is told
 * @param digest of the saved run, as it is printed; none: it could not be worked out
 */
export function summarySections(
  report: Report,
  zone: string,
  digest?: string,
): readonly ReportSection[] {
  const lacks = lacksOf(report, zone);
  const answers = answersOf(report, zone);
  const utensils = utensilsOf(report, zone);
  return [
    {
      heading: message('report.head.title', { kitchen: report.kitchen }),
      lines: [
        ...headOf(report, zone),
        verdictOf(report),
        ...(report.app === undefined ? [] : [message('report.app', { app: report.app })]),
        ...(digest === undefined
          ? []
          : [message('report.digest', { digest }), message('report.digest.check')]),
      ].map((text) => line(1, text)),
    },
    {
      heading: message('report.section.lacks'),
      lines: (lacks.length === 0 ? [message('report.lack.none')] : lacks).map((text) =>
        line(1, text),
      ),
    },
    { heading: message('report.section.utensils'), lines: utensils.map((text) => line(1, text)) },
    { heading: message('report.section.answers'), lines: answers.map((text) => line(1, text)) },
  ].filter(({ lines }) => lines.length > 0);
}
