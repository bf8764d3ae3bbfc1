import type { told as english } from '../../english/custom/told.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Names of customs, covers and terms, and how answers and lists of questions are told. */
export const told: TranslationOf<typeof english> = {
  'custom.name.ashkenazic': 'ashkénaze',
  'custom.name.sephardic': 'séfarade',
  'custom.name.own': ({ name, base, rows }, f) =>
    rows === 0
      ? `${name} (${f.say(base)}, inchangée)`
      : `${name} (${f.say(base)}, avec ${f.number(rows)} ${f.plural(rows, { one: 'ligne', other: 'lignes' })} à nous)`,
  'custom.cover.rack-in-bowls': 'une grille au fond de chaque cuve',
  'custom.cover.basin-on-rack': 'une bassine posée sur une grille',
  'custom.cover.adhesive-paper':
    'papier adhésif lavable sur les étagères, feuille de plastique dans les tiroirs',
  'custom.cover.shelf-paper': 'papier d’étagère ou feuille de plastique',
  'custom.cover.liner-with-holes': 'revêtement d’étagère ajouré, pour que l’air froid passe',
  'custom.cover.insert': 'un insert pour les aliments, ou n’y garder que des aliments couverts',
  'custom.cover.plastic-sheet': 'feuille de plastique épais, coupée sur mesure',
  'custom.cover.heat-proof-liner': 'revêtement résistant à la chaleur, admis par le fabricant',
  'custom.cover.cut-to-size': 'un revêtement ou une couverture sur mesure',
  'custom.term.hagalah': 'hagala',
  'custom.term.hagalah-by-steam': 'hagala par vapeur',
  'custom.term.irui': 'irouï',
  'custom.term.libun-gamur': 'liboun gamour',
  'custom.term.libun-kal': 'liboun kal',
  'custom.term.milui-v-irui': 'milouï véirouï',
  'custom.sources': ({ sources }, f) => sources.map((source) => f.say(source)).join(' ; '),
  'custom.state.read': 'lu dans le texte',
  'custom.state.inference': 'aucun texte ne le dit en ces mots',
  'custom.state.later-authorities': 'décisionnaires ultérieurs, non lus ici',
  'custom.state.common-practice': 'comme cela se fait',
  'custom.state.memory': 'cité de mémoire, pas encore vérifié',
  'custom.state.said': 'dit à cette maisonnée',
  'custom.rest.ask':
    'Faut-il un repos de 24 heures avant une chaleur qui consume ce qui a été absorbé ?',
  'custom.rest.why':
    'L’eau serait réabsorbée ; le feu consume et n’extrait rien (déduit du Sifté Cohen, Yoré Déa 121:17). Sans repos, le plan peut gagner un jour.',
  'custom.rest.until-then': 'Laissez-le d’abord reposer 24 heures.',
  'custom.rest.answer-1': 'Laissez-le reposer 24 heures.',
  'custom.rest.answer-2': 'Aucun repos n’est nécessaire avant une telle chaleur.',
  'custom.reasons': ({ row, rule }, f) => `${f.say(row)} ${f.say(rule)}`,
  'custom.said-by': ({ saidBy, saidOn }) => `${saidBy}, ${saidOn}`,
  'custom.own-row.said-by': ({ custom, saidBy, saidOn }) =>
    `une ligne de notre coutume « ${custom} » : ${saidBy}, ${saidOn}`,
  'custom.said.reason': 'Ainsi dit pour cet élément, à la place de la ligne de la coutume.',
  'custom.said.would-change': 'Une autre réponse à la même question le change.',
  'custom.own-row.would-change': 'Retirez cette ligne de votre coutume pour le changer.',
  'custom.own-row.burners': ({ burners, why }, f) =>
    `Foyers du type ${burners.map((one) => f.say(one)).join(', ')}, selon votre propre coutume : ${why}`,

  'custom.inside-passover.reason':
    'C’est Pessah : rien n’est cachérisé par l’eau avant la fin. Nettoyé, puis couvert ou fermé.',
  'custom.inside-passover.would-change': 'Cachérisez-le avant Pessah, ou après.',
  'custom.inside-passover.ask':
    'Il a reposé 24 heures : peut-il être cachérisé par l’eau pendant Pessah ?',
  'custom.inside-passover.why':
    'Le Rama 452:1 ne laisse rien cachériser par l’eau à Pessah. Des décisionnaires ultérieurs l’admettent après un repos de 24 heures.',
  'custom.inside-passover.until-then': 'D’ici là, il est couvert ou fermé.',
  'custom.pour-order.ask':
    'Dans quel ordre ébouillanter l’évier : bec, rebord, parois, fond, ou fond d’abord puis vers le haut ?',
  'custom.pour-order.why':
    'Les usages diffèrent. De haut en bas, rien ne coule sur un endroit déjà fait ; mais ce qui coule atteint le fond refroidi, avant son propre jet.',
  'custom.pour-order.until-then':
    'De haut en bas, bonde ouverte, parois et fond essuyés avant que le jet y arrive.',
  'custom.pour-order.down': 'De haut en bas : bec, rebord, parois, fond.',
  'custom.pour-order.upwards': 'Le fond d’abord, puis vers le haut : parois, rebord, bec.',
  'custom.questions.title': ({ kitchen }) => `Questions pour notre rabbin : ${kitchen}`,
  'custom.questions.custom': ({ custom }, f) => `Coutume : ${f.say(custom)}`,
  'custom.questions.standing':
    'Les coutumes diffèrent. Le plan suit la coutume que nous avons choisie ; les réponses ci-dessous la remplacent.',
  'custom.questions.to-ask': 'À demander',
  'custom.questions.to-look': 'Nous regardons nous-mêmes',
  'custom.questions.answered': 'Répondu',
  'custom.questions.numbered': ({ number, fixture, ask }, f) =>
    `${f.number(number)}. ${fixture} : ${f.say(ask)}`,
  'custom.questions.until-then': ({ untilThen }, f) => `Jusqu’à la réponse : ${f.say(untilThen)}`,
  'custom.questions.answer-line': 'Réponse : ______________________________',
  'custom.questions.said-line': 'Dit par : ________________  le : ________',
  'custom.questions.look': ({ fixture, ask }, f) => `- ${fixture} : ${f.say(ask)}`,
  'custom.questions.answered-line': ({ fixture, ask, answer, saidBy, saidOn }, f) =>
    `- ${fixture} : ${f.say(ask)} ${answer} (${saidBy}, ${saidOn})`,
};
