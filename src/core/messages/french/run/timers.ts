import type { timers as english } from '../../english/run/timers.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Timers beside the step in hand. */
export const timers: TranslationOf<typeof english> = {
  'run.timers': 'Minuteurs',
  'run.timers.none': 'Aucun autre minuteur ne tourne.',
  'run.timer.named': ({ name, label }, f) => `${f.say(name)} : ${f.say(label)}`,
  'run.timer.reading': ({ label, left }, f) => `${f.say(label)} : ${f.say(left)}`,
  'run.timer.calls': 'maintenant',
  'run.timer.calls-here': ({ state }, f) => `${f.say(state)} : touchez quand vous l’avez entendu`,
  'run.timer.frozen': 'en pause',
  'run.timer.unproved': 'non prouvé : répondez à la question',
  'run.timer.void': 'ne compte pas',
  'run.timer.closed': 'terminé',
  'run.timer.due': 'maintenant',
  'run.timer.late': ({ ago }, f) =>
    `échu il y a ${f.say(ago)}, quand personne ne pouvait être prévenu`,
  'run.timer.due-in-rest-day': ({ day, ago }, f) =>
    `échu pendant ${f.say(day)}, il y a ${f.say(ago)}`,
};
