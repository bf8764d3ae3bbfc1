import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { importJournal, openJournal } from '../../../src/core/journal/index.ts';
import { inEnglish } from '../../support/english.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';

const file = importJournal(readFileSync('tests/core/journal/frozen/alarms-v1.json', 'utf8'));
if ('problem' in file) throw new Error(inEnglish.say(file.problem));
const { facts } = openJournal(file.entries);

describe('an alarm that could not sound', () => {
  it('stands in the record once, with its reason; one that was handed on does not', () => {
    const record = reportOf(facts);
    expect(record.silentAlarms.map(({ text }) => text)).toEqual(['The sound is off.']);
    const lines = reportText(record, inEnglish, 'UTC').split('\n');
    const at = lines.findIndex((line) => line.includes('Alarms that could not sound'));
    expect(at).toBeGreaterThan(0);
    expect(lines.slice(at).join('\n')).toContain('The sound is off.');
  });
});
