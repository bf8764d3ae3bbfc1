import type { standing as english } from '../../english/report/standing.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What holds whatever was done, and the entries of a calendar. */
export const standing: TranslationOf<typeof english> = {
  'report.standing.customs':
    'Les coutumes diffèrent. Ce plan suit la coutume que vous avez choisie ; la parole de votre rabbin la remplace.',
  'report.standing.no-ruling':
    'Ce rapport dit ce qui était prévu et ce que des personnes ont confirmé. Il ne tranche rien : demandez à votre rabbin si cela suffit.',
  'report.standing.clock':
    'Les heures sont celles de l’horloge de la tablette. Où le temps repose sur la parole d’une personne, le rapport le dit.',
  'report.standing.manuals': 'La notice du fabricant et les règles locales passent avant ce plan.',
  'report.standing.trades': 'Gaz, électricité et plomberie reviennent aux professionnels agréés.',
  'report.standing.no-guarantee':
    'Aucune garantie de sécurité n’est donnée. En cas de besoin, appelez le numéro d’urgence local.',

  'report.calibration.burner': ({ burner }) => `Foyer « ${burner} »`,

  'report.event.rest-over': ({ name }, f) => `Fin du repos : ${f.say(name)}`,
  'report.event.rest-text':
    'D’ici là, rien de chaud ; un doute fait recommencer le repos. Le minuteur du chantier décide, pas cette entrée.',
  'report.event.purge': 'Cachérisation',
  'report.event.purge-of': ({ names }) => `Cachériser : ${names.join(', ')}`,
  'report.event.purge-of-more': ({ names, more }, f) =>
    `Cachériser : ${names.join(', ')} et ${f.number(more)} de plus`,
  'report.event.method': ({ name, method }, f) => `${name} : ${f.say(method)}`,
  'report.event.stay': 'Heures attendues. Quelqu’un reste auprès tout le temps.',
};
