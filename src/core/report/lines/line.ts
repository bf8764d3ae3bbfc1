import { plainLine } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';

/** One line of a report, not yet a sentence; `depth` is how far it is set in. */
export type ReportLine = { readonly depth: number; readonly text: readonly Message[] };

/** Lines under a heading that stands at the margin. */
export type ReportSection = { readonly heading: Message; readonly lines: readonly ReportLine[] };

/** A line of its own; further messages follow on the same line. */
export function line(depth: number, ...text: readonly Message[]): ReportLine {
  return { depth, text };
}

export function deeper(lines: readonly ReportLine[], by = 1): readonly ReportLine[] {
  return lines.map(({ depth, text }) => ({ depth: depth + by, text }));
}

/** What people wrote, on one line, so that no note can pass for a line of the report. */
export function oneLine(text: string): string {
  return plainLine(text);
}
