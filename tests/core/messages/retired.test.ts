import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { retired } from '../../../src/core/messages/english/custom/retired.ts';

/** Of all sentences by key; it changes only when a sentence is added here, never when one is altered. */
const TO_THE_LETTER = '44cbdeb67bab33162844341ef6ad8a8d4df2d192574158373a96513b48e78f49';

it('older records are told in the words they were written in, to the letter', () => {
  const sentences = Object.entries(retired).toSorted(([a], [b]) => (a < b ? -1 : 1));
  expect(sentences).toHaveLength(102);
  const digest = createHash('sha256').update(JSON.stringify(sentences)).digest('hex');
  expect(digest).toBe(TO_THE_LETTER);
});
