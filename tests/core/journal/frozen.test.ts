import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openJournal } from '../../../src/core/journal/index.ts';
import { frozenEntries } from './frozen/read.ts';
import { summary } from './frozen/summary.ts';

describe('frozen journals of version 1', () => {
  // Verifies: I-15
  it.each(['good-v1', 'alarms-v1'])('%s folds to its recorded result', (name) => {
    const opened = openJournal(frozenEntries(name));
    expect(opened.problem).toBeUndefined();
    expect(opened.torn).toBe(0);
    const result = readFileSync(join(import.meta.dirname, 'frozen', `${name}.result.json`), 'utf8');
    expect(opened.state && summary(opened.state)).toEqual(JSON.parse(result));
  });

  it('the one with alarms holds what the device told of them', () => {
    const { facts, state } = openJournal(frozenEntries('alarms-v1'));
    const told = facts.filter(({ body }) => body.kind.startsWith('alarm-'));
    expect(told.map(({ body }) => body.kind)).toEqual([
      'alarm-handed',
      'alarm-failed',
      'alarm-handed',
    ]);
    expect(Object.values(state?.alarms ?? {})).toMatchObject([
      { cause: 1, handed: true, failed: 'The sound is off.', last: 'failed' },
      { cause: 2, handed: true, failed: null, last: 'handed' },
    ]);
  });

  it('the corrupt one opens read-only at its damage, with what came before', () => {
    const entries = frozenEntries('corrupt-v1');
    const opened = openJournal(entries);
    expect(opened.problem).toMatchObject({
      name: 'corrupt',
      seq: Math.floor(entries.length / 2) + 1,
    });
    expect(opened.facts).toHaveLength(Math.floor(entries.length / 2));
    expect(opened.state?.seq).toBe(opened.facts.length);
  });

  it('the altered one opens read-only at the change', () => {
    const opened = openJournal(frozenEntries('altered-v1'));
    expect(opened.problem?.name).toBe('altered');
    expect(opened.problem?.message.key).toBe('engine.journal.altered');
    expect(opened.facts.length).toBe((opened.problem?.seq ?? 0) - 1);
  });
});
