import type { gaps as english } from '../../english/run/gaps.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** After an interruption, on a rest day, and when there is nothing to do: each comes with its screen. */
export const gaps: TranslationOf<typeof english> = {
  'run.clock': 'L’heure',
  'run.clock.ask': ({ wallMs, zone }, f) => `Est-il bien ${f.moment(wallMs, zone)} maintenant ?`,
  'run.clock.yes': ({ wallMs, zone }, f) => `Oui, il est ${f.moment(wallMs, zone)}`,
  'run.clock.yes-passed': ({ missingS }, f) => `Oui, et ces ${f.duration(missingS)} ont passé`,
  'run.clock.yes-set': 'Oui, mais l’heure a été réglée',
  'run.clock.no': 'Non',
  'run.clock.unknown': 'Personne ne sait',
  'run.clock.about':
    'La tablette a dormi ou son heure a été changée. Les attentes ne comptent le temps manquant que si vous le confirmez.',
  'run.last-hot.ask': ({ name, wallMs, zone }, f) =>
    `${f.say(name)} : son dernier usage à chaud date-t-il de ${f.moment(wallMs, zone)}, ou d’avant ?`,
  'run.last-hot.about':
    'Eau chaude, plats chauds et nettoyage à chaud comptent tous. Seulement si vous êtes sûr : alors son repos compte depuis ce moment.',
  'run.last-hot.yes': ({ wallMs, zone }, f) =>
    `Oui, et il est ${f.moment(wallMs, zone)} maintenant`,
  'run.last-hot.no': 'Non, ou personne ne sait : commencer son repos maintenant',
  'run.last-hot.reason': 'Dit avant le chantier, et encore après le nettoyage.',
  'run.last-hot.no-reason':
    'Son dernier usage à chaud est plus récent que ce qui a été dit, ou personne ne sait.',
  'run.clock.really': 'Quelle heure est-il vraiment ?',
  'run.clock.right': 'C’est la bonne heure',
  'run.clock.right-passed': ({ missingS }, f) =>
    `C’est juste, et ${f.duration(missingS)} ont passé`,
  'run.clock.right-set': 'C’est juste, mais l’heure a été réglée',

  'run.review': 'Ce qui s’est passé entre-temps',
  'run.review.title': 'Voici où vous en étiez',
  'run.review.away': ({ step, gapS }, f) => {
    const title = f.say(step);
    return `${title.endsWith('.') ? title : `${title}.`} La tablette a été absente ${f.duration(gapS)}.`;
  },
  'run.review.away-only': ({ gapS }, f) => `La tablette a été absente ${f.duration(gapS)}.`,
  'run.review.went-on': 'Oui, je l’ai vu',
  'run.review.broke-off': 'Non, c’est interrompu',
  'run.review.unknown': 'Personne n’a vu',

  'run.quiet': 'Rien à faire pour l’instant',
  'run.quiet.none': 'Aucune étape ne peut commencer.',
  'run.quiet.about':
    'N’utilisez à chaud rien de ce qui repose. Partez, dormez, revenez : les minuteurs tournent, et ce qui est échu est dit aussitôt.',

  'run.rest-day': 'Jour chômé',
  'run.rest-day.title': 'Reposez-vous. Rien ne vous est demandé.',
  'run.rest-day.until': ({ when }, f) =>
    `Le chantier attend, et rien ne sonne, jusqu’à ${f.say(when)}. Ce qui arrive à échéance est dit ensuite.`,
  'run.rest-day.wait': ({ waits, when }, f) => `${f.say(waits)}, jusqu’à ${f.say(when)}`,
  'run.rest-day.hot': 'Encore chaud :',
  'run.rest-day.danger':
    'Le danger pour la vie passe avant tout : appelez le numéro d’urgence local.',
  'common.other-zone': ({ wallMs, zone, tabletZone }, f) =>
    `Toutes les heures sont celles de la cuisine, où il est ${f.shortMoment(wallMs, zone)}. Cette tablette, réglée sur un autre fuseau, afficherait ${f.shortMoment(wallMs, tabletZone)}.`,
};
