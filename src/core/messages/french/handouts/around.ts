import type { around as english } from '../../english/handouts/around.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Covers to cut and utensils to purge, as handouts; what they tell stands with their own rooms. */
export const around: TranslationOf<typeof english> = {
  'handouts.covers.about':
    'Dessiné à l’échelle : le rouleau commence à gauche, son bord gauche est en haut. Remesurez avant la première coupe ; coupez dans l’ordre.',
  'handouts.covers.picture': ({ widthM, fromM, toM }, f) =>
    `Le rouleau, large de ${f.tape(widthM)}, de ${f.tape(fromM, { isFirst: true })} à ${f.tape(toM)}`,
  'handouts.utensils.time': ({ startS, lengthS }, f) =>
    `Entre ${f.about(startS)} après la mise en chauffe de la marmite ; dure ${f.about(lengthS)}.`,
};
