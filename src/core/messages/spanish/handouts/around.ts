import type { TranslationOf } from '../../model/translation.ts';
import type { around as english } from '../../english/handouts/around.ts';

/** Covers to cut and utensils to purge, as handouts; what they tell stands with their own rooms. */
export const around: TranslationOf<typeof english> = {
  'handouts.covers.about':
    'Dibujado a escala: el rollo empieza a la izquierda, su borde izquierdo está arriba. Mida otra vez antes del primer corte; haga los cortes en su orden.',
  'handouts.covers.picture': ({ widthM, fromM, toM }, f) =>
    `El rollo, de ${f.tape(widthM)} de ancho, de ${f.tape(fromM, { isFirst: true })} a ${f.tape(toM)}`,
  'handouts.utensils.time': ({ startS, lengthS }, f) =>
    `Entra ${f.about(startS)} después de poner la olla; dura ${f.about(lengthS)}.`,
};
