import type { Fact } from '../run/index.ts';

/**
 * One line of a journal, plain JSON. `seq` counts from 1 without gaps; `prev`
 * is the sum of the record before it (absent at seq 1), so that a record taken
 * out or put in is seen; `sum` is the CRC-32 of the rest in canonical form.
 */
export type JournalRecord = {
  readonly v: 1;
  readonly seq: number;
  readonly prev?: string;
  readonly fact: Fact;
  readonly sum: string;
};
