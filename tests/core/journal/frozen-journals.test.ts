import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openJournal } from '../../../src/core/journal/index.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { finishes, standing } from '../run/support/finishing.ts';
import { endView } from './frozen/end-view.ts';
import { FOLDER_OF_VERSION, frozenEntries, translator } from './frozen/read.ts';

/**
 * Journals as each version wrote them, with the end view and the record that
 * the same version made of them. They are not made again.
 */
const NAMES = {
  1: [
    'alarms-v1',
    'altered-v1',
    'corrupt-v1',
    'good-v1',
    'open-purge-v1',
    'rest-day-learned-v1',
    'whole-sephardic-v1',
  ],
  2: [
    'alarms-v2',
    'altered-v2',
    'corrupt-v2',
    'disturbed-v2',
    'open-purge-v2',
    'rest-day-calibrated-v2',
    'whole-sephardic-v2',
  ],
} as const;

/** Lines at the head of a record that its version did not have: what was not purged, or left out. */
const ADDED: Readonly<Record<string, readonly string[]>> = {
  'alarms-v1': ['Left out: pour-2. Reason: The bowl is small.'],
  'good-v1': ['Not purged: pour-1. Reason: Late.', 'Not purged: pour-2. Reason: Late.'],
};

/** As it is written down: without what is undefined. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const opened = (name: string): ReturnType<typeof openJournal> => openJournal(frozenEntries(name));

describe.each([1, 2] as const)('a journal of version %i', (version) => {
  const recorded = (name: string): string =>
    readFileSync(join(FOLDER_OF_VERSION[version], name), 'utf8');

  it('is there in seven kinds', () => {
    const records = readdirSync(FOLDER_OF_VERSION[version]).filter((name) =>
      name.endsWith('.record.txt'),
    );
    expect(records.map((name) => name.replace('.record.txt', '')).toSorted()).toEqual(
      NAMES[version],
    );
  });

  // Verifies: I-15
  it.each(NAMES[version])('%s stands as its version left it', (name) => {
    const { state, problem, entries } = opened(name);
    const damage = /^(altered|corrupt)-/.exec(name)?.[1];
    expect(problem?.name).toBe(damage);
    expect(new Set(entries.map(({ v }) => v))).toEqual(new Set([version]));
    expect(state && plain(endView(state, version))).toEqual(
      JSON.parse(recorded(`${name}.view.json`)),
    );
  });

  it.each(NAMES[version])('%s is told in the same words', (name) => {
    // Before it stands the first page, which these versions did not have.
    const text = reportText(reportOf(opened(name).facts), translator, 'UTC');
    const told = text.slice(text.indexOf('\nRecord: ') + 1).split('\n');
    const added = ADDED[name] ?? [];
    expect(told).toEqual(expect.arrayContaining([...added]));
    expect(told.filter((line) => !added.includes(line)).join('\n')).toBe(
      recorded(`${name}.record.txt`),
    );
  });

  it('that is open after a gap asks what it asked, and is finished as its version finished it', () => {
    const name = `open-purge-v${version}`;
    const { facts, state } = opened(name);
    expect(state?.status).toBe('reviewing');
    expect(state?.questions.length).toBeGreaterThan(0);
    if (!state) return;
    const tablet = standing(facts, state.plan);
    tablet.restarts(60);
    finishes(tablet);
    // By how many facts it is finished is the affair of the engine that finishes it.
    expect({ ...(plain(endView(tablet.state, version)) as object), facts: 0 }).toEqual({
      ...(JSON.parse(recorded(`${name}.finished.view.json`)) as object),
      facts: 0,
    });
  });
});
