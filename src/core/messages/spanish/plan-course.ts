import type { Formatter } from '../model/message.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { planCourse as english } from '../english/plan-course.ts';
import { theClock } from './words/clocks.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

type Moment = { wallMs: number; zone: string };

/** "el viernes por la tarde 17:33"; what is after midnight belongs to the day that began then. */
function when({ wallMs, zone }: Moment, f: Formatter): string {
  const clock = f.clock(wallMs, zone);
  const hour = Number(clock.slice(0, 2));
  const weekday = f.weekday(wallMs, zone);
  if (hour < 5) return `el ${weekday} de madrugada ${clock}`;
  const part = hour < 12 ? 'mañana' : hour < 20 ? 'tarde' : 'noche';
  return `el ${weekday} por la ${part} ${clock}`;
}

/** A second moment without its day where that is the same. */
function until(wallMs: number, { wallMs: fromWallMs, zone }: Moment, f: Formatter): string {
  const isSame = f.day(wallMs, zone) === f.day(fromWallMs, zone);
  return isSame ? theClock(wallMs, zone, f) : when({ wallMs, zone }, f);
}

/** "51 h", "3 h 10 min", "12 días": the longer, the rounder. */
function lengthText(lengthS: number, f: Formatter): string {
  const days = Math.floor(lengthS / S_DAY);
  if (days >= 4) return `${f.number(days)} días`;
  return f.duration(lengthS - (lengthS % (lengthS < S_DAY ? S_MINUTE : S_HOUR)), 'down');
}

/** "viernes, 3 de abril, 14:00". */
function dayAndClock({ wallMs, zone }: Moment, f: Formatter): string {
  return `${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)}`;
}

/** The course of a plan: its picture, its head, and the step that is pressed. */
export const planCourse: TranslationOf<typeof english> = {
  'plan-page.course.about':
    'El curso del plan: quién hace qué, y qué reposa, se calienta y se enfría. Las flechas van de barra en barra, Intro abre una. La lista de pasos de abajo dice lo mismo.',
  'plan-page.course.day': ({ wallMs, zone }, f) => f.day(wallMs, zone),
  'plan-page.course.weekday': ({ wallMs, zone }, f) => f.weekday(wallMs, zone),
  'plan-page.course.short-weekday': ({ wallMs, zone }, f) => f.shortWeekday(wallMs, zone),
  'plan-page.course.hour': ({ wallMs, zone }, f) => f.clock(wallMs, zone),
  'plan-page.course.part.morning': 'mañana',
  'plan-page.course.part.afternoon': 'tarde',
  'plan-page.course.part.evening': 'tarde-noche',
  'plan-page.course.part.night': 'noche',
  'plan-page.course.does.prepare': 'preparando',
  'plan-page.course.does.clean': 'limpiando',
  'plan-page.course.does.water': 'vertiendo',
  'plan-page.course.does.heat': 'calentando',
  'plan-page.course.does.finish': 'terminando',
  'plan-page.course.until': (at, f) => `hasta ${when(at, f)}`,
  'plan-page.course.until.weekday': ({ wallMs, zone }, f) =>
    `hasta el ${f.weekday(wallMs, zone)} ${f.clock(wallMs, zone)}`,
  'plan-page.course.until.short': ({ wallMs, zone }, f) => `hasta ${f.shortMoment(wallMs, zone)}`,
  'plan-page.course.until.rest': (at, f) => `en reposo hasta ${when(at, f)}`,
  'plan-page.course.until.thaw': (at, f) =>
    `se descongela hasta ${theClock(at.wallMs, at.zone, f)}`,
  'plan-page.course.until.heat': (at, f) => `caliente hasta ${theClock(at.wallMs, at.zone, f)}`,
  'plan-page.course.until.cool': (at, f) => `se enfría hasta ${theClock(at.wallMs, at.zone, f)}`,
  'plan-page.course.until.water': ({ wallMs, fromWallMs, zone }, f) =>
    `agua ${f.clock(fromWallMs, zone)}–${f.clock(wallMs, zone)}`,
  'plan-page.course.bar': ({ who, what, more, toWallMs, ...from }, f) =>
    `${who === '' ? '' : `${who}: `}${f.say(what)}${more > 0 ? ` y ${f.number(more)} más` : ''}, desde ${when(from, f)} hasta ${until(toWallMs, from, f)}`,
  'plan-page.course.steps': ({ many }, f) =>
    `${f.number(many)} ${f.plural(many, { one: 'paso', other: 'pasos' })} de un mismo trabajo`,
  'plan-page.course.at': ({ toWallMs, who, ...from }, f) =>
    `Desde ${when(from, f)} hasta ${until(toWallMs, from, f)}${who === '' ? '' : `, ${who}`}.`,
  'plan-page.course.slack': (at, f) => `Nada lo espera antes: ${when(at, f)}.`,
  'plan-page.course.ends': (at, f) => `termina ${when(at, f)}`,
  'plan-page.course.ends-sure': ({ sureWallMs, ...at }, f) =>
    `termina ${when(at, f)}; nueve de cada diez veces, como mucho hasta ${until(sureWallMs, at, f)}`,
  'plan-page.course.due': (at, f) => `terminado como tarde ${when(at, f)}`,
  'plan-page.course.due-purged': (at, f) => `kasherizado como tarde ${when(at, f)}`,
  'plan-page.course.late': ({ lateS }, f) => `${lengthText(lateS, f)} tarde`,
  'plan-page.course.key.hands': 'manos trabajando',
  'plan-page.course.key.rest': 'en reposo',
  'plan-page.course.key.heat': 'se calienta',
  'plan-page.course.key.cool': 'se enfría',
  'plan-page.course.key.water': 'agua hirviendo',
  'plan-page.course.key.thaw': 'se descongela',
  'plan-page.course.key.watch': 'vigila lo que está al rojo',
  'plan-page.course.key.chain': 'decide el final',
  'plan-page.course.key.slack': 'puede tardar más',
  'plan-page.course.cut': ({ name, ...at }, f) => `${f.say(name)}, ${when(at, f)}`,
  'plan-page.course.gone': 'ya no es posible',
  'plan-page.course.key.due': 'hora en que debe estar hecho',
  'plan-page.course.key.late': 'demasiado tarde',
  'plan-page.course.key.night': 'Las noches y los días de descanso se dibujan más estrechos.',

  'plan-page.head.ends': ({ wallMs, zone, lengthS }, f) =>
    `Termina el ${dayAndClock({ wallMs, zone }, f)}; ${lengthText(lengthS, f)} desde el comienzo.`,
  'plan-page.head.in-time': ({ wallMs, zone, spareS, purge }, f) =>
    `A tiempo: termina el ${dayAndClock({ wallMs, zone }, f)}; ${purge ? 'kasherizado' : 'hecho'} ${lengthText(spareS, f)} antes de su hora.`,
  'plan-page.head.late': ({ doneWallMs, dueWallMs, zone, lateS, purge }, f) =>
    `Tarde por ${lengthText(lateS, f)}: ${purge ? 'kasherizado' : 'hecho'} el ${dayAndClock({ wallMs: doneWallMs, zone }, f)}. Su hora es el ${dayAndClock({ wallMs: dueWallMs, zone }, f)}.`,
  'plan-page.head.cut': ({ name, many, of, ...at }, f) =>
    `Demasiado tarde para ${f.number(many)} de ${f.plural(of, { one: '1 lugar', other: `${f.number(of)} lugares` })}: no se kasheriza nada después de este plazo: ${f.say(name)}, ${dayAndClock(at, f)}.`,
  'plan-page.head.close-up': ({ fixtures }, f) =>
    `Ya no es posible. Limpie, cierre y no use durante Pésaj: ${f.list(fixtures)}. Pregunte antes.`,
  'plan-page.head.free': ({ spans, people, more }, f) =>
    `${people > 1 ? 'Todos libres' : 'Usted tiene libre'} ${f.list(spans.map((one) => f.say(one)))}${more ? ', y más tarde' : ''}.`,
  'plan-page.head.why': 'Por qué, y qué significa',
  'plan-page.head.free.span': ({ toWallMs, ...from }, f) =>
    `desde ${when(from, f)} hasta ${until(toWallMs, from, f)}`,
  'plan-page.head.never-free': 'No hay horas libres largas entre el primer paso y el último.',
};
