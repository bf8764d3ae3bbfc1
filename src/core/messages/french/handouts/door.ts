import type { door as english } from '../../english/handouts/door.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** One page for the door of the kitchen: what to do when something happens later. */
export const door: TranslationOf<typeof english> = {
  'handouts.door.title': ({ kitchen }) =>
    `Quand il se passe quelque chose dans la cuisine : ${kitchen}`,
  'handouts.door.about':
    'Pour tous ceux qui utilisent la cuisine. Cette page ne tranche rien : arrêtez, laissez tel quel, notez, demandez.',
  'handouts.door.danger': 'Quelqu’un est en danger',
  'handouts.door.call': ({ number }) => `Appelez le ${number}`,
  'handouts.door.call-local': 'Appelez le numéro d’urgence local :',
  'handouts.door.later': 'Il est arrivé quelque chose à un endroit ou à un objet',
  'handouts.door.case.hot': 'Quelque chose de chaud qui n’est pas d’ici l’a touché',
  'handouts.door.case.hot.1': 'Cessez de l’utiliser. Rien de chaud dessus, pas de lavage à chaud.',
  'handouts.door.case.hot.2': 'Laissez refroidir, ôtez les aliments, essuyez à l’eau froide.',
  'handouts.door.case.hot.3': 'Posez un écriteau, notez-le ci-dessous, et demandez.',
  'handouts.door.case.cold': 'Quelque chose de froid l’a touché',
  'handouts.door.case.cold.1': 'Essuyez et lavez l’endroit à l’eau froide et au savon.',
  'handouts.door.case.cold.2':
    'Demandez si c’était piquant (oignon, ail, cornichons), ou un liquide resté un jour : cela compte comme chaud.',
  'handouts.door.case.mixed': 'Un objet viande a servi au lait, ou l’inverse',
  'handouts.door.case.mixed.1':
    'Mettez-le de côté, avec ce qu’il a touché à chaud. Ne les lavez pas ensemble.',
  'handouts.door.case.mixed.2': 'Gardez les aliments à part et ne les mangez pas encore.',
  'handouts.door.case.mixed.3':
    'Notez ce que c’était, quelle chaleur, et le dernier usage à chaud de chacun. Demandez.',
  'handouts.door.case.resting': 'Quelque chose qui repose a servi à chaud',
  'handouts.door.case.resting.1':
    'Signalez-le sur la tablette sous « Il s’est passé quelque chose » : son repos recommence.',
  'handouts.door.case.cover': 'Une couverture est déchirée, soulevée ou mouillée dessous',
  'handouts.door.case.cover.1': 'N’y posez rien de chaud avant qu’elle soit réparée ou remplacée.',
  'handouts.door.case.cover.2': 'Si du chaud est passé dessous, c’est comme le premier cas.',
  'handouts.door.case.crack': 'Une fente, un éclat ou de profondes rayures apparaissent',
  'handouts.door.case.crack.1':
    'Couvrez l’endroit et n’y posez rien de chaud. Demandez avant de le réutiliser.',
  'handouts.door.case.leaven': 'On trouve du hamets à Pessah',
  'handouts.door.case.leaven.1':
    'Ne le mangez pas, ne le touchez pas. Posez un bol dessus et demandez aussitôt.',
  'handouts.door.case.leaven.2': 'Ce qu’il a touché ne sert pas avant la réponse.',
  'handouts.door.ask': 'Nous demandons à :',
  'handouts.door.phone': 'Téléphone :',
  'handouts.door.log.when': 'Quand',
  'handouts.door.log.where': 'Quel endroit ou objet',
  'handouts.door.log.what': 'Quoi, quelle chaleur, combien de temps',
  'handouts.door.log.answer': 'Réponse, et de qui',
};
