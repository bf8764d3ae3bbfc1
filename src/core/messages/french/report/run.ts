import type { run as english } from '../../english/report/run.ts';
import type { TranslationOf } from '../../model/translation.ts';
import { ended } from './phrases.ts';

/** The head of a record: whose kitchen, how the run stands, what its parts are called. */
export const run: TranslationOf<typeof english> = {
  'report.title': ({ kitchen }) => `Rapport : ${kitchen}`,
  'report.purpose': ({ purpose }, f) => `But : ${f.say(purpose)}`,
  'report.custom': ({ custom }, f) => `Coutume : ${f.say(custom)}`,
  'report.planned': ({ wallMs, zone }, f) =>
    `Planifié : ${f.dateTime(wallMs, zone)}. Non commencé.`,
  'report.started': ({ wallMs, zone }, f) => `Commencé : ${f.dateTime(wallMs, zone)}`,
  'report.stands': ({ wallMs, zone, outcome }, f) =>
    `État actuel : ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.closed': ({ wallMs, zone, outcome }, f) =>
    `Clos : ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.reason': ({ reason }, f) => `Raison : ${ended(f.say(reason))}`,
  'report.run.completed': 'terminé',
  'report.run.failed': 'échoué',
  'report.run.stopped': 'arrêté avant la fin',
  'report.run.open': 'encore en cours',

  'report.section.general': 'Sans endroit propre',
  'report.section.not-done': 'Non fait',
  'report.section.not-done-yet': 'Pas encore fait',
  'report.section.overridden': 'Confirmations outrepassées pour tout le chantier',
  'report.section.faults': 'Incidents sans endroit propre',
  'report.section.gaps': 'Interruptions',
  'report.section.asked': 'Demandé après les interruptions',
  'report.section.late': 'Dit en retard',
  'report.section.silent': 'Alarmes qui n’ont pas pu sonner',
  'report.section.paused': 'En pause',
  'report.section.storage': 'Rien ne pouvait être noté',
  'report.section.notes': 'Notes',
  'report.section.questions': 'Ouvert quand le plan a été fait',
  'report.section.assumed': 'Pris comme usuel, faute d’indication',
  'report.section.standing': 'Ce qui vaut quoi qu’il ait été fait',
};
