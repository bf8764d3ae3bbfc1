import type { shopping as english } from '../../english/handouts/shopping.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** What to buy and gather, product by product. */
export const shopping: TranslationOf<typeof english> = {
  'handouts.shopping.title': ({ kitchen }) => `À acheter et rassembler : ${kitchen}`,
  'handouts.shopping.about':
    'Une ligne par produit, avec tous ses usages. Les coches sont gardées pour cette cuisine ; l’envoi omet ce qui est coché.',
  'handouts.shopping.item': ({ name, amount }, f) => `${f.say(name)} : ${f.say(amount)}`,
  'handouts.shopping.borrow': 'peut s’emprunter',
  'handouts.shopping.wait': 'demandez d’abord : une réponse peut le rendre inutile',
  'handouts.shopping.only-if-said': 'seulement si votre rabbin le dit',
  'handouts.shopping.group.water': 'Pour l’eau',
  'handouts.shopping.group.hands': 'Pour les mains',
  'handouts.shopping.group.room': 'Pour la pièce',
  'handouts.shopping.group.cleaning': 'Pour le nettoyage',
  'handouts.shopping.group.covers': 'Couvertures et revêtements',
  'handouts.shopping.group.parts': 'Pièces neuves',
  'handouts.shopping.group.marks': 'Pour marquer',
  'handouts.shopping.sets': ({ sets }, f) =>
    `${f.number(sets)} ${f.plural(sets, { one: 'jeu', other: 'jeux' })}`,
  'handouts.shopping.part-why': ({ fixtures }, f) =>
    `Pour ${f.list(fixtures)} : les anciennes ne sont pas cachérisées. Mesurez-les d’abord.`,
  'handouts.shopping.pot': 'Marmite réservée à la cachérisation',
  'handouts.shopping.pot-size': ({ leastPotL }, f) =>
    `au moins ${f.measure(leastPotL, 'L', 0, 'up')}`,
  'handouts.shopping.left': ({ left, all }, f) =>
    `${f.number(left)} sur ${f.number(all)} encore à trouver`,
  'handouts.shopping.all-there': 'Tout est là.',
};
