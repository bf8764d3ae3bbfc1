import type { Formatter } from '../../model/message.ts';
import type { TranslationOf } from '../../model/translation.ts';
import type { summary as english } from '../../english/report/summary.ts';
import { ended, range, unended } from './phrases.ts';

type At = { wallMs: number; zone: string };

/** "domingo, 1 de marzo de 2026, 10:00": a record is read years later. */
function fullMoment({ wallMs, zone }: At, f: Formatter): string {
  return `${f.date(wallMs, zone)}, ${f.clock(wallMs, zone)}`;
}

/** What somebody gave as the reason, as a sentence of its own. */
function because(reason: string): string {
  return reason === '' ? '' : ` ${ended(reason)}`;
}

/** "Fregadero: ", or nothing where it is about no one place. */
function at(name: string): string {
  return name === '' ? '' : `${name}: `;
}

/** The first page of a record: its head, what it lacks, a row a place. */
export const summary: TranslationOf<typeof english> = {
  'report.head.title': ({ kitchen }) => `${kitchen}: qué se hizo`,
  'report.head.begun': (moment, f) => `Empezado: ${fullMoment(moment, f)}`,
  'report.head.ended': ({ outcome, ...moment }, f) =>
    `Terminado: ${fullMoment(moment, f)}, ${f.say(outcome)}`,
  'report.head.stands': ({ outcome, ...moment }, f) =>
    `Estado, ${fullMoment(moment, f)}: ${f.say(outcome)}`,
  'report.verdict': (
    { isOpen, purged, toPurge, notPurged, covered, cleaned, closedUp, notDone },
    f,
  ) => {
    const main = `${isOpen ? 'Hasta ahora kasherizados' : 'Kasherizados'} ${f.number(purged)} de ${f.number(toPurge)} ${f.plural(toPurge, { one: 'lugar', other: 'lugares' })}`;
    const not = notPurged.length === 0 ? '' : `; sin kasherizar: ${f.list(notPurged)}`;
    const others = [
      ...(covered === 0 ? [] : [`con cubierta o forro: ${f.number(covered)}`]),
      ...(cleaned === 0 ? [] : [`limpiados: ${f.number(cleaned)}`]),
      ...(closedUp === 0 ? [] : [`cerrados: ${f.number(closedUp)}`]),
    ];
    const beside = others.length === 0 ? '' : ` Además: ${others.join(', ')}.`;
    const undone = notDone.length === 0 ? '' : ` Sin terminar: ${f.list(notDone)}.`;
    return `${main}${not}.${beside}${undone}`;
  },
  'report.app': ({ app }) => `Empezado en Glowpour ${app}.`,
  'report.digest': ({ digest }) => `Huella del trabajo: ${digest}`,
  'report.digest.check':
    'Las primeras 16 cifras del SHA-256 del archivo guardado del trabajo. Importe ese archivo en cualquier tableta: su registro muestra las mismas cifras. Son otras si se cambió una sola entrada.',

  'report.section.lacks': 'Omitido, parado o en duda',
  'report.section.answers': 'Preguntas y respuestas',
  'report.lack.none': 'Nada de lo planificado se omitió, se paró o quedó en duda.',
  'report.lack.steps': ({ name, steps, many, planned, outcome, reason }, f) => {
    const named = steps.map((step) => `“${unended(f.say(step))}”`);
    const more = many - steps.length;
    const what = more === 0 ? f.list(named) : `${named.join(', ')} y ${f.number(more)} más`;
    const share =
      planned === 0 ? '' : `sin kasherizar (${f.number(many)} de ${f.number(planned)}). `;
    return `${at(name)}${share}${what}: ${f.say(outcome)}.${because(f.say(reason))}`;
  },
  'report.section.utensils': 'Utensilios',
  'report.utensils.line': ({ told, items }, f) =>
    `${f.say(told)} ${f.list(items.map((item) => f.say(item)))}.`,
  'report.lack.utensils': ({ step, items, outcome, reason }, f) =>
    `${f.list(items.map((item) => f.say(item)))}: sin kasherizar. “${unended(f.say(step))}”: ${f.say(outcome)}.${because(f.say(reason))}`,
  'report.lack.rest': ({ name, provedS, neededS, outcome, reason }, f) =>
    `${name}: reposo ${f.say(outcome)}${neededS === 0 ? '' : `, ${f.duration(provedS, 'down')} de ${f.duration(neededS, 'down')} comprobados`}.${because(f.say(reason))}`,
  'report.lack.hold': ({ name, label, provedS, neededS, isShort, unproved, wordS, why }, f) => {
    const told = [
      ...(isShort
        ? [`${f.duration(provedS, 'down')} de ${f.duration(neededS, 'down')} comprobados`]
        : []),
      ...(wordS === 0 ? [] : [`${f.duration(wordS, 'down')} por palabra de una persona`]),
      ...(unproved ? ['nadie vio qué pasó en un tiempo que falta'] : []),
    ];
    return `${name}: ${f.say(label)}, ${told.join('; ')}.${because(why.join('; '))}`;
  },
  'report.lack.unreached': ({ name, areaCm2 }, f) =>
    `${name}: ${f.measure(areaCm2, 'cm²')} quedan fuera del alcance del brazo y no se vertió sobre ellos.`,
  'report.lack.cold': ({ name, poured, cold }, f) =>
    `${name}: agua fría confirmada después de ${f.number(cold)} de ${f.number(poured)} hervidores.`,
  'report.lack.overridden': ({ name, ask, reason }, f) =>
    `${at(name)}“${f.say(ask)}” se pasó por alto.${because(reason)}`,
  'report.lack.fault': ({ name, fault, wallMs, zone, end }, f) =>
    `${at(name)}${f.say(fault)}, ${f.dateTime(wallMs, zone)}. ${f.say(end)}`,
  'report.lack.questions': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'pregunta estaba', other: 'preguntas estaban' })} sin respuesta al hacer el plan; se tomó el modo más estricto.`,
  'report.lack.gaps': ({ count, unprovedS }, f) =>
    `La tableta estuvo apagada o dormida, o se cambió su reloj, ${f.plural(count, { one: 'una vez', other: `${f.number(count)} veces` })}, en total ${f.duration(unprovedS, 'down')}.`,
  'report.lack.alarms': ({ late, silent }, f) =>
    `Alarmas: ${f.number(late)} avisadas tarde, ${f.number(silent)} no pudieron sonar.`,
  'report.lack.storage': ({ lengthS }, f) =>
    `Durante ${f.duration(lengthS)} no se pudo anotar nada.`,

  'report.said-about': ({ name, said }, f) => `${name}: ${f.say(said)}`,
  'report.said-row': ({ names, method, minutes, saidBy, saidOn, why }, f) =>
    `${f.list(names)}: lo dijo ${saidBy}, ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${ended(why)}`.trim(),
  'report.unanswered': ({ fixture, ask, untilThen }, f) =>
    `${fixture}: ${f.say(ask)} Sin respuesta. Planificado: ${ended(f.say(untilThen))}`,

  'report.row.method': ({ method, isMeant, cover, term }, f) =>
    `${isMeant ? 'Planificado: ' : ''}${f.say(method)}${term ? ` (${f.say(term)})` : ''}${cover ? ', después cubierto' : ''}`,
  'report.row.kettles': ({ poured, planned }, f) =>
    poured === planned
      ? `${f.number(poured)} ${f.plural(poured, { one: 'hervidor', other: 'hervidores' })}`
      : `${f.number(poured)} de ${f.number(planned)} ${f.plural(planned, { one: 'hervidor', other: 'hervidores' })}`,
  'report.row.heat': ({ label, provedS, times }, f) =>
    `${f.say(label)} ${f.duration(provedS, 'down')}${times === 1 ? '' : `, ${f.number(times)} veces`}`,
  'report.row.by': ({ who }, f) => `por ${f.list(who.map((one) => f.say(one)))}`,
  'report.by.lead': 'quien dirige el trabajo',
  'report.by.helper': ({ number }, f) => `ayudante ${f.number(number)}`,
  'report.row.when': ({ fromWallMs, toWallMs, zone }, f) =>
    f.day(fromWallMs, zone) === f.day(toWallMs, zone)
      ? `${f.dateTime(fromWallMs, zone)}–${f.clock(toWallMs, zone)}`
      : range({ fromWallMs, toWallMs, zone }, f),
  'report.row.rested': ({ provedS, ...times }, f) =>
    `${range(times, f)} (${f.duration(provedS, 'down')})`,
  'report.row.resting': ({ wallMs, zone, provedS }, f) =>
    `desde ${f.dateTime(wallMs, zone)} (${f.duration(provedS, 'down')})`,
  'report.row.source': ({ source, state }, f) => `${f.say(source)} (${f.say(state)})`,
  'report.row.voided': ({ count }, f) =>
    f.plural(count, {
      one: '1 hervidor de antes no contó.',
      other: `${f.number(count)} hervidores de antes no contaron.`,
    }),
  'report.row.question': 'Su pregunta estaba sin respuesta: vea abajo.',
};
