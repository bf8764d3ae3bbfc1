import type { shopping as english } from '../../english/plan/shopping.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What to buy and gather. */
export const shopping: TranslationOf<typeof english> = {
  /** What is bought, before how much of it. */
  'plan.buy.before-amount': ({ name }, f) => `${f.say(name)} :`,
  'plan.buy.kettle': ({ maxFillL, ratedW }, f) =>
    `Bouilloire électrique, ${f.shortMeasure(maxFillL, 'L')}, ${f.number(ratedW)} W`,
  'plan.buy.kettle.why': 'La cuisine ne nomme aucune bouilloire avec laquelle verser.',
  'plan.buy.jugs': ({ jugL }, f) => `Brocs d’eau froide de ${f.fill(jugL, true)}`,
  'plan.buy.jugs.why': ({ coldL }, f) =>
    `Environ ${f.measure(coldL, 'L')} d’eau froide suivent l’eau bouillante.`,
  'plan.buy.mop': 'Serpillière, seau et serviettes de sol',
  'plan.buy.mop.why': 'Le sol se mouille après chaque bouilloire.',
  'plan.buy.gloves': 'Gants longs, anti-chaleur et étanches',
  'plan.buy.gloves.why': 'Eau bouillante et métal chaud.',
  'plan.buy.rubber-gloves': 'Gants en caoutchouc et lunettes',
  'plan.buy.rubber-gloves.why': 'Produits de nettoyage.',
  'plan.buy.extinguisher': 'Extincteur de cuisine, ou couverture anti-feu',
  'plan.buy.extinguisher.why': 'Foyers au rouge et chaleur du four.',
  'plan.buy.co-alarm': 'Détecteur de CO, testé',
  'plan.buy.co-alarm.why': 'Les flammes et la graisse qui brûle dégagent du monoxyde de carbone.',
  'plan.buy.smoke-alarm': 'Détecteur de fumée, testé',
  'plan.buy.smoke-alarm.why': 'Il reste en place, non désactivé.',
  'plan.buy.ladder': 'Escabeau',
  'plan.buy.ladder.why': 'On atteint le haut depuis un escabeau, pas une chaise.',
  'plan.buy.towels': 'Serviettes propres ou un drap',
  'plan.buy.towels.why': 'Les choses propres y attendent que les plans de travail soient faits.',
  'plan.buy.cleaning': 'Liquide vaisselle, brosses, éponges à récurer, aspirateur',
  'plan.buy.cleaning.why': 'Nettoyage de haut en bas.',
  'plan.buy.labels': 'Étiquettes ou ruban de trois couleurs',
  'plan.buy.labels.why': 'Endroits viande, lait et neutre.',
  'plan.buy.stone': 'Pièce d’acier lisse et propre, et longue pince',
  'plan.buy.stone.why': 'Elle est chauffée et déplacée pendant qu’on verse l’eau bouillante.',
  'plan.buy.parts': ({ parts }, f) => `Neuf : ${f.list(parts.map((one) => f.say(one)))}`,
  'plan.buy.parts.why': ({ fixture }) =>
    `${fixture} : ces pièces ne sont pas cachérisées. Mesurez d’abord les anciennes.`,
  'plan.buy.cover': ({ material }, f) => f.capital(f.say(material)),
  'plan.buy.cover.why': ({ fixtures }) => `Pour ${fixtures.join(', ')}.`,
  'plan.amount.count': ({ count }, f) => f.number(count),
  'plan.amount.set': '1 jeu',
  'plan.amount.pairs': ({ pairs }, f) =>
    `${f.number(pairs)} ${f.plural(pairs, { one: 'paire', other: 'paires' })}`,
  'plan.amount.bowls': ({ bowls }, f) =>
    `pour ${f.number(bowls)} ${f.plural(bowls, { one: 'cuve', other: 'cuves' })}`,
  'plan.amount.area': ({ areaM2 }, f) => f.shortMeasure(areaM2, 'm²'),
  'plan.amount.to-size': 'sur mesure',
};
