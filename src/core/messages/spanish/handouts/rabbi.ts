import type { TranslationOf } from '../../model/translation.ts';
import type { rabbi as english } from '../../english/handouts/rabbi.ts';

/** One page for the rabbi: what is known of each thing he is asked about. */
export const rabbi: TranslationOf<typeof english> = {
  'handouts.rabbi.about':
    'Cada pregunta abierta con lo que usted indicó. Escriba cuántos años tiene; lo que él diga va en el plan, en “Por preguntar”.',
  'handouts.rabbi.facts': ({ facts }, f) => `${f.capital(facts.map(f.say).join('; '))}.`,
  'handouts.rabbi.age': 'Antigüedad:',
  'handouts.rabbi.trying': 'Se calcula qué cambia cada respuesta…',
  'handouts.fact.part': ({ part }, f) => `sobre: ${f.say(part)}`,
  'handouts.fact.material-unknown': 'material desconocido',
  'handouts.fact.condition.smooth': 'superficie lisa',
  'handouts.fact.condition.scratched': 'superficie rayada',
  'handouts.fact.condition.cracked': 'superficie agrietada',
  'handouts.fact.condition.porous': 'superficie porosa',
  'handouts.fact.condition.unknown': 'superficie sin mirar',
  'handouts.fact.top.metal': 'superficie de metal',
  'handouts.fact.top.enamel': 'superficie de esmalte',
  'handouts.fact.top.glass-ceramic': 'superficie vitrocerámica',
  'handouts.fact.cleaning.pyrolytic': 'autolimpieza que quema',
  'handouts.fact.cleaning.steam': 'limpieza con vapor',
  'handouts.fact.cleaning.catalytic': 'revestimiento catalítico',
  'handouts.fact.cleaning.none': 'sin autolimpieza',
  'handouts.fact.varnished.yes': 'con barniz',
  'handouts.fact.varnished.no': 'sin barniz',
  'handouts.fact.kneaded.yes': 'se amasó directamente encima',
  'handouts.fact.kneaded.no': 'no se amasó encima',
  'handouts.fact.hotFood.yes': 'hubo comida caliente directamente encima',
  'handouts.fact.hotFood.no': 'no hubo comida caliente encima',
  'handouts.fact.belongs': ({ to }, f) => `será de: ${f.say(to)}`,
  'handouts.fact.last-hot': ({ at }, f) => `último uso en caliente: ${f.say(at)}`,
};
