import type { rehearse as english } from '../english/rehearse.ts';
import type { TranslationOf } from '../model/translation.ts';

/** The band over a run that is rehearsed. */
export const rehearse: TranslationOf<typeof english> = {
  'rehearse.title': 'Répétition',
  'rehearse.about': 'Rien n’est chaud, rien n’est noté.',
  'rehearse.band': 'Répétition : ce qui vient, et comment c’est joué',
  'rehearse.ahead.start-run': 'Prochain appui : le chantier commence',
  'rehearse.ahead.start-step': ({ step }) => `Prochain appui : commencer « ${step} »`,
  'rehearse.ahead.confirm': ({ step }) => `Prochain appui : fait, « ${step} »`,
  'rehearse.ahead.answer-gate': ({ step }) =>
    `Prochain appui : oui à la question avant « ${step} »`,
  'rehearse.ahead.acknowledge-timer': ({ step }) =>
    `Prochain appui : l’alarme de « ${step} » est répondue`,
  'rehearse.ahead.other': 'Prochain appui : ce que l’écran demande',
  'rehearse.ahead.wait': ({ wallMs, zone }, f) =>
    `Rien à presser ; l’horloge avance jusqu’à ${f.shortMoment(wallMs, zone)}`,
  'rehearse.ahead.still': 'Plus rien n’arrive tout seul : pressez ce que l’écran demande.',
  'rehearse.ahead.over': 'C’était tout le chantier. Rien n’en est gardé.',
  'rehearse.pause': 'Pause',
  'rehearse.play': 'Reprendre',
  'rehearse.step': 'Suivant',
  'rehearse.slower': 'Plus lent',
  'rehearse.faster': 'Plus vite',
  'rehearse.speed': ({ speed }, f) =>
    `${f.number(speed, Number.isInteger(speed) ? 0 : Number.isInteger(speed * 2) ? 1 : 2)}×`,
  'rehearse.sound-on': 'Son activé',
  'rehearse.sound-off': 'Son coupé',
  'rehearse.leave': 'Quitter',
};
