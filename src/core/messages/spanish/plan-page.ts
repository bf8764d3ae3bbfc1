import type { Formatter } from '../model/message.ts';
import type { TranslationOf } from '../model/translation.ts';
import type { planPage as english } from '../english/plan-page.ts';
import { planCourse } from './plan-course.ts';
import { theClock } from './words/clocks.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

/** "2 días 5 h", "5 h", "40 min"; cut, so that nobody counts on more than there is. */
function daysAndHours(leftS: number, f: Formatter): string {
  const days = Math.floor(leftS / S_DAY);
  if (days === 0) return f.duration(leftS < S_HOUR ? leftS : leftS - (leftS % S_HOUR), 'down');
  const hours = Math.floor((leftS % S_DAY) / S_HOUR);
  const dayText = `${f.number(days)} ${f.plural(days, { one: 'día', other: 'días' })}`;
  return hours === 0 ? dayText : `${dayText} ${f.duration(hours * S_HOUR, 'down')}`;
}

/** The Plan page: its parts, answers, questions and the day the work begins. */
export const planPage: TranslationOf<typeof english> = {
  ...planCourse,
  'plan-page.print': 'Imprimir para la pared',
  'plan-page.print.all': 'Imprimir todo el plan',
  'plan-page.save-calendar': 'Guardar para un calendario',
  'plan-page.start-run': 'Iniciar el trabajo',
  'plan-page.back-to-run': 'Volver al trabajo',
  'plan-page.rehearse': 'Ensayar el trabajo',
  'plan-page.rehearse.run-open':
    'Ahora no: hay un trabajo abierto en esta tableta, o no se sabe si lo hay. Sus alarmas van primero; ensaye cuando termine.',
  'plan-page.for-whom': ({ purpose, custom }, f) => `${f.capital(purpose)}, ${custom}`,
  'plan-page.standing':
    'Las costumbres difieren. Este plan sigue la costumbre que usted eligió; la palabra de su rabino la reemplaza. Siga los manuales de los fabricantes y las normas locales; gas, electricidad y fontanería (plomería) son para profesionales autorizados.',
  'plan-page.parts': 'Partes del plan',
  'plan-page.part.methods': 'Métodos',
  'plan-page.part.steps': 'Todos los pasos',
  'plan-page.part.pours': 'Dónde se vierte',
  'plan-page.part.heat': 'Calor y aire',
  'plan-page.part.ask': 'Por preguntar',
  'plan-page.part.lists': 'Comprar y limpiar',
  'plan-page.part.handouts': 'Hojas para imprimir',
  'plan-page.heat.about':
    'Calculado con sus aparatos, o con lo habitual donde usted no indicó nada. Los márgenes son anchos donde lo son la física o los aparatos; el plan usa el lado seguro.',
  'plan-page.facts.day': ({ wallMs, zone, amount }, f) =>
    `${f.capital(f.day(wallMs, zone))}: ${amount}`,
  'plan-page.facts.whole': 'De principio a fin',
  'plan-page.facts.hands': 'Sus manos ocupadas',
  'plan-page.facts.boils-at': 'Aquí el agua hierve a',
  'plan-page.facts.kettles': 'Hervidores llenos',
  'plan-page.facts.hot-water': 'Agua hirviendo',
  'plan-page.facts.electricity': 'Electricidad',
  'plan-page.facts.electricity-and-gas': 'Electricidad y gas',
  'plan-page.duration': ({ lengthS }, f) => f.duration(lengthS),
  'plan-page.temperature': ({ tempC }, f) => f.measure(tempC, '°C', 1),
  'plan-page.count': ({ low, high }, f) => f.range(low, high),
  'plan-page.litres': ({ lowL, highL }, f) => f.measureRange(lowL, highL, 'L'),
  'plan-page.energy': ({ kWh }, f) => `${f.number(kWh, 1)} kWh`,
  'plan-page.energies': ({ electricityKWh, gasKWh }, f) =>
    `${f.number(electricityKWh, 1)} kWh + ${f.number(gasKWh, 1)} kWh`,

  'plan-page.notices': 'Qué saber antes',
  'plan-page.notices.more': ({ many }, f) => `${f.number(many)} más que saber`,
  'plan-page.notices.kitchen': 'Cambiarlo en la cocina',

  'plan-page.begin.region': 'Cuándo empieza el trabajo',
  'plan-page.begin': 'Comienzo',
  'plan-page.begin.zone': ({ zone }) =>
    `Según el reloj de ${(zone.split('/').at(-1) ?? zone).replaceAll('_', ' ')}`,
  'plan-page.begin.tell-place':
    'Indique en Cocina dónde está, y el plan evita Shabat y las fiestas.',
  'plan-page.begin.inside': ({ day, toWallMs, zone }, f) =>
    `Esto cae en ${day}: nada empieza antes de su salida, el ${f.moment(toWallMs, zone)}.`,
  'plan-page.begin.nothing-in': 'No se planifica nada en',
  'plan-page.begin.from-to': ({ day, fromWallMs, toWallMs, zone }, f) =>
    `${f.say(day)}: del ${f.moment(fromWallMs, zone)} al ${f.moment(toWallMs, zone)}`,
  'plan-page.begin.deadline-ahead': ({ what, atWallMs, leftS, zone }, f) =>
    `${f.say(what)}: ${f.moment(atWallMs, zone)}, ${daysAndHours(leftS, f)} después de empezar.`,
  'plan-page.begin.deadline-passed': ({ what, atWallMs, beginWallMs, zone }, f) =>
    `${f.say(what)}: ${f.moment(atWallMs, zone)}. A ${theClock(beginWallMs, zone, f)} ya ha pasado.`,

  'plan-page.methods.by-custom': 'Según la costumbre:',
  'plan-page.methods.own-custom': 'Su propia costumbre',
  'plan-page.methods.make-own-custom': 'Hacer una costumbre propia',
  'plan-page.methods.note-signs': 'a b c d e f g h i j k l m n o p q r s t u v w x y z',
  'plan-page.methods.head.fixture': 'Qué',
  'plan-page.methods.head.what': 'Qué se hace',
  'plan-page.methods.head.why': 'Por qué, y qué lo cambiaría',
  'plan-page.methods.head.answer': 'Respuesta de su rabino',
  'plan-page.methods.more': 'Por qué',
  'plan-page.methods.minutes': ({ method, minutes }, f) => `${method}, ${f.number(minutes)} min`,
  'plan-page.methods.then-cover': ({ method }) => `${method}, después cubrir`,
  'plan-page.methods.term': ({ term }) => `(${term})`,
  'plan-page.methods.provisional': 'El modo más estricto, hasta que haya respuesta',
  'plan-page.methods.answered': 'Respuesta de su rabino',
  'plan-page.methods.source': ({ source, state }) => `${source} (${state}).`,
  'plan-page.methods.instead-of-row': ({ by }) => `En lugar de la fila de la costumbre: ${by}.`,
  'plan-page.methods.said-otherwise': 'Nuestro rabino dijo otra cosa',
  'plan-page.methods.change-answer': 'Cambiar la respuesta',
  'plan-page.methods.take-back': 'Retirarla',
  'plan-page.to-ask': 'Por preguntar:',
  'plan-page.until-then': ({ untilThen }) => `Hasta entonces: ${untilThen}`,
  'plan-page.not-answered': 'Sin respuesta todavía:',

  'plan-page.steps.whole-kitchen': 'Toda la cocina',
  'plan-page.steps.about': ({ lengthS }, f) => f.about(lengthS),
  'plan-page.steps.who': ({ people }, f) => f.list(people.map((one) => f.say(one))),
  'plan-page.steps.kettles': ({ name, kettles }, f) =>
    `${name}: agua hirviendo, ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })}`,
  'plan-page.steps.burners': ({ name, burners }, f) =>
    `${name}: poner al rojo ${f.number(burners)} ${f.plural(burners, { one: 'quemador', other: 'quemadores' })}`,
  'plan-page.steps.near': 'alguien cerca',
  'plan-page.steps.titles': ({ titles, more }, f) =>
    `${titles.map((one) => f.say(one)).join(' ')}${more > 0 ? ` y ${f.number(more)} más` : ''}`,
  'plan-page.steps.day.morning': ({ wallMs, zone }, f) =>
    `${f.capital(f.day(wallMs, zone))}, mañana`,
  'plan-page.steps.day.afternoon': ({ wallMs, zone }, f) =>
    `${f.capital(f.day(wallMs, zone))}, tarde`,
  'plan-page.steps.day.evening': ({ wallMs, zone }, f) =>
    `${f.capital(f.day(wallMs, zone))}, tarde-noche`,
  'plan-page.steps.day.night': ({ wallMs, zone }, f) => `${f.capital(f.day(wallMs, zone))}, noche`,

  'plan-page.pours.none': 'No se vierte nada.',
  'plan-page.pours.kettles': ({ name, kettles }, f) =>
    `${name}: ${f.number(kettles)} ${f.plural(kettles, { one: 'hervidor', other: 'hervidores' })}`,
  'plan-page.pours.order':
    'Lo alto antes que lo bajo, cada parte entera. El número en el círculo es el del hervidor.',
  'plan-page.pours.custom-shortest': ({ customM }, f) =>
    `${f.measure(customM, 'm', 1)} de franjas; ninguna otra dirección es más corta. El número en el círculo es el del hervidor.`,
  'plan-page.pours.custom-longer': ({ customM, shortestM, savedPercent }, f) =>
    `${f.measure(customM, 'm', 1)} de franjas de atrás hacia delante, como es costumbre; otra dirección llevaría ${f.measure(shortestM, 'm', 1)}, un ${f.number(savedPercent)} % menos. El número en el círculo es el del hervidor.`,

  'plan-page.shopping': 'Para comprar y reunir',
  'plan-page.cleaning': 'Limpieza, de arriba abajo',
  'plan-page.cleaning.region': 'Listas de limpieza',
  'plan-page.cleaning.print': 'Imprimir las listas',
  'plan-page.cleaning.about':
    'Lo seco antes que lo mojado, dentro antes que fuera. El reposo cuenta desde el último uso en caliente; limpiar con agua caliente cuenta como uno.',

  'plan-page.questions.region': 'Preguntas',
  'plan-page.questions': 'Preguntas para su rabino',
  'plan-page.questions.of': ({ kitchen, custom }) => `${kitchen}. Costumbre: ${custom}.`,
  'plan-page.questions.print': 'Imprimir las preguntas',
  'plan-page.questions.share': 'Compartirlas',
  'plan-page.questions.shared-title': ({ kitchen }) => `Preguntas para nuestro rabino: ${kitchen}`,
  'plan-page.questions.about':
    'Las costumbres difieren. Hasta que una pregunta tenga respuesta se planifica el modo más estricto, y el plan lo dice; la respuesta reemplaza la fila de la costumbre.',
  'plan-page.questions.none': 'No queda nada por preguntar.',
  'plan-page.questions.enter': 'Anotar la respuesta',
  'plan-page.questions.to-look': 'Para mirar ustedes mismos',
  'plan-page.questions.say-what': 'Decir qué es',
  'plan-page.questions.until-then': 'Hasta entonces:',
  'plan-page.questions.changes': '¿Qué cambiaría una respuesta?',
  'plan-page.questions.change': ({ answer, finishS, kettles }, f) => {
    const end =
      Math.abs(finishS) < S_MINUTE
        ? 'termina a la misma hora'
        : `termina ${f.duration(Math.abs(finishS))} ${finishS < 0 ? 'antes' : 'después'}`;
    const many = Math.abs(kettles);
    const water =
      many === 0
        ? 'los mismos hervidores'
        : `${f.number(many)} ${f.plural(many, { one: 'hervidor', other: 'hervidores' })} ${kettles < 0 ? 'menos' : 'más'}`;
    return `${f.say(answer)} El plan entonces ${end}, con ${water}.`;
  },
  'plan-page.questions.line.answer': 'Respuesta',
  'plan-page.questions.line.said-by': 'Lo dijo',
  'plan-page.questions.line.on': 'Fecha',
  'plan-page.questions.answered': 'Respondido',
  'plan-page.questions.answered-bare': 'Respondido.',
  'plan-page.questions.said': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'plan-page.questions.said-own-row': ({ saidBy, saidOn }) =>
    `${saidBy}, ${saidOn} (una fila de su propia costumbre)`,
  'plan-page.questions.take-back': 'Retirar la respuesta',

  'plan-page.answer.about': ({ fixture }) => `Una respuesta sobre: ${fixture}`,
  'plan-page.answer.what-said': '¿Qué dijo su rabino sobre esto?',
  'plan-page.answer.given': 'Respuestas que se dan',
  'plan-page.answer.own-way': 'O dígalo a su manera:',
  'plan-page.answer.in-words': 'Con qué palabras (si quiere)',
  'plan-page.answer.replaces-row': 'Reemplaza la fila de la costumbre solo para este elemento.',
  'plan-page.answer.keep': 'Guardar la respuesta',
  'plan-page.back': 'Volver',
  'plan-page.found.about': ({ fixture }) => `Lo que vio en: ${fixture}`,
  'plan-page.found.leave-open': 'Si no puede saberlo, déjelo abierto.',

  'plan-page.curve': ({ title, lines, limits }, f) =>
    [title, ...lines, ...limits].map((one) => f.say(one)).join('. '),
  'plan-page.curve.line': ({ name, most, unit }, f) =>
    `${f.say(name)}: hasta ${f.shortNumber(most, 2)} ${f.say(unit)}`,
  'plan-page.curve.limit': ({ name, value, unit }, f) =>
    `${f.say(name)}: ${f.shortNumber(value, 2)} ${f.say(unit)}`,
  'plan-page.curve.value': ({ value }, f) => f.shortNumber(value, 3),
};
