import type { Formatter } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { print as english } from '../../english/plan/print.ts';

type Band = { readonly low: number; readonly typical: number; readonly high: number };
type Offset = { days: number; hours: number; minutes: number };

/** "T+1 día 02:10"; on the first day "T+02:10". */
function offset({ days, hours, minutes }: Offset, f: Formatter): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const clock = `${two(hours)}:${two(minutes)}`;
  return days === 0
    ? `T+${clock}`
    : `T+${f.number(days)} ${f.plural(days, { one: 'día', other: 'días' })} ${clock}`;
}

/** One number a line: what is exact as it is, an estimate in round figures. */
function lasts({ low, typical, high }: Band, f: Formatter): string {
  return low === high ? f.duration(typical) : f.about(typical);
}

/** The plan as plain text. */
export const print: TranslationOf<typeof english> = {
  'plan.customs-differ':
    'Las costumbres difieren. Este plan sigue la costumbre que usted eligió; la palabra de su rabino la reemplaza.',
  'plan.title': ({ kitchen }) => `Plan de ${kitchen}`,
  'plan.for': ({ purpose, custom, people }, f) =>
    `${f.say(purpose)}, costumbre: ${f.say(custom)}, ${f.number(people)} ${f.plural(people, { one: 'persona', other: 'personas' })}`,
  'plan.boils-at': ({ boilingC, low }, f) =>
    `Aquí el agua hierve a ${f.measure(boilingC, '°C', 1)}${low ? '; eso es hervir' : ''}.`,
  'plan.done-earliest': ({ finishS }, f) =>
    `Terminado en ${f.duration(finishS)}, lo antes posible.`,
  'plan.done-after': ({ finishS, boundS }, f) =>
    `Terminado en ${f.duration(finishS)}; en ningún orden de trabajo antes de ${f.duration(boundS)}.`,
  'plan.section.methods': 'Métodos',
  'plan.section.questions': 'Preguntas por hacer',
  'plan.section.notices': 'Antes de empezar',
  'plan.section.shopping': 'Para comprar y reunir',
  'plan.section.totals': 'Totales',
  'plan.section.days': 'Días',
  'plan.section.timetable': 'Horario',
  'plan.section.gates': 'Se confirma una vez, antes del trabajo',
  'plan.section.work': 'Cómo se hace',
  'plan.method': ({ fixture, method, minutes, cover, term }, f) =>
    `${fixture}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', después cubrir' : ''}${term ? ` (${f.say(term)})` : ''}`,
  'plan.method.source': ({ source, state, wouldChange }, f) =>
    `${f.say(source)} (${f.say(state)}). ${f.say(wouldChange)}`,
  'plan.method.times': ({ times }, f) =>
    `Se vierte ${f.number(times)} veces sobre toda la superficie.`,
  'plan.method.no-rest': 'Sin reposo antes, según lo que le dijeron.',
  'plan.method.stone': 'Mientras se vierte se pasa por encima un acero caliente.',
  'plan.method.part.not-purged': 'Sin kasherizar: no ponga nada encima',
  'plan.method.part': ({ part, method, minutes, reason, source, state }, f) =>
    `${f.capital(f.say(part))}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${f.say(reason)} ${f.say(source)} (${f.say(state)}).`,
  'plan.method.instead-of-row': ({ by }, f) => `En lugar de la fila de la costumbre: ${f.say(by)}`,
  'plan.to-ask': ({ ask, untilThen }, f) =>
    `Por preguntar: ${f.say(ask)} Hasta entonces: ${f.say(untilThen)}`,
  'plan.question.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'plan.question.until-then': ({ untilThen }, f) => `Hasta entonces: ${f.say(untilThen)}`,
  'plan.buy': ({ name, amount, why }, f) => `${f.say(name)}: ${f.say(amount)}. ${f.say(why)}`,
  'plan.total.hot': ({ hotL, kettles }, f) =>
    `Agua hirviendo: unos ${f.measure(hotL.typical, 'L')}, ${f.number(kettles.typical)} ${f.plural(kettles.typical, { one: 'hervidor', other: 'hervidores' })}`,
  'plan.total.cold': ({ coldL }, f) => `Agua fría después: unos ${f.measure(coldL.typical, 'L')}`,
  'plan.total.electricity': ({ kWh }, f) => `Electricidad: unos ${f.number(kWh, 1)} kWh`,
  'plan.total.gas': ({ kWh }, f) => `Gas: unos ${f.number(kWh, 1)} kWh`,
  'plan.total.hands': ({ lengthS }, f) => `Trabajo manual: ${f.about(lengthS)}`,
  'plan.day.begins': ({ startWallMs, endWallMs, zone }, f) =>
    `Empieza el ${f.moment(startWallMs, zone)}, termina el ${f.moment(endWallMs, zone)} (${zone})`,
  'plan.day.rest': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)}: del ${f.moment(fromWallMs, zone)} al ${f.moment(toWallMs, zone)}; ahí no se planifica nada`,
  'plan.day.deadline': ({ name, wallMs, zone }, f) => `${f.say(name)}: ${f.moment(wallMs, zone)}`,
  'plan.day.date': ({ wallMs, zone }, f) => f.capital(f.day(wallMs, zone)),
  'plan.day.number': ({ day }, f) => `Día ${f.number(day)}`,
  'plan.step.clock': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.clock-itself': ({ wallMs, zone, step, lengthS }, f) =>
    `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}, empieza solo]`,
  'plan.step.offset': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes }, f)}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.offset-itself': ({ days, hours, minutes, step, lengthS }, f) =>
    `${offset({ days, hours, minutes }, f)}  ${f.say(step)}  [${lasts(lengthS, f)}, empieza solo]`,
  'plan.step.untimed': ({ step, lengthS }, f) => `sin hora  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.work.timer': ({ timer, lengthS }, f) => `${f.say(timer)}, ${f.duration(lengthS)}`,
  'plan.work.timer-about': ({ timer, lengthS }, f) =>
    `después de ${f.about(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-after': ({ timer, lengthS }, f) =>
    `después de ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-every': ({ timer, lengthS }, f) =>
    `cada ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.stage': ({ stage, timers }, f) =>
    timers.length === 0
      ? f.say(stage)
      : `${f.say(stage)} [${timers.map((timer) => f.say(timer)).join('; ')}]`,
  'plan.work.caution': ({ signal, say }, f) => `${f.say(signal)}: ${f.say(say)}`,
  'plan.work.caution-after': ({ signal, say }, f) => `${f.say(signal)}, después: ${f.say(say)}`,
  'plan.work.gate': ({ signal, say, ask }, f) =>
    `${f.say(signal)}: ${f.say(say)} Confirme primero: ${f.say(ask)}`,
  'plan.work.kettles': ({ fixture, kettles }, f) =>
    `${fixture}: ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })} de agua hirviendo, cada uno seguido de agua fría.`,
  'plan.work.pour-within': ({ withinS }, f) =>
    `La última gota cae como mucho ${f.duration(withinS)} después de hervir; si no, se hierve de nuevo.`,
  'plan.work.kettle-parts': ({ kettle, parts }, f) =>
    `Hervidor ${f.number(kettle)}: ${parts.map((part) => f.say(part)).join('; ')}`,
  'plan.work.kettle-lanes': ({ kettle, lengthM }, f) =>
    `Hervidor ${f.number(kettle)}: ${f.measure(lengthM, 'm', 1)} de franjas`,
  'plan.work.kettle-told': ({ kettle, told }, f) =>
    `Hervidor ${f.number(kettle)}: ${told.map((one) => f.say(one)).join(' ')}`,

  'common.resource.hands': 'Manos',
  'common.resource.burners-lit': 'Quemadores encendidos',
  'common.resource.watch': 'Vigilancia',
  'common.resource.unit.shares': 'partes',
  'common.resource.unit.people': 'personas',
  'common.resource.unit.burners': 'quemadores',
  'common.resource.unit.kettles': 'hervidores',
  'common.resource.unit.amperes': 'A',
};
