import type { stepReasons as english } from '../../english/plan/step-reasons.ts';
import type { TranslationOf } from '../../model/translation.ts';

function reportsText(reports: number): string {
  return reports === 1 ? 'un relevé' : `${reports} relevés`;
}

/** Why each step is done, and what earlier runs showed about it: told with the plan, not at the work. */
export const stepReasons: TranslationOf<typeof english> = {
  'steps.prepare.ask.reason': 'Ce qui n’a pas de réponse est fait de la manière la plus stricte.',
  'steps.prepare.gather.reason': 'On ne va rien chercher, une bouilloire bouillante à la main.',
  'steps.prepare.alarms.reason': 'Ils surveillent ce que personne ne sent.',
  'steps.prepare.clear.reason': 'Nettoyer et verser demandent des surfaces nues.',
  'steps.clean.reason': 'Cet élément ne demande qu’un nettoyage.',
  'steps.clean.reason-before-rest':
    'Ce qui colle le protégerait de la cachérisation, et un nettoyage à chaud compte comme usage : il vient avant le repos.',
  'steps.clean.reason-resting':
    'Ce qui colle le protégerait de la cachérisation. Il repose déjà, et un nettoyage à chaud ferait recommencer son repos.',
  'steps.clean.reason-vessel': 'Tartre et graisse protégeraient ses parois.',
  'steps.unplug.reason': 'L’eau et le secteur ne se rencontrent pas : on débranche avant de laver.',
  'steps.thaw.reason': 'Ce qui est pris dans la glace ne peut être nettoyé.',
  'steps.switch-on.reason': 'Les aliments ne tiennent que quelques heures en glacière.',
  'steps.rest.reason': ({ restHours }, f) =>
    `Il ne doit pas avoir servi à chaud dans les ${f.shortNumber(restHours)} heures avant sa cachérisation (eino ben yomo).`,
  'steps.parts.reason': 'Ce qui n’est pas cachérisé est remplacé ou couvert.',
  'steps.mark.reason': 'Pour que personne ne défasse le travail par erreur.',
  'steps.boil.reason':
    'On verse du récipient même qui était sur le feu (kli richone), à gros bouillons.',
  'steps.boil-over.reason':
    'Ce qui cachérise doit lui-même être cacher : l’eau bouillante dedans et par-dessus son bord le cachérise (hagala).',
  'steps.glow.cool-reason': 'Il brûle la main bien après avoir cessé d’être rouge.',
  'steps.oven.cool-reason': 'Il brûle la main bien après l’arrêt.',
  'steps.experience.boil': ({ lengthS, reports }, f) =>
    `D’après votre dernier chantier : bout en ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.glow': ({ lengthS, reports }, f) =>
    `D’après votre dernier chantier : rouge après ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.heat-up': ({ lengthS, reports }, f) =>
    `D’après votre dernier chantier : au maximum après ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.experience.pour': ({ lengthS, reports }, f) =>
    `D’après votre dernier chantier : bouilloire vide après ${f.about(lengthS)} (${reportsText(reports)}).`,
  'steps.reason-and-experience': ({ reason, experience }, f) =>
    `${f.say(reason)} ${f.say(experience)}`,
};
