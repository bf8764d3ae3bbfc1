import type { TranslationOf } from '../../model/translation.ts';
import type { fixtures as english } from '../../english/report/fixtures.ts';
import { after, attempt, ended, range, unended } from './phrases.ts';

/** What was done at each fixture, kettle by kettle. */
export const fixtures: TranslationOf<typeof english> = {
  'report.fixture': ({ name, designation }, f) => `${name} (${f.say(designation).toLowerCase()})`,
  'report.method.none': 'Método: ninguno en este plan.',
  'report.method': ({ method, minutes, cover, term, reason }, f) =>
    `Método: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', después cubrir' : ''}${term ? ` (${f.say(term)})` : ''}. ${ended(f.say(reason))}`,
  'report.source': ({ source, state }, f) => `Fuente: ${f.say(source)} (${f.say(state)}).`,
  'report.replaces-row': ({ by }, f) =>
    `Reemplaza la fila de la costumbre, por palabra de: ${ended(f.say(by))}`,
  'report.open-when-planned': ({ ask, untilThen }, f) =>
    `Sin respuesta al planificar: ${f.say(ask)} Hasta entonces: ${ended(f.say(untilThen))}`,
  'report.said': ({ saidBy, saidOn, method, minutes, cover, text }, f) =>
    `Respuesta de ${saidBy}, ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${{ with: ', y cubrir después', without: ', sin cubrir después', unsaid: '' }[cover]}. ${ended(text)}`.trim(),
  'report.result.all': 'Resultado: se hicieron todos los pasos del plan.',
  'report.result.part': 'Resultado: se hicieron solo algunos de los pasos del plan.',
  'report.result.none': 'Resultado: no se hizo nada de lo planificado.',
  'report.result.nothing': 'Resultado: no había nada planificado.',
  'report.rest': 'Reposo',
  'report.hold': ({ name, fromWallMs, toWallMs, zone, provedS, neededS, addedS, onWordS }, f) => {
    const times =
      toWallMs > 0
        ? range({ fromWallMs, toWallMs, zone }, f)
        : `${f.dateTime(fromWallMs, zone)}, sin terminar`;
    const added = addedS > 0 ? `, de ello ${f.duration(addedS, 'down')} añadidos a mano` : '';
    const word =
      onWordS > 0 ? `; de ello ${f.duration(onWordS, 'down')} por palabra de una persona` : '';
    return `${f.say(name)}: ${times}, ${f.duration(provedS, 'down')} comprobados (pedidos ${f.duration(neededS, 'down')}${added}${word}).`;
  },
  'report.hold.short': 'Más corto de lo pedido.',
  'report.hold.unproved': 'Dudoso: nadie vio qué pasó en un tiempo que falta.',
  'report.hold.dated': ({ text }) => `Fechado a mano: ${ended(text)}`,
  'report.kettles': ({ poured, planned, cold, voided }, f) => {
    const then =
      poured === 0
        ? ''
        : cold === poured
          ? ', agua fría después de cada uno'
          : `, agua fría después de ${f.number(cold)}`;
    const lost =
      voided === 0
        ? ''
        : ` ${f.number(voided)} ${f.plural(voided, { one: 'vertido antes no cuenta', other: 'vertidos antes no cuentan' })}.`;
    return `Hervidores vertidos: ${f.number(poured)} de ${f.number(planned)}${then}.${lost}`;
  },
  'report.recheck': ({ wallMs, zone, text }, f) =>
    `Duda, ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.recheck.withdrawn': ({ wallMs, zone }, f) =>
    `Retirado por error, ${f.dateTime(wallMs, zone)}; desde entonces no había pasado nada más.`,
  'report.override': ({ wallMs, zone, ask, reason }, f) =>
    `Confirmación pasada por alto, ${f.dateTime(wallMs, zone)}: “${f.say(ask)}” Motivo: ${ended(reason)}`,
  'report.override-run': ({ wallMs, zone, ask, reason }, f) =>
    `${f.dateTime(wallMs, zone)}: “${f.say(ask)}” Motivo: ${ended(reason)}`,
  'report.fault': ({ wallMs, zone, name, text }, f) =>
    `Fallo, ${f.dateTime(wallMs, zone)}: ${f.say(name)}${after(f.say(text))}.`,
  'report.fault-at': ({ wallMs, zone, name, step, text }, f) =>
    `Fallo, ${f.dateTime(wallMs, zone)}: ${f.say(name)} en “${f.say(step)}”${after(f.say(text))}.`,
  'report.fault.not-cleared': 'No se dijo que esté resuelto.',
  'report.fault.cleared': ({ wallMs, zone }, f) => `Resuelto ${f.dateTime(wallMs, zone)}.`,
  'report.cooling.open': 'Aún no se ha dicho cómo terminó su enfriamiento.',
  'report.cooling.clock': 'El reloj del enfriamiento',
  'report.cooling.cooled': ({ wallMs, zone, cooledS }, f) =>
    `Enfriada y cubierta, por palabra de una persona ${f.dateTime(wallMs, zone)}: ${f.duration(cooledS, 'down')} de enfriamiento vistos.`,
  'report.cooling.taken-over': ({ wallMs, zone, cooledS }, f) =>
    `Un médico o una ambulancia se hizo cargo ${f.dateTime(wallMs, zone)}, tras ${f.duration(cooledS, 'down')} de enfriamiento vistos.`,
  'report.cooling.mistake': ({ wallMs, zone, cooledS }, f) =>
    `Empezado por error, nadie se quemó: dicho ${f.dateTime(wallMs, zone)}, tras ${f.duration(cooledS, 'down')}.`,
  'report.steps': 'Pasos:',
  'report.step': ({ step, attempt: one, by }, f) =>
    `${unended(f.say(step))}: ${f.say(one)}${by.length === 0 ? '' : ` Por ${f.list(by.map((who) => f.say(who)))}.`}`,
  'report.step.void': ({ attempt: one, because }, f) =>
    `No cuenta: ${f.say(one)} Se hizo de nuevo porque: ${ended(f.say(because))}`,
  'report.step.tried': ({ wallMs, zone, said }, f) =>
    `Probado con la mano, ${f.dateTime(wallMs, zone)}: ${ended(f.say(said))}`,
  'report.step.broke-off': ({ wallMs, zone, stage, because }, f) =>
    `Se cortó, ${f.dateTime(wallMs, zone)}: “${f.say(stage)}” ${ended(f.say(because))}`,
  'report.step.proved': ({ provedS, neededS }, f) =>
    `${f.duration(provedS, 'down')} de ${f.duration(neededS, 'down')} comprobados.`,
  'report.attempt': ({ outcome, reason, safe }, f) =>
    attempt(f.say(outcome), '', f.say(reason), safe),
  'report.attempt.since': ({ outcome, wallMs, zone, reason, safe }, f) =>
    attempt(f.say(outcome), `, desde ${f.dateTime(wallMs, zone)}`, f.say(reason), safe),
  'report.attempt.from-to': ({ outcome, reason, safe, ...times }, f) =>
    attempt(f.say(outcome), `, ${range(times, f)}`, f.say(reason), safe),
  'report.outcome.done': 'hecho',
  'report.outcome.skipped': 'omitido',
  'report.outcome.failed': 'fallido',
  'report.outcome.stopped': 'parado',
  'report.outcome.not-run': 'sin empezar',
  'report.outcome.open': 'empezado, sin terminar',
  'report.outcome.waiting': 'sin empezar',
  'report.outcome.void': 'cortado',
  'report.not-done': ({ step, outcome }, f) => `${unended(f.say(step))}: ${f.say(outcome)}.`,
  'report.not-done-at': ({ fixture, step, outcome }, f) =>
    `${fixture}: ${unended(f.say(step))}: ${f.say(outcome)}.`,

  'report.missing.not-purged': ({ step }, f) => `Sin kasherizar: ${unended(f.say(step))}.`,
  'report.missing.left-out': ({ step }, f) => `Omitido: ${unended(f.say(step))}.`,
};
