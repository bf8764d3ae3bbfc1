import type { Designation, Kitchen } from '../kitchen/index.ts';

export type Label = {
  readonly id: string;
  readonly name: string;
  readonly designation: Designation;
};

/**
 * What is to be marked, in the order of the kitchen file. Undecided places are
 * in it too: their label is printed with room to write the word by hand.
 */
export function labelsOf(kitchen: Kitchen): readonly Label[] {
  return kitchen.fixtures.map(({ id, name, designation }) => ({ id, name, designation }));
}
