import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';
import type { Screen } from '../support/screen.ts';
import { audit, type Audited } from './audit.ts';

/** Each of the three scores of each page, of 100. */
const LEAST = 95;
/** The middle one of so many: a score of speed hangs on what else the machine does. */
const TURNS = 3;

const on = onTablet('test');

/** What is stored first, in a page that is closed again: one page leads a run. */
async function stored(route: string, prepare: (screen: Screen) => Promise<void>): Promise<void> {
  const screen = await on.open(route);
  await prepare(screen);
  await screen.page.close();
}

const PAGES: readonly (readonly [name: string, route: string, prepare?: () => Promise<void>])[] = [
  ['Kitchen', 'kitchen'],
  ['Plan', 'plan/flat-coils'],
  ['Run, before it begins', 'run', () => stored('', (screen) => screen.prepareRun())],
  [
    'Record',
    'record',
    () =>
      stored('record', async (screen) => {
        const folder = mkdtempSync(join(tmpdir(), 'glowpour-audit-'));
        await bringIn(screen, runFile(playedFacts('flat-coils')), folder);
        rmSync(folder, { recursive: true });
      }),
  ],
];

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

describe('an audit of speed, access and practice', () => {
  for (const [name, route, prepare] of PAGES)
    it(`gives ${name} ${LEAST} of 100 or more in each`, async () => {
      await on.start();
      await prepare?.();
      const turns: Audited[] = [];
      for (let turn = 0; turn < TURNS; turn += 1)
        turns.push(await audit(on.tablet, `${on.site.url}/#/${route}`));
      const scores = Object.fromEntries(
        Object.keys(turns[0]?.scores ?? {}).map((one) => [
          one,
          middle(turns.map((turn) => turn.scores[one] ?? 0)),
        ]),
      );
      const lacks = [...new Set(turns.flatMap((turn) => turn.lacks))];
      console.log(
        `${name}: ${JSON.stringify(scores)}${lacks.map((lack) => `\n  ${lack}`).join('')}`,
      );
      expect(Object.keys(scores)).toHaveLength(3);
      for (const [one, score] of Object.entries(scores))
        expect.soft(score, `${one} of ${name}`).toBeGreaterThanOrEqual(LEAST);
    });
});
