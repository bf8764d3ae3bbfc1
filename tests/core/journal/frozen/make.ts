/**
 * Made the frozen journals of version 2: run with
 * `npx tsx tests/core/journal/frozen/make.ts`. Those of version 1 were made by
 * the code that wrote version 1. What is frozen is not made again; a change of
 * format gets new files beside these, and an upgrader.
 */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { encodeEntries, exportJournal, openJournal } from '../../../../src/core/journal/index.ts';
import { reportOf, reportText } from '../../../../src/core/report/index.ts';
import type { Fact } from '../../../../src/core/run/index.ts';
import { finishes, standing } from '../../run/support/finishing.ts';
import { alarmed } from './alarmed.ts';
import { disturbed } from './disturbed.ts';
import { endView } from './end-view.ts';
import { FOLDER_OF_VERSION, translator } from './read.ts';
import { openPurge, restDayCalibrated, wholeSephardic } from './whole-runs.ts';

const folder = FOLDER_OF_VERSION[2];

function keep(name: string, content: string | Buffer): void {
  const path = join(folder, name);
  if (existsSync(path)) console.log(`${name} is frozen already, and stays.`);
  else writeFileSync(path, content);
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

function freeze(name: string, entries: readonly unknown[]): void {
  const { facts, state } = openJournal(entries);
  keep(`${name}.json.gz`, gzipSync(exportJournal(entries)));
  keep(`${name}.view.json`, json(state && endView(state)));
  keep(`${name}.record.txt`, reportText(reportOf(facts), translator, 'UTC'));
}

const JOURNALS: Readonly<Record<string, readonly Fact[]>> = {
  'disturbed-v2': disturbed().facts,
  'alarms-v2': alarmed().facts,
  'open-purge-v2': openPurge(),
  'rest-day-calibrated-v2': restDayCalibrated(),
  'whole-sephardic-v2': wholeSephardic(),
};

mkdirSync(folder, { recursive: true });
for (const [name, facts] of Object.entries(JOURNALS)) freeze(name, encodeEntries(facts));

const entries = encodeEntries(JOURNALS['disturbed-v2'] ?? []);
const middle = Math.floor(entries.length / 2);
freeze(
  'corrupt-v2',
  entries.map((entry, at) => (at === middle ? JSON.stringify(entry).slice(0, 60) : entry)),
);
// Somebody turns a waiting step into a done one: the sum tells.
freeze(
  'altered-v2',
  entries.map((entry) =>
    entry.fact.body.kind === 'step-settled' && entry.fact.body.step === 'boil-2'
      ? { ...entry, fact: { ...entry.fact, body: { ...entry.fact.body, outcome: 'done' } } }
      : entry,
  ),
);

const open = openJournal(encodeEntries(JOURNALS['open-purge-v2'] ?? []));
if (open.state) {
  const tablet = standing(open.facts, open.state.plan);
  tablet.restarts(60);
  finishes(tablet);
  keep('open-purge-v2.finished.view.json', json(endView(tablet.state)));
}
