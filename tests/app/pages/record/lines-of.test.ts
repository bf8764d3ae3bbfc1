import { expect, it } from 'vitest';
import { linesOf } from '../../../../src/app/pages/record/lines-of.ts';

it('takes a line at the margin after a gap for a heading when something stands under it', () => {
  const lines = linesOf(
    'Record: Flat\nCustom: x\n\nSink (meat)\n  Method: pour.\n    Kettle 1.\n\nAlone\n',
  );
  expect(lines.map(({ text, depth, heading }) => [text, depth, heading])).toEqual([
    ['Record: Flat', 0, false],
    ['Custom: x', 0, false],
    ['Sink (meat)', 0, true],
    ['Method: pour.', 1, false],
    ['Kettle 1.', 2, false],
    ['Alone', 0, false],
  ]);
});
