import type { TranslationOf } from '../../../model/translation.ts';
import type { days as english } from '../../../english/run/sheets/days.ts';
import { theClock } from '../../words/clocks.ts';

/** When hands are free, what runs until when, and the sheet of one clock. */
export const days: TranslationOf<typeof english> = {
  'run.days.free': ({ from, until }, f) =>
    `Manos libres desde ${f.say(from)} hasta ${f.say(until)}.`,
  'run.days.free-now': ({ until }, f) => `Manos libres ahora, hasta ${f.say(until)}.`,
  'run.days.all-over': ({ at }, f) => `Se prevé terminar todo ${f.say(at)}.`,
  'run.days.at.today': ({ wallMs, zone }, f) => `hoy a ${theClock(wallMs, zone, f)}`,
  'run.days.at.tonight': ({ wallMs, zone }, f) => `esta noche a ${theClock(wallMs, zone, f)}`,
  'run.days.at.tomorrow': ({ wallMs, zone }, f) => `mañana a ${theClock(wallMs, zone, f)}`,
  'run.days.at.weekday': ({ wallMs, zone }, f) =>
    `el ${f.day(wallMs, zone)} a ${theClock(wallMs, zone, f)}`,
  'run.days.by-itself': 'Lo que marcha solo',
  'run.days.until': 'Hasta cuándo',
  'run.days.wait': ({ label, names }, f) =>
    names.length === 0
      ? f.say(label)
      : `${f.say(label)}: ${names.map((name) => f.say(name)).join(', ')}`,
  'run.days.waits': ({ waits }, f) => waits.map((wait) => f.say(wait)).join('; '),
  'run.meanwhile': 'Mientras tanto: comer, lavar, algo caliente',
  'run.meanwhile.need.eat': 'Comer',
  'run.meanwhile.need.wash': 'Lavar',
  'run.meanwhile.need.heat': 'Hervir y calentar',
  'run.meanwhile.free': ({ names }, f) => `Kasherizado o cubierto: ${f.list(names)}.`,
  'run.meanwhile.before': ({ names }, f) => `Como antes, hasta limpiarlo: ${f.list(names)}.`,
  'run.meanwhile.cold': ({ names }, f) =>
    `Solo en frío; con un solo uso caliente su reposo empieza de nuevo: ${f.list(names)}.`,
  'run.meanwhile.not-now': ({ names }, f) =>
    `Ahora no, está caliente o se trabaja en ello: ${f.list(names)}.`,
  'run.meanwhile.elsewhere': 'Aquí nada puede calentarse: hierva agua y cocine en otro sitio.',
  'run.meanwhile.leaven': 'Lo kasherizado o cubierto es para Pésaj: ningún jametz encima.',
  'run.meanwhile.ask':
    'Se dice según lo avanzado que está cada lugar. Qué comida puede haber ahí lo dice su costumbre.',
  'run.days.in': ({ leftS }, f) => `en ${f.duration(leftS)}`,
  'run.days.rest-day': ({ day, from, to }, f) =>
    `${f.say(day)} desde ${f.say(from)} hasta ${f.say(to)}: entonces no se le pide nada y nada suena.`,
  'run.days.deadline': ({ name, when }, f) => `${f.say(name)}: ${f.say(when)}`,
  'run.days.deadline-passed': ({ name, when }, f) => `${f.say(name)}: ${f.say(when)}. Ya pasó.`,
  'run.days.work.region': 'Lo que pueden hacer las manos',
  'run.days.work': 'Qué se puede hacer y cuándo',
  'run.days.work.about':
    'Las horas más tempranas, según lo que espera cada paso; las manos pueden tardar más.',
  'run.days.work.line': ({ work, steps }, f) =>
    steps === 1
      ? f.say(work)
      : `${f.say(work)}, ${f.number(steps)} ${f.plural(steps, { one: 'paso', other: 'pasos' })}`,
  'run.days.work.at': ({ phase, name }, f) => `${f.say(phase)}: ${name}`,
  'run.days.work.from': ({ wallMs, zone }, f) => `desde ${theClock(wallMs, zone, f)}`,
  'run.days.work.more': ({ count }, f) => `y ${f.number(count)} más`,
  'run.days.now': 'Ahora',
  'run.days.next': 'Después de lo que está en curso',
  'run.days.today': 'Hoy',
  'run.days.tonight': 'Esta noche',
  'run.days.tomorrow': 'Mañana',
  'run.days.weekday': ({ wallMs, zone }, f) => f.capital(f.day(wallMs, zone)),

  'run.timer.over-at': ({ label, when }, f) => `${f.say(label)}: hasta ${f.say(when)}`,
  'run.timer.over': ({ when, leftS }, f) => `Hasta ${f.say(when)}, ${f.duration(leftS)} más.`,
  'run.timer.was-earlier': 'Su último calor fue antes',
  'run.timer.was-used': 'Se usó',
  'run.timer.last-hot': 'Última vez caliente',
  'run.timer.last-hot.why': '¿Cómo lo sabe? Queda en el registro.',
  'run.timer.last-hot.about':
    'Solo si está seguro. La limpieza caliente cuenta como uso en caliente. En caso de duda, deje el reposo como está.',
  'run.timer.last-hot.press': 'Contar desde entonces',
  'run.timer.used.about':
    'Su reposo de 24 horas empieza otra vez, y lo que vino después se hace de nuevo.',
  'run.timer.used.press': 'Empezar de nuevo el reposo',
};
