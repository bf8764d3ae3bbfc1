import type { TranslationOf } from '../../model/translation.ts';
import type { page as english } from '../../english/handouts/page.ts';

/** The part of the Plan that holds the handouts, and how one is chosen. */
export const page: TranslationOf<typeof english> = {
  'handouts.choose': 'Hojas para imprimir o enviar',
  'handouts.print': 'Imprimir esta hoja',
  'handouts.send': 'Enviarla',
  'handouts.copy': 'Copiarla como texto',
  'handouts.copied': 'Copiado.',
  'handouts.not-copied': 'Este navegador no lo copió.',
  'handouts.working': 'Calculando…',
  'handouts.failed': ({ why }, f) => `No se pudo calcular. ${f.say(why)}`,
  'handouts.name.labels': 'Etiquetas',
  'handouts.name.rabbi': 'Para el rabino',
  'handouts.name.covers': 'Cubiertas por cortar',
  'handouts.name.utensils': 'Utensilios',
  'handouts.name.shopping': 'Para comprar',
  'handouts.name.crew': 'Para cada persona',
  'handouts.name.door': 'Para la puerta',
};
