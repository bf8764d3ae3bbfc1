import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addFixture,
  beginHistory,
  newKitchen,
  record,
  redo,
  undo,
} from '../../../src/core/editing/index.ts';
import { someEdits } from './edits-arbitrary.ts';
import { asWritten } from '../../../src/core/messages/index.ts';
import { inEnglish } from '../../support/english.ts';

const start = addFixture(
  newKitchen({ name: 'Ours', country: 'GB' }, inEnglish),
  'counter',
  inEnglish,
).kitchen;

describe('history', () => {
  it('undo takes back what was done, redo does it again, all the way both ways', () => {
    fc.assert(
      fc.property(someEdits, (edits) => {
        let history = beginHistory(start);
        for (const { run, says } of edits) {
          const before = history;
          history = record(history, run(history.present), asWritten(says));
          if (history === before) continue;
          expect(undo(history).present).toBe(before.present);
          expect(redo(undo(history)).present).toBe(history.present);
          expect(redo(undo(history)).undoLabel).toEqual(asWritten(says));
          expect(undo(history).redoLabel).toEqual(asWritten(says));
        }
        const end = history.present;
        let back = history;
        while (back.undoLabel !== undefined) back = undo(back);
        expect(back.present).toBe(start);
        while (back.redoLabel !== undefined) back = redo(back);
        expect(back.present).toBe(end);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('makes one step of changes with one key, and a new one after an undo', () => {
    const named = (name: string) => ({ ...start, name });
    let history = record(beginHistory(start), named('a'), asWritten('Name changed'), 'name');
    history = record(history, named('ab'), asWritten('Name changed'), 'name');
    expect(history.past).toEqual([start]);
    history = record(history, named('abc'), asWritten('Country changed'), 'country');
    expect(history.past).toHaveLength(2);
    history = record(redo(undo(history)), named('abcd'), asWritten('Country changed'), 'country');
    expect(history.past).toHaveLength(3);
    expect(history.future).toEqual([]);
  });

  it('keeps 200 steps, and does nothing at either end', () => {
    let history = beginHistory(start);
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
    for (let i = 0; i < 250; i += 1)
      history = record(history, { ...start, altitudeM: i }, asWritten(`${i}`));
    expect(history.past).toHaveLength(200);
    for (let i = 0; i < 250; i += 1) history = undo(history);
    expect(history.present.altitudeM).toBe(49);
    expect(history.undoLabel).toBeUndefined();
    expect(record(history, history.present, asWritten('nothing'))).toBe(history);
  });
});
