import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FIXTURE_KINDS, PARTS } from '../../../src/core/kitchen/index.ts';
import { stepReasons } from '../../../src/core/messages/english/plan/step-reasons.ts';
import { cleaning } from '../../../src/core/messages/english/steps/cleaning.ts';
import { preparing } from '../../../src/core/messages/english/steps/preparing.ts';

type Row = {
  readonly lines: readonly { readonly line: number; readonly parts?: readonly string[] }[];
};
const table = JSON.parse(readFileSync('shared/cleaning.json', 'utf8')) as {
  readonly rows: readonly (Row & { readonly kind: string })[];
  readonly preparing: readonly (Row & { readonly id: string })[];
};

const lines = (under: string, row: Row): readonly string[] =>
  row.lines.map(({ line }) => `${under}.line-${line}`);

describe('the table of cleaning', () => {
  it('has a row for every kind of fixture', () => {
    expect(table.rows.map(({ kind }) => kind).toSorted()).toEqual([...FIXTURE_KINDS].toSorted());
  });

  it('names only parts that there are', () => {
    const named = table.rows.flatMap((row) => row.lines.flatMap(({ parts = [] }) => parts));
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((part) => !(PARTS as readonly string[]).includes(part))).toEqual([]);
  });

  it('has in the catalogue each line of its rows, and nothing else', () => {
    const keys = table.rows.flatMap((row) => lines(`steps.clean.${row.kind}`, row));
    expect(Object.keys(cleaning).toSorted()).toEqual(keys.toSorted());
  });

  it('has in the catalogue what is prepared, and nothing else', () => {
    const keys = table.preparing.flatMap((row) => [
      ...['title', 'reason'].map((part) => `steps.prepare.${row.id}.${part}`),
      ...lines(`steps.prepare.${row.id}`, row),
    ]);
    const reasons = Object.keys(stepReasons).filter((key) => key.startsWith('steps.prepare.'));
    expect([...Object.keys(preparing), ...reasons].toSorted()).toEqual(
      ['steps.prepare.say', ...keys].toSorted(),
    );
  });
});
