import { describe, expect, it } from 'vitest';
import { readNote } from '../../../src/app/controllers/run/run-note.ts';
import { readTicks } from '../../../src/app/pages/run/step/lists/kept-ticks.ts';

describe('what the page of a run remembers', () => {
  it('is of that run alone', () => {
    const stored = JSON.stringify({ run: 'a', value: { x: 1 } });
    expect(readNote(stored, 'a')).toEqual({ x: 1 });
    expect(readNote(stored, 'b')).toBeUndefined();
  });

  it.each([undefined, 7, 'no json', 'null', '[]', '{"value":1}'])('is nothing of %s', (stored) => {
    expect(readNote(stored, 'a')).toBeUndefined();
  });
});

describe('ticks as stored', () => {
  it('are read by step, and what is no line ticks nothing', () => {
    expect(readTicks([['clean-sink#1', ['a', 'b']]])).toEqual([['clean-sink#1', ['a', 'b']]]);
    expect(readTicks([['clean-sink#1', ['a', 7]], 5, ['x'], [1, ['a']]])).toEqual([
      ['clean-sink#1', ['a']],
    ]);
    expect(readTicks('x')).toEqual([]);
  });
});
