import type { labels as english } from '../../english/handouts/labels.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Labels to cut out, and what they cannot settle. */
export const labels: TranslationOf<typeof english> = {
  'handouts.labels.about':
    'Coupez le long des tirets. Une lettre, un mot et un motif disent chacun ce que c’est : toute imprimante convient.',
  'handouts.labels.paper': 'Papier',
  'handouts.labels.paper.a4': 'A4',
  'handouts.labels.paper.letter': 'Lettre US',
  'handouts.labels.head': ({ kitchen, page, pages }, f) =>
    `${kitchen} : étiquettes, page ${f.number(page)} sur ${f.number(pages)}`,
  'handouts.labels.letter.meat': 'V',
  'handouts.labels.letter.dairy': 'L',
  'handouts.labels.letter.pareve': 'P',
  'handouts.labels.resting': 'AU REPOS',
  'handouts.labels.do-not-heat': 'ne pas chauffer, jusqu’à',
  'handouts.labels.planned': ({ wallMs, zone }, f) =>
    `Prévu : ${f.shortMoment(wallMs, zone)}. Écrivez l’heure que donne l’écran.`,
  'handouts.labels.write': 'Écrivez l’heure que donne l’écran.',
  'handouts.labels.none': 'Il n’y a encore rien à étiqueter.',
  'handouts.labels.undecided': ({ names }, f) =>
    `Pas d’étiquette, personne n’ayant dit à quoi c’est destiné : ${f.list(names)}. Dites-le sous Cuisine.`,
  'handouts.labels.clashes': 'Ce que les étiquettes ne règlent pas',
  'handouts.clash.only-one': ({ kind, name, marking }, f) =>
    `Un seul pour viande et lait (${f.say(kind)}) : ${name} (${f.say(marking)}). Demandez à votre rabbin comment les deux s’en servent.`,
  'handouts.clash.none-for': ({ kind, marking, names }, f) =>
    `${f.capital(f.say(kind))} : aucun marquage « ${f.say(marking)} » (${f.list(names)}).`,
  'handouts.clash.one-range': ({ oven, cooktop }) =>
    `${oven} et ${cooktop} sont un seul appareil, l’un pour la viande, l’autre pour le lait : demandez à votre rabbin ce que cela exige.`,
};
