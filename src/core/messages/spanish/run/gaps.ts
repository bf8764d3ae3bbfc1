import type { TranslationOf } from '../../model/translation.ts';
import type { gaps as english } from '../../english/run/gaps.ts';

/** After an interruption, on a rest day, and when there is nothing to do: each comes with its screen. */
export const gaps: TranslationOf<typeof english> = {
  'run.clock': 'El reloj',
  'run.clock.ask': ({ wallMs, zone }, f) => `¿Es correcto ahora: ${f.moment(wallMs, zone)}?`,
  'run.clock.yes': ({ wallMs, zone }, f) => `Sí, ahora es ${f.moment(wallMs, zone)}`,
  'run.clock.yes-passed': ({ missingS }, f) => `Sí, y pasó este tiempo: ${f.duration(missingS)}`,
  'run.clock.yes-set': 'Sí, pero se cambió la hora del reloj',
  'run.clock.no': 'No, no lo es',
  'run.clock.unknown': 'Nadie lo sabe',
  'run.clock.about':
    'La tableta se durmió o se cambió su reloj. Las esperas cuentan el tiempo que falta solo cuando usted lo diga.',
  'run.last-hot.ask': ({ name, wallMs, zone }, f) =>
    `${f.say(name)}: ¿fue su último uso en caliente el ${f.moment(wallMs, zone)}, o antes?`,
  'run.last-hot.about':
    'Cuentan el agua caliente, la comida caliente y la limpieza caliente. Solo si está seguro: entonces su reposo cuenta desde esa hora.',
  'run.last-hot.yes': ({ wallMs, zone }, f) => `Sí, y ahora es ${f.moment(wallMs, zone)}`,
  'run.last-hot.no': 'No, o nadie lo sabe: empezar su reposo ahora',
  'run.last-hot.reason': 'Dicho antes del trabajo, y otra vez cuando estaba limpio.',
  'run.last-hot.no-reason': 'Su último uso en caliente fue después de lo dicho, o nadie lo sabe.',
  'run.clock.really': '¿Qué hora es de verdad?',
  'run.clock.right': 'Esta es la hora correcta',
  'run.clock.right-passed': ({ missingS }, f) =>
    `Es correcta, y pasó este tiempo: ${f.duration(missingS)}`,
  'run.clock.right-set': 'Es correcta, pero se cambió la hora del reloj',

  'run.review': 'Qué pasó mientras tanto',
  'run.review.title': 'Aquí se había quedado',
  'run.review.away': ({ step, gapS }, f) => {
    const title = f.say(step);
    return `${title.endsWith('.') ? title : `${title}.`} La tableta estuvo ausente ${f.duration(gapS)}.`;
  },
  'run.review.away-only': ({ gapS }, f) => `La tableta estuvo ausente ${f.duration(gapS)}.`,
  'run.review.went-on': 'Sí, lo vi',
  'run.review.broke-off': 'No, se cortó',
  'run.review.unknown': 'Nadie lo vio',

  'run.quiet': 'Ahora no hay nada que hacer',
  'run.quiet.none': 'No puede empezar ningún paso.',
  'run.quiet.about':
    'No use en caliente nada que esté en reposo. Salga, duerma, vuelva: los relojes siguen, y lo que venza mientras tanto se dice enseguida.',

  'run.rest-day': 'Día de descanso',
  'run.rest-day.title': 'Descanse. No se le pide nada.',
  'run.rest-day.until': ({ when }, f) =>
    `El trabajo espera y nada suena hasta ${f.say(when)}. Lo que venza mientras tanto se dice después.`,
  'run.rest-day.wait': ({ waits, when }, f) => `${f.say(waits)}, hasta ${f.say(when)}`,
  'run.rest-day.hot': 'Todavía caliente:',
  'run.rest-day.danger':
    'El peligro de vida va antes que todo: llame al número local de emergencias.',
  'common.other-zone': ({ wallMs, zone, tabletZone }, f) =>
    `Todas las horas son las de la cocina, donde ahora es ${f.shortMoment(wallMs, zone)}. Esta tableta está en otra zona horaria y mostraría ${f.shortMoment(wallMs, tabletZone)}.`,
};
