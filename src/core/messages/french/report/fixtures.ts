import type { fixtures as english } from '../../english/report/fixtures.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { after, attempt, ended, range, unended } from './phrases.ts';

/** What was done at each fixture, kettle by kettle. */
export const fixtures: TranslationOf<typeof english> = {
  'report.fixture': ({ name, designation }, f) => `${name} (${f.say(designation).toLowerCase()})`,
  'report.method.none': 'Méthode : aucune dans ce plan.',
  'report.method': ({ method, minutes, cover, term, reason }, f) =>
    `Méthode : ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', puis couvrir' : ''}${term ? ` (${f.say(term)})` : ''}. ${ended(f.say(reason))}`,
  'report.source': ({ source, state }, f) => `Source : ${f.say(source)} (${f.say(state)}).`,
  'report.replaces-row': ({ by }, f) =>
    `Remplace la ligne de la coutume, sur la parole de : ${ended(f.say(by))}`,
  'report.open-when-planned': ({ ask, untilThen }, f) =>
    `Ouvert à la planification : ${f.say(ask)} D’ici là : ${ended(f.say(untilThen))}`,
  'report.said': ({ saidBy, saidOn, method, minutes, cover, text }, f) =>
    `Réponse de ${saidBy}, ${saidOn} : ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${{ with: ', puis couvrir', without: ', sans couvrir ensuite', unsaid: '' }[cover]}. ${ended(text)}`.trim(),
  'report.result.all': 'Résultat : chaque étape prévue a été faite.',
  'report.result.part': 'Résultat : seule une partie des étapes prévues a été faite.',
  'report.result.none': 'Résultat : rien de ce qui était prévu n’a été fait.',
  'report.result.nothing': 'Résultat : rien n’était prévu.',
  'report.rest': 'Repos',
  'report.hold': ({ name, fromWallMs, toWallMs, zone, provedS, neededS, addedS, onWordS }, f) => {
    const over = toWallMs > 0 ? `à ${f.dateTime(toWallMs, zone)}` : 'non terminé';
    const added = addedS > 0 ? `, dont ${f.duration(addedS, 'down')} ajoutés à la main` : '';
    const word =
      onWordS > 0 ? ` ; dont ${f.duration(onWordS, 'down')} sur la parole d’une personne` : '';
    return `${f.say(name)} : ${f.dateTime(fromWallMs, zone)} ${over}, ${f.duration(provedS, 'down')} prouvés (demandé ${f.duration(neededS, 'down')}${added}${word}).`;
  },
  'report.hold.short': 'Plus court que demandé.',
  'report.hold.unproved': 'Douteux : personne n’a vu ce qui s’est passé pendant une interruption.',
  'report.hold.dated': ({ text }) => `Daté à la main : ${ended(text)}`,
  'report.kettles': ({ poured, planned, cold, voided }, f) => {
    const after =
      poured === 0
        ? ''
        : cold === poured
          ? ', eau froide après chacune'
          : `, eau froide après ${f.number(cold)}`;
    const lost =
      voided === 0
        ? ''
        : ` ${f.number(voided)} ${f.plural(voided, { one: 'versée avant ne compte pas', other: 'versées avant ne comptent pas' })}.`;
    return `Bouilloires versées : ${f.number(poured)} sur ${f.number(planned)}${after}.${lost}`;
  },
  'report.recheck': ({ wallMs, zone, text }, f) =>
    `Doute, ${f.dateTime(wallMs, zone)} : ${ended(text)}`,
  'report.recheck.withdrawn': ({ wallMs, zone }, f) =>
    `Retiré comme erreur, ${f.dateTime(wallMs, zone)} ; rien d’autre ne s’était passé depuis.`,
  'report.override': ({ wallMs, zone, ask, reason }, f) =>
    `Passé outre une confirmation, ${f.dateTime(wallMs, zone)} : « ${f.say(ask)} » Raison : ${ended(reason)}`,
  'report.override-run': ({ wallMs, zone, ask, reason }, f) =>
    `${f.capital(f.dateTime(wallMs, zone))} : « ${f.say(ask)} » Raison : ${ended(reason)}`,
  'report.fault': ({ wallMs, zone, name, text }, f) =>
    `Incident, ${f.dateTime(wallMs, zone)} : ${f.say(name)}${after(f.say(text))}.`,
  'report.fault-at': ({ wallMs, zone, name, step, text }, f) =>
    `Incident, ${f.dateTime(wallMs, zone)} : ${f.say(name)}, à l’étape « ${f.say(step)} »${after(f.say(text))}.`,
  'report.fault.not-cleared': 'Non signalé comme réglé.',
  'report.fault.cleared': ({ wallMs, zone }, f) => `Réglé ${f.dateTime(wallMs, zone)}.`,
  'report.cooling.open': 'Rien de dit encore sur la fin de son refroidissement.',
  'report.cooling.clock': 'Le minuteur du refroidissement',
  'report.cooling.cooled': ({ wallMs, zone, cooledS }, f) =>
    `Refroidie et couverte, sur la parole d’une personne, ${f.dateTime(wallMs, zone)} : ${f.duration(cooledS, 'down')} de refroidissement vus.`,
  'report.cooling.taken-over': ({ wallMs, zone, cooledS }, f) =>
    `Un médecin ou une ambulance a pris le relais ${f.dateTime(wallMs, zone)}, après ${f.duration(cooledS, 'down')} de refroidissement vus.`,
  'report.cooling.mistake': ({ wallMs, zone, cooledS }, f) =>
    `Lancé par erreur, personne n’était brûlé : dit ${f.dateTime(wallMs, zone)}, après ${f.duration(cooledS, 'down')}.`,
  'report.steps': 'Étapes :',
  'report.step': ({ step, attempt, by }, f) =>
    `${unended(f.say(step))} : ${f.say(attempt)}${by.length === 0 ? '' : ` Par ${f.list(by.map((one) => f.say(one)))}.`}`,
  'report.step.void': ({ attempt, because }, f) =>
    `Ne compte pas : ${f.say(attempt)} Refait parce que : ${ended(f.say(because))}`,
  'report.step.tried': ({ wallMs, zone, said }, f) =>
    `Essayé à la main, ${f.dateTime(wallMs, zone)} : ${ended(f.say(said))}`,
  'report.step.broke-off': ({ wallMs, zone, stage, because }, f) =>
    `Interrompu, ${f.dateTime(wallMs, zone)} : « ${f.say(stage)} » ${ended(f.say(because))}`,
  'report.step.proved': ({ provedS, neededS }, f) =>
    `${f.duration(provedS, 'down')} prouvés sur ${f.duration(neededS, 'down')}.`,
  'report.attempt': ({ outcome, reason, safe }, f) =>
    attempt(f.say(outcome), '', f.say(reason), safe),
  'report.attempt.since': ({ outcome, wallMs, zone, reason, safe }, f) =>
    attempt(f.say(outcome), `, depuis ${f.dateTime(wallMs, zone)}`, f.say(reason), safe),
  'report.attempt.from-to': ({ outcome, reason, safe, ...times }, f) =>
    attempt(f.say(outcome), `, ${range(times, f)}`, f.say(reason), safe),
  'report.outcome.done': 'fait',
  'report.outcome.skipped': 'laissé de côté',
  'report.outcome.failed': 'échoué',
  'report.outcome.stopped': 'arrêté',
  'report.outcome.not-run': 'non commencé',
  'report.outcome.open': 'commencé, non terminé',
  'report.outcome.waiting': 'non commencé',
  'report.outcome.void': 'interrompu',
  'report.not-done': ({ step, outcome }, f) => `${unended(f.say(step))} : ${f.say(outcome)}.`,
  'report.not-done-at': ({ fixture, step, outcome }, f) =>
    `${fixture} : ${unended(f.say(step))} : ${f.say(outcome)}.`,

  'report.missing.not-purged': ({ step }, f) => `Non cachérisé : ${unended(f.say(step))}.`,
  'report.missing.left-out': ({ step }, f) => `Laissé de côté : ${unended(f.say(step))}.`,
};
