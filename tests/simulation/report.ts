import type { Told } from './run-one.ts';

/** How often each way of breaking a promise was met, and where first. */
export type Row = {
  readonly promise: string;
  readonly way: string;
  /** Points it stands for; empty: another fault. */
  readonly seed: number;
  /** Runs needed to meet it first. */
  readonly after: number;
  readonly runs: number;
  readonly text: string;
};

/** One row for each way in which a promise was broken. */
export function rowsOf(told: readonly Told[]): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const [index, { seed, found }] of told.entries())
    for (const { promise, way, text } of found) {
      const key = `${promise} ${way}`;
      const known = rows.get(key);
      rows.set(
        key,
        known
          ? { ...known, runs: known.runs + 1 }
          : { promise, way, seed, after: index + 1, runs: 1, text },
      );
    }
  return [...rows.values()].toSorted((a, b) => (a.promise + a.way < b.promise + b.way ? -1 : 1));
}

/** The table of findings, a row a line; empty when every promise held. */
export function tableOf(rows: readonly Row[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(['promise', 'broken how', 'first seed', 'runs needed', 'in runs', 'for instance']),
    line(['---', '---', '---', '---', '---', '---']),
    ...rows.map(({ promise, way, seed, after, runs, text }) =>
      line([promise, way, String(seed), String(after), String(runs), text]),
    ),
  ].join('\n');
}

/** The last lines of a story, for a message. */
export function endOf(story: readonly string[], lines = 25): string {
  const broken = story.findIndex((line) => line.includes('***'));
  return story.slice(Math.max(0, broken - lines), broken + 1).join('\n');
}
