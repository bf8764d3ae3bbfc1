import type { Translator } from '../../messages/index.ts';
import type { Report } from '../model/report.ts';
import { oneLine } from './line.ts';
import { reportSections } from './report-sections.ts';

/**
 * The report as plain text, for sharing and printing. Lines end in `\n`; what
 * people wrote stands on one line each.
 * @param zone IANA name of the zone whose wall clock is told
 */
export function reportText(report: Report, translator: Translator, zone: string): string {
  const sections = reportSections(report, zone).map(({ heading, lines }) => [
    oneLine(translator.say(heading)),
    ...lines.map(
      ({ depth, text }) => `${'  '.repeat(depth)}${oneLine(text.map(translator.say).join(' '))}`,
    ),
  ]);
  return `${sections.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
