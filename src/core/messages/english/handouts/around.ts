import type { Section } from '../../model/message.ts';

/** Covers to cut and utensils to purge, as handouts; what they tell stands with their own rooms. */
export const around = {
  'handouts.covers.about':
    'Drawn to scale: the roll begins at the left, its left edge is at the top. Measure again before the first cut; make the cuts in their order.',
  'handouts.covers.picture': (
    { widthM, fromM, toM }: { widthM: number; fromM: number; toM: number },
    f,
  ) =>
    `The roll, ${f.tape(widthM)} wide, from ${f.tape(fromM, { isFirst: true })} to ${f.tape(toM)}`,
  'handouts.utensils.time': ({ startS, lengthS }: { startS: number; lengthS: number }, f) =>
    `Goes in ${f.about(startS)} after the pot is put on; takes ${f.about(lengthS)}.`,
} satisfies Section;
