import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Tablet } from '../support/tablet.ts';

const LIGHTHOUSE = 'lighthouse@12';
const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const;
const MOST_REPORT_BYTES = 64e6;

/** Scores of 0 to 100, and what took points, by category. */
export type Audited = {
  readonly scores: Readonly<Record<string, number>>;
  readonly lacks: readonly string[];
};

type Report = {
  readonly categories: Readonly<
    Record<
      string,
      {
        readonly score: number | null;
        readonly auditRefs: readonly { readonly id: string; readonly weight: number }[];
      }
    >
  >;
  readonly audits: Readonly<
    Record<
      string,
      { readonly score: number | null; readonly title: string; readonly displayValue?: string }
    >
  >;
};

/** Where the driver of a browser listens, from the file that it writes into its profile. */
function portOf({ profile }: Tablet): string {
  const [port = ''] = readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
  return port;
}

/** One audit of an address in a browser that runs, with what it has stored. */
export async function audit(tablet: Tablet, url: string): Promise<Audited> {
  const { stdout } = await promisify(execFile)(
    'npx',
    [
      '--yes',
      LIGHTHOUSE,
      url,
      `--port=${portOf(tablet)}`,
      '--preset=desktop',
      '--disable-storage-reset',
      `--only-categories=${CATEGORIES.join(',')}`,
      '--output=json',
      '--quiet',
    ],
    { maxBuffer: MOST_REPORT_BYTES },
  );
  const { categories, audits } = JSON.parse(stdout) as Report;
  const lacks = CATEGORIES.flatMap((name) =>
    (categories[name]?.auditRefs ?? []).flatMap(({ id, weight }) => {
      const { score, title, displayValue = '' } = audits[id] ?? { score: null, title: id };
      return weight > 0 && score !== null && score < 0.9
        ? [`${name}: ${title} ${displayValue}`.trim()]
        : [];
    }),
  );
  return {
    scores: Object.fromEntries(
      CATEGORIES.map((name) => [name, Math.round((categories[name]?.score ?? 0) * 100)]),
    ),
    lacks,
  };
}
