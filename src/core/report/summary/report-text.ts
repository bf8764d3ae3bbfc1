import type { Translator } from '../../messages/index.ts';
import type { Report } from '../model/report.ts';
import { oneLine } from '../lines/line.ts';
import { summarySections } from './head.ts';
import { reportSections } from '../lines/report-sections.ts';

/**
 * The report as plain text, for sharing: its first page, then everything moment
 * by moment. Lines end in `\n`; what people wrote stands on one line each.
 * @param zone IANA name of the zone whose wall clock is told
 * @param digest of the saved run, as it is printed
 */
export function reportText(
  report: Report,
  translator: Translator,
  zone: string,
  digest?: string,
): string {
  const all = [...summarySections(report, zone, digest), ...reportSections(report, zone)];
  const sections = all.map(({ heading, lines }) => [
    oneLine(translator.say(heading)),
    ...lines.map(
      ({ depth, text }) => `${'  '.repeat(depth)}${oneLine(text.map(translator.say).join(' '))}`,
    ),
  ]);
  return `${sections.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
