import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { importJournal, openJournal } from '../../../src/core/journal/index.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { inEnglish, inEnglishWith } from '../../support/english.ts';
import { finishes, standing } from '../run/finishing.ts';
import { endView } from './frozen/v1/end-view.ts';

/**
 * Journals that version 1 wrote, with the end view and the record that version 1
 * made of them. They were made once, by that version, and are not made again.
 */
const FROZEN = join(import.meta.dirname, 'frozen');
const V1 = join(FROZEN, 'v1');

const NAMES = readdirSync(V1)
  .filter((name) => name.endsWith('.record.txt'))
  .map((name) => name.replace('.record.txt', ''));

/** The first four lie where they were frozen; those of `v1` are packed. */
function journalText(name: string): string {
  const plain = join(FROZEN, `${name}.json`);
  return existsSync(plain)
    ? readFileSync(plain, 'utf8')
    : gunzipSync(readFileSync(join(V1, `${name}.json.gz`))).toString('utf8');
}

function opened(name: string): ReturnType<typeof openJournal> {
  const file = importJournal(journalText(name));
  if ('problem' in file) throw new Error(inEnglish.say(file.problem));
  return openJournal(file.entries);
}

const recorded = (name: string): string => readFileSync(join(V1, name), 'utf8');
/** Times as the frozen records have them. */
const translator = inEnglishWith({
  dateTime: (wallMs) => new Date(wallMs).toISOString().slice(0, 19),
});
/** As it is written down: without what is undefined. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a journal of version 1', () => {
  it('is there in seven kinds', () => {
    expect(NAMES.toSorted()).toEqual([
      'alarms-v1',
      'altered-v1',
      'corrupt-v1',
      'good-v1',
      'open-purge-v1',
      'rest-day-learned-v1',
      'whole-sephardic-v1',
    ]);
  });

  // Verifies: I-15
  it.each(NAMES)('%s stands as version 1 left it', (name) => {
    const { state, problem } = opened(name);
    expect(problem?.name).toBe(
      { 'altered-v1': 'altered', 'corrupt-v1': 'corrupt' }[name] ?? undefined,
    );
    expect(state && plain(endView(state))).toEqual(JSON.parse(recorded(`${name}.view.json`)));
  });

  it.each(NAMES)('%s is told in the same words', (name) => {
    expect(reportText(reportOf(opened(name).facts), translator, 'UTC')).toBe(
      recorded(`${name}.record.txt`),
    );
  });

  it('that is open after a gap asks what it asked, and is finished as version 1 finished it', () => {
    const { facts, state } = opened('open-purge-v1');
    expect(state?.status).toBe('reviewing');
    expect(state?.questions.length).toBeGreaterThan(1);
    if (!state) return;
    const tablet = standing(facts, state.plan);
    tablet.restarts(60);
    finishes(tablet);
    expect(plain(endView(tablet.state))).toEqual(
      JSON.parse(recorded('open-purge-v1.finished.view.json')),
    );
  });
});
