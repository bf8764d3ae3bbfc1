import type { times as english } from '../../english/report/times.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { ended, range } from './phrases.ts';

/** Gaps, answers, late alarms, and what was assumed. */
export const times: TranslationOf<typeof english> = {
  'report.gap.not-running': ({ unprovedS, ...times }, f) =>
    `${f.capital(range(times, f))} : l’application ne tournait pas, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.torn': ({ count }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'ligne à moitié écrite a été écartée', other: 'lignes à moitié écrites ont été écartées' })}.`,
  'report.gap.slept-or-set': ({ unprovedS, ...times }, f) =>
    `${f.capital(range(times, f))} : la tablette dormait ou son heure a été avancée, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.set-back': ({ unprovedS, toWallMs, zone }, f) =>
    `Jusqu’à ${f.dateTime(toWallMs, zone)} : l’heure de la tablette a été reculée de ${f.duration(unprovedS, 'down')}.`,
  'report.clock-asked': ({ wallMs, zone, answer }, f) =>
    `La tablette montre-t-elle la bonne heure (${f.dateTime(wallMs, zone)}) ? ${f.say(answer)}.`,
  'report.review-asked': ({ step, gapS, ask, answer }, f) =>
    `${f.say(step)}, interruption de ${f.duration(gapS, 'down')} : ${f.say(ask)} ${f.say(answer)}.`,
  'report.answer.none': 'pas de réponse',
  'report.answer': ({ answer, wallMs, zone }, f) =>
    `${f.say(answer)}, répondu ${f.dateTime(wallMs, zone)}`,
  'report.answer.clock-right': 'oui',
  'report.answer.clock-wrong': 'non, la bonne heure n’est pas connue',
  'report.answer.clock-corrected': ({ wallMs, zone }, f) =>
    `non, c’était ${f.dateTime(wallMs, zone)}`,
  'report.answer.went-on': 'cela a continué',
  'report.answer.broke-off': 'cela s’est interrompu',
  'report.answer.unknown': 'personne n’a vu',
  'report.late': ({ step, timer, lateByS, wallMs, zone }, f) =>
    `${f.say(step)} : « ${f.say(timer)} » dit avec ${f.duration(lateByS, 'down')} de retard, ${f.dateTime(wallMs, zone)}.`,
  'report.silent': ({ step, timer, text, wallMs, zone }, f) =>
    `${f.capital(f.dateTime(wallMs, zone))} : ${f.say(step)}, « ${f.say(timer)} ». ${ended(text)}`,
  'report.paused': (times, f) => `${f.capital(range(times, f))}.`,
  'report.paused-since': ({ wallMs, zone }, f) => `depuis ${f.dateTime(wallMs, zone)}.`,
  'report.storage': ({ text, ...times }, f) => `${f.capital(range(times, f))} : ${ended(text)}`,
  'report.storage-since': ({ wallMs, zone, text }, f) =>
    `depuis ${f.dateTime(wallMs, zone)} : ${ended(text)}`,
  'report.note': ({ wallMs, zone, text }, f) =>
    `${f.capital(f.dateTime(wallMs, zone))} : ${ended(text)}`,
  'report.question': ({ fixture, ask, untilThen }, f) =>
    `${fixture} : ${f.say(ask)} D’ici là : ${ended(f.say(untilThen))}`,

  'report.assumed': ({ what, taken }, f) => `${f.say(what)} : ${ended(f.say(taken))}`,
  'report.assumed.filled': ({ value, why }, f) => `${value} (${f.say(why)})`,
  'report.assumed.place': 'Lieu',
  'report.assumed.no-place': 'non indiqué : les jours chômés n’ont pas été calculés',
  'report.assumed.material': ({ fixture }) => `${fixture} : matière`,
  'report.assumed.condition': ({ fixture }) => `${fixture} : état`,
  'report.assumed.stricter': 'non indiqué : la méthode la plus stricte a été prévue',
  'report.assumed.cycle': ({ fixture }) => `${fixture} : durée du cycle de pyrolyse`,
  'report.assumed.usual-cycle': 'non indiqué : la durée usuelle a été prévue',
};
