import type { TranslationOf } from '../../model/translation.ts';
import type { labels as english } from '../../english/handouts/labels.ts';

/** Labels to cut out, and what they cannot settle. */
export const labels: TranslationOf<typeof english> = {
  'handouts.labels.about':
    'Corte por las líneas discontinuas. Una letra, una palabra y una trama dicen cada una qué es: sirve cualquier impresora.',
  'handouts.labels.paper': 'Papel',
  'handouts.labels.paper.a4': 'A4',
  'handouts.labels.paper.letter': 'Carta',
  'handouts.labels.head': ({ kitchen, page, pages }, f) =>
    `${kitchen}: etiquetas, página ${f.number(page)} de ${f.number(pages)}`,
  'handouts.labels.letter.meat': 'C',
  'handouts.labels.letter.dairy': 'L',
  'handouts.labels.letter.pareve': 'P',
  'handouts.labels.resting': 'EN REPOSO',
  'handouts.labels.do-not-heat': 'no calentar, hasta',
  'handouts.labels.planned': ({ wallMs, zone }, f) =>
    `Planificado: ${f.shortMoment(wallMs, zone)}. Escriba la hora que dice la pantalla.`,
  'handouts.labels.write': 'Escriba la hora que dice la pantalla.',
  'handouts.labels.none': 'Todavía no hay nada que etiquetar.',
  'handouts.labels.undecided': ({ names }, f) =>
    `Sin etiqueta, porque nadie dijo para qué es: ${f.list(names)}. Indíquelo en Cocina.`,
  'handouts.labels.clashes': 'Lo que las etiquetas no resuelven',
  'handouts.clash.only-one': ({ kind, name, marking }, f) =>
    `Un solo elemento para carne y lácteo, ${f.say(kind)}: ${name} (${f.say(marking)}). Pregunte a su rabino cómo se usa para ambos.`,
  'handouts.clash.none-for': ({ kind, names, marking }, f) =>
    `Ninguno marcado como ${f.say(marking)} (${f.say(kind)}): ${f.list(names)}.`,
  'handouts.clash.one-range': ({ oven, cooktop }) =>
    `${oven} y ${cooktop} son un solo aparato, uno de carne y otro de lácteo: pregunte a su rabino qué exige eso.`,
};
