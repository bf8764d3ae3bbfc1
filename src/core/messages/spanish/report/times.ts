import type { TranslationOf } from '../../model/translation.ts';
import type { times as english } from '../../english/report/times.ts';
import { ended, range } from './phrases.ts';

/** Gaps, answers, late alarms, and what was assumed. */
export const times: TranslationOf<typeof english> = {
  'report.gap.not-running': ({ unprovedS, ...times }, f) =>
    `${range(times, f)}: la aplicación no estaba en marcha, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.torn': ({ count }, f) =>
    f.plural(count, {
      one: 'Se descartó 1 entrada a medio escribir.',
      other: `Se descartaron ${f.number(count)} entradas a medio escribir.`,
    }),
  'report.gap.slept-or-set': ({ unprovedS, ...times }, f) =>
    `${range(times, f)}: la tableta se durmió o se adelantó su reloj, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.set-back': ({ unprovedS, toWallMs, zone }, f) =>
    `Hasta ${f.dateTime(toWallMs, zone)}: el reloj de la tableta se atrasó ${f.duration(unprovedS, 'down')}.`,
  'report.clock-asked': ({ wallMs, zone, answer }, f) =>
    `¿Muestra la tableta la hora correcta (${f.dateTime(wallMs, zone)})? ${f.capital(f.say(answer))}.`,
  'report.review-asked': ({ step, gapS, ask, answer }, f) =>
    `${f.say(step)}, faltan ${f.duration(gapS, 'down')}: ${f.say(ask)} ${f.capital(f.say(answer))}.`,
  'report.answer.none': 'sin respuesta',
  'report.answer': ({ answer, wallMs, zone }, f) =>
    `${f.say(answer)}, respondido ${f.dateTime(wallMs, zone)}`,
  'report.answer.clock-right': 'sí',
  'report.answer.clock-wrong': 'no, no se sabe la hora correcta',
  'report.answer.clock-corrected': ({ wallMs, zone }, f) => `no, era ${f.dateTime(wallMs, zone)}`,
  'report.answer.went-on': 'siguió',
  'report.answer.broke-off': 'se cortó',
  'report.answer.unknown': 'nadie lo vio',
  'report.late': ({ step, timer, lateByS, wallMs, zone }, f) =>
    `${f.say(step)}: “${f.say(timer)}” se avisó ${f.duration(lateByS, 'down')} tarde, ${f.dateTime(wallMs, zone)}.`,
  'report.silent': ({ step, timer, text, wallMs, zone }, f) =>
    `${f.dateTime(wallMs, zone)}: ${f.say(step)}, “${f.say(timer)}”. ${ended(text)}`,
  'report.paused': (times, f) => `${range(times, f)}.`,
  'report.paused-since': ({ wallMs, zone }, f) => `desde ${f.dateTime(wallMs, zone)}.`,
  'report.storage': ({ text, ...times }, f) => `${range(times, f)}: ${ended(text)}`,
  'report.storage-since': ({ wallMs, zone, text }, f) =>
    `desde ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.note': ({ wallMs, zone, text }, f) => `${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.question': ({ fixture, ask, untilThen }, f) =>
    `${fixture}: ${f.say(ask)} Hasta entonces: ${ended(f.say(untilThen))}`,

  'report.assumed': ({ what, taken }, f) => `${f.say(what)}: ${ended(f.say(taken))}`,
  'report.assumed.filled': ({ value, why }, f) => `${value} (${f.say(why)})`,
  'report.assumed.place': 'Lugar',
  'report.assumed.no-place': 'sin indicar: no se calcularon los días de descanso',
  'report.assumed.material': ({ fixture }) => `${fixture}: material`,
  'report.assumed.condition': ({ fixture }) => `${fixture}: estado`,
  'report.assumed.stricter': 'sin indicar: se planificó el método más estricto',
  'report.assumed.cycle': ({ fixture }) => `${fixture}: duración del ciclo de autolimpieza`,
  'report.assumed.usual-cycle': 'sin indicar: se planificó la duración habitual',
};
