import type { Formatter, Message } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { notices as english } from '../../english/plan/notices.ts';

type LateEnd = { endsWallMs?: number; zone?: string; after?: Message };

/** "tarda un 20 % más de lo calculado". */
function shareText(percent: number, f: Formatter): string {
  const whole = Math.round(percent);
  if (whole === 0) return 'tarda lo calculado';
  return `tarda un ${f.number(Math.abs(whole))} % ${whole > 0 ? 'más' : 'menos'} de lo calculado`;
}

/** " el jueves, 22 de abril 20:33, después de Pésaj (últimos días),". */
function ends({ endsWallMs, zone, after }: LateEnd, f: Formatter): string {
  if (endsWallMs === undefined || zone === undefined) return '';
  const moment = f.moment(endsWallMs, zone);
  return after ? ` el ${moment}, después de ${f.say(after)},` : ` el ${moment},`;
}

/** More names than this are counted, not listed. */
const MOST_NAMES = 5;

/** "el hervidor, el quemador delantero izquierdo y 3 más". */
function someOf(names: readonly string[], f: Formatter): string {
  const more = names.length - MOST_NAMES;
  return f.list(more > 0 ? [...names.slice(0, MOST_NAMES), `${f.number(more)} más`] : names);
}

function bottleneck(decidedBy: readonly Message[] | undefined, f: Formatter): string {
  if (!decidedBy || decidedBy.length === 0) return '';
  return ` Lo más largo en el camino a ese final: ${decidedBy.map((one) => f.say(one)).join('; ')}.`;
}

/** What is late: by how much, and where the calendar is known when it ends and after which day of rest. */
export const notices: TranslationOf<typeof english> = {
  'plan.notice.last-hot.counts': ({ names, wallMs, zone }, f) =>
    `Los reposos se planifican desde el último uso en caliente, ${f.moment(wallMs, zone)}: ${f.list(names)}. Limpie solo con agua fría; durante el trabajo se le pide confirmar la hora.`,
  'plan.notice.last-hot.later': ({ names, wall }, f) =>
    `El último uso en caliente es ${wall}, después de empezar el trabajo: ${f.list(names)}. No se cuenta, solo uno anterior al comienzo; corríjalo en la cocina, o empiece más tarde.`,
  'plan.notice.last-hot.long-ago': ({ names, wall, mostDays }, f) =>
    `El último uso en caliente es ${wall}: ${f.list(names)}. Con más de ${f.number(mostDays)} días antes del comienzo no se cuenta; indique el último en la cocina.`,
  'plan.notice.last-hot.unplaced': ({ names, wall }, f) =>
    `El último uso en caliente es ${wall}: ${f.list(names)}. No se cuenta hasta que la cocina tenga un lugar y el plan un comienzo; indique ambos.`,
  'plan.notice.circuit-overloaded': ({ name, drawsA, circuit, ratingA }, f) =>
    `${f.capital(f.say(name))} consume ${f.number(drawsA)} A, y ${circuit} soporta ${f.shortNumber(ratingA)} A: que lo revise un electricista antes de calentar.`,
  'plan.notice.circuit-shared': ({ circuit, ratingA, names, drawsA }, f) =>
    `${circuit} (${f.shortNumber(ratingA)} A) no puede alimentar juntos (${f.number(drawsA)} A): ${someOf(names.map(f.say), f)}. No los use nunca a la vez, como tampoco el plan.`,
  'plan.notice.boils-low': ({ boilingC }, f) =>
    `Aquí el agua hierve a ${f.measure(boilingC, '°C')}; eso es hervir. No se calienta más por mucho que esté al fuego; la mano va más despacio donde hace falta.`,
  'plan.notice.may-stay-dark': ({ cooktop, names }, f) =>
    `${cooktop}: puede que no enrojezcan nunca sin olla, porque la detectan o reciben menos tensión de la prevista: ${f.list(names)}. Pruebe uno a oscuras antes del día, y pregunte cómo se kasheriza si sigue sin color.`,
  'plan.burner': ({ burner }) => `el quemador ${burner}`,
  'plan.notice.burners-at-once': ({ atOnce, limitedBy, peakC }, f) => {
    const why = {
      heat: ', por el calor',
      air: ', por el aire',
      circuit: ', por el circuito',
      none: '',
    };
    return `${atOnce === 1 ? 'Un quemador' : 'Dos quemadores'} a la vez${why[limitedBy]}: se prevé que el local llegue a unos ${f.measure(peakC, '°C')}. Es un consejo; nunca dice que el aire es seguro.`;
  },
  'plan.notice.room-blocked': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.room-hot': ({ says }, f) => says.map((one) => f.say(one)).join(' '),
  'plan.notice.air-not-told':
    'Nadie ha dicho aún si la campana expulsa al exterior ni si se abre una ventana, así que el plan no cuenta con ninguna, y entonces hasta un quemador es demasiado: indíquelo en “Local y aire”.',
  'plan.notice.room-tiny': ({ volumeM3, leastM3 }, f) =>
    `La cocina está indicada con ${f.shortMeasure(volumeM3, 'm³', 1)}; calor y aire se calculan desde ${f.measure(leastM3, 'm³', 0, 'up')}. Mida de nuevo suelo y techo; hasta entonces el plan enciende un quemador cada vez, y nada dice que el local lo soporte.`,
  'plan.notice.much-water': ({ says }, f) =>
    `Muchísima agua: ${f.list(says.map((one) => f.say(one)))}. Un termo de agua para llenar los hervidores, un segundo hervidor y un ayudante lo acortan mucho; o pregunte si una encimera se puede cubrir en vez de verter.`,
  'plan.notice.much-water.fixture': ({ fixture, kettles, litres }, f) =>
    `${fixture}, ${f.number(kettles)} hervidores (unos ${f.measure(litres, 'L')})`,
  'plan.notice.room-unknown':
    'Un quemador cada vez: cuánto se calienta este local no se puede calcular tal como está descrito. Revise su tamaño, su campana y su ventana.',
  'plan.notice.room-too-much':
    'Según el cálculo, tal como está descrito, hasta un quemador calienta demasiado el local o estropea demasiado el aire: dé salida al aire y espere entre quemadores.',
  'plan.notice.no-air':
    'No hay campana al exterior ni ventana: aquí no se pueden kasherizar quemadores de gas hasta que el aire tenga salida.',
  'plan.notice.hood-filters':
    'La campana solo filtra: no elimina ningún gas. La ventana debe estar abierta.',
  'plan.notice.clean-not-purge.steam': ({ oven }) =>
    `${oven}: la limpieza con vapor no kasheriza; se trata como un horno sin autolimpieza.`,
  'plan.notice.clean-not-purge.catalytic': ({ oven }) =>
    `${oven}: la limpieza catalítica no kasheriza; se trata como un horno sin autolimpieza.`,
  'plan.notice.induction': ({ cooktop }) =>
    `${cooktop}: la inducción no se pone al rojo. Pregunte cómo se puede kasherizar antes de planificar el día.`,
  'plan.notice.by-hand': ({ fixture }) =>
    `${fixture}: no se calcula cuánta agua lleva; se planifica como trabajo a mano.`,
  'plan.notice.unreached': ({ fixture, spots }, f) =>
    `${fixture}: fuera del alcance del brazo desde donde uno puede ponerse, así que ahí no hay hervidor en el plan: ${spots.map((spot) => f.say(spot)).join('; ')}. ¿Puede ponerse en otro lado? Entonces dígalo en la cocina. Si no, pregunte a su rabino qué se hace con ese punto. Nunca se suba a un banco con agua hirviendo.`,
  'plan.question.unreached': ({ spots }, f) =>
    `¿Qué se hace con un punto al que ningún brazo llega con un hervidor: ${spots.map((spot) => f.say(spot)).join('; ')}?`,
  'plan.question.unreached.why':
    'El chorro debe llegar a cada punto. Desde otro lado quizá se alcance: entonces dígalo en la cocina.',
  'plan.question.unreached.until-then': 'Ahí no hay hervidor en el plan.',
  'plan.question.unreached.cover': 'Verter y después cubrir.',
  'plan.question.unreached.enough': 'Basta con lo que se vierte.',
  'plan.notice.spot': ({ areaCm2, leftM, nearM }, f) =>
    `${f.measure(areaCm2, 'cm²')}, a ${f.tape(leftM)} del extremo izquierdo y a ${f.tape(nearM)} del lado de acá`,
  'plan.notice.pots': ({ names }) =>
    `No se vierte con: ${names.join(', ')}. Lo que se saca de ahí con cucharón está en un segundo recipiente, y lleno es demasiado pesado para llevarlo.`,
  'plan.notice.unused-vessels': ({ names }) =>
    `Sin usar: ${names.join(', ')}; falta decir con qué se calienta, tiene poca potencia para hervir aquí, o es pequeño al lado de los demás.`,
  'plan.notice.utensils-now':
    'Dentro de Pésaj no se kasherizan utensilios: aparte lo que no se kasherizó antes, y pregunte.',
  'plan.notice.utensils-no-pot': ({ names }, f) =>
    `En ninguna olla que hierva aquí cabe esto: ${f.list(names.map((name) => f.say(name)))}. Ningún paso lo kasheriza. Indique en la cocina una olla mayor y su quemador, o apártelo.`,
  'plan.notice.no-change':
    'Por costumbre, un recipiente no se cambia entre carne y lácteo (Maguén Abraham 509:11): pregunte antes de hacerlo.',
  'plan.notice.passover-hour':
    'La kasherización debe terminar antes de la quinta hora de la víspera de Pésaj: planifíquela para terminar un día antes.',
  'plan.notice.overnight': ({ step }, f) =>
    `Ningún día de trabajo alcanza para esto, así que entra en la noche: ${f.say(step)}`,
  'plan.notice.purge-late': ({ certain, decidedBy, ...late }, f) =>
    `Con este plan se termina de kasherizar${ends(late, f)} ${f.number(late.lateH, 1)} h después del plazo${certain ? ', y ningún otro orden de trabajo lo cumpliría' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-fourth-hour': ({ certain, decidedBy, ...late }, f) =>
    `Con este plan se termina de kasherizar${ends(late, f)} ${f.number(late.lateH, 1)} h tarde, pero antes del encendido de velas${certain ? '; ningún otro orden de trabajo cumpliría la hora' : ''}. El agua pide entonces más cuidado: pregunte antes.${bottleneck(decidedBy, f)}`,
  'plan.notice.after-candles': ({ certain, decidedBy, ...late }, f) =>
    `Con este plan se termina de kasherizar${ends(late, f)} ${f.number(late.lateH, 1)} h tarde, después del encendido de velas, cuando ya no se kasheriza nada${certain ? '; ningún otro orden de trabajo lo cumpliría' : ''}. Empiece antes, o elija qué se cierra: limpio, cubierto y sin usar en Pésaj.${bottleneck(decidedBy, f)}`,
  'plan.notice.plan-late': ({ certain, decidedBy, ...late }, f) =>
    `Este plan termina${ends(late, f)} ${f.number(late.lateH, 1)} h después del plazo${certain ? ', y ningún otro orden de trabajo lo cumpliría' : ''}.${bottleneck(decidedBy, f)}`,
  'plan.chain.step': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)})`,
  'plan.chain.by-itself': ({ step, lengthS }, f) =>
    `${f.say(step).replace(/\.$/, '')} (${f.duration(lengthS)}, que ningún ayudante acorta)`,
  'plan.chain.closed': ({ lengthS }, f) =>
    `horas sin trabajo, una noche o un día de descanso (${f.duration(lengthS)})`,
  'plan.chain.work': 'otro trabajo',
  'plan.notice.days-unknown': ({ place, start }) => {
    const missing = [
      ...(place ? [] : ['dónde está la cocina (latitud, longitud, zona horaria, Israel o no)']),
      ...(start ? [] : ['cuándo empieza usted']),
    ].join(', y ');
    return `Shabat y las fiestas no están en este horario, que cuenta horas desde el comienzo: indique ${missing}, y los respeta. Hasta entonces, empiece de modo que nada de su trabajo caiga en ellos.`;
  },
  'plan.notice.last-day': ({ step }, f) =>
    `En el último día antes del plazo, sin un día de reserva si falla el bloqueo o el limitador térmico: ${f.say(step)} Empiece antes el trabajo.`,
  'plan.notice.past-fourth-hour': ({ fourthWallMs, candlesWallMs, zone }, f) =>
    `La cuarta hora de la víspera de Pésaj terminó el ${f.moment(fourthWallMs, zone)}. Hasta el encendido de velas, ${f.moment(candlesWallMs, zone)}, el agua todavía kasheriza, con más cuidado: pregunte antes. Lo que no esté kasherizado para entonces se limpia, se cierra y no se usa en Pésaj.`,
  'plan.notice.inside-passover':
    'Es Pésaj. No se kasheriza nada con agua hasta que termine: el plan cierra lo que se vertería. Fuego en los días intermedios de la fiesta: pregunte a su rabino; si no, cierre eso también. Algunos permiten kasherizar con agua lo que reposó 24 horas: pregunte.',
  'plan.notice.eve-is-sabbath':
    'Este año la víspera de Pésaj es Shabat: toda kasherización termina el viernes anterior. Se planifica para terminar en la cuarta hora de ese día, como otros años. Ese viernes el jametz todavía está permitido: pregunte a su rabino si se puede kasherizar hasta el encendido de velas sin más cuidado.',
  'plan.notice.no-sun-on-eve':
    'En este lugar el sol no sale ni se pone en la víspera de Pésaj, así que sus horas no se calculan: el plan termina un día antes. Pregunte la hora a su rabino.',
  'plan.notice.leaven-hour': ({ fourthWallMs, fifthWallMs, purgeWallMs, candlesWallMs, zone }, f) =>
    `En la víspera se come jametz hasta el ${f.moment(fourthWallMs, zone)} (fin de la cuarta hora) y se quema hasta el ${f.moment(fifthWallMs, zone)} (fin de la quinta). El agua kasheriza antes de la primera de esas horas: el plan termina el ${f.moment(purgeWallMs, zone)}. Después, hasta el encendido de velas, ${f.moment(candlesWallMs, zone)}, pregunte antes.`,
  'plan.notice.dim-days': ({ day, untilHour }, f) =>
    `En este lugar, en esta época del año, el sol no dice cuándo empieza o termina ${f.say(day)} (no se pone, o la noche no oscurece): el plan deja libre todo desde el encendido, o desde el mediodía donde no hay puesta de sol, hasta las ${f.number(untilHour)}:00 de la mañana siguiente. Pregunte las horas a su rabino.`,
  'plan.notice.recheck': ({ what }) =>
    `Un plan pequeño después de que algo pasó (${what}): contiene solo lo afectado. Pregunte primero si hay que kasherizarlo de nuevo; hasta entonces no se usa para nada caliente.`,
  'plan.notice.calibration': ({ told }, f) =>
    `De su último trabajo: ${told.map((one) => f.say(one)).join('; ')}. Con eso se fija cuándo mirar y cuánto dura el trabajo; los reposos, los tiempos de calor y los límites quedan como están.`,
  'plan.calibration.boil': ({ name, percent }, f) =>
    `${f.say(name)}: al hervir ${shareText(percent, f)}`,
  'plan.calibration.glow': ({ name, percent }, f) =>
    `${f.say(name)}: al ponerse al rojo ${shareText(percent, f)}`,
  'plan.calibration.heat-up': ({ name, percent }, f) =>
    `${f.say(name)}: al calentarse ${shareText(percent, f)}`,
  'plan.calibration.cool': ({ name, percent }, f) =>
    `${f.say(name)}: al enfriarse ${shareText(percent, f)}`,
  'plan.calibration.flow': ({ flowLMin }, f) =>
    `usted vierte ${f.measure(flowLMin, 'L', 1)} por minuto`,
  'plan.calibration.reach': ({ percent }, f) =>
    `un hervidor alcanza el ${f.number(percent)} % de lo calculado`,
  'plan.question.recheck': ({ fixture }) => `¿Hay que kasherizarlo de nuevo: ${fixture}?`,
  'plan.question.recheck.why': ({ what }) => `Después de kasherizarlo se dijo esto: ${what}`,
  'plan.question.recheck.until-then':
    'No lo use para nada caliente. El plan lo deja reposar y lo kasheriza de nuevo.',
  'plan.only-heats': 'No está en duda: solo calienta el hervidor.',
};
