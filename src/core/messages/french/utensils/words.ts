import type { words as english } from '../../english/utensils/words.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Kinds of utensils, and what is done with them. */
export const words: TranslationOf<typeof english> = {
  'utensils.kind-for': ({ kind, designation }, f) => `${f.say(kind)} (${f.say(designation)})`,
  'utensils.kind.pot': 'Marmites',
  'utensils.kind.lid': 'Couvercles',
  'utensils.kind.pan': 'Poêles',
  'utensils.kind.tray': 'Plaques de four',
  'utensils.kind.rack': 'Grilles et grils',
  'utensils.kind.cutlery': 'Couverts',
  'utensils.kind.knife': 'Couteaux',
  'utensils.kind.ladle': 'Louches et spatules',
  'utensils.kind.wooden-spoon': 'Cuillères en bois',
  'utensils.kind.board': 'Planches',
  'utensils.kind.plate': 'Assiettes et bols',
  'utensils.kind.mug': 'Tasses',
  'utensils.kind.glass': 'Verres',
  'utensils.kind.silver': 'Argenterie',
  'utensils.kind.sieve': 'Tamis et râpes',
  'utensils.kind.gadget': 'Petits ustensiles',

  'utensils.method.heat': 'Chauffer au rouge, ou par un cycle complet de pyrolyse',
  'utensils.method.light-heat': 'Chauffer jusqu’à ce que de la paille roussisse de l’autre côté',
  'utensils.method.immerse': 'Immerger dans l’eau bouillante',
  'utensils.method.soak': 'Tremper dans l’eau froide',
  'utensils.method.clean': 'Frotter et rincer',
  'utensils.method.put-away': 'Ranger ou remplacer',

  'utensils.answer.heat': 'Seulement par la chaleur, au rouge.',
  'utensils.answer.light-heat': 'Par la chaleur légère.',
  'utensils.answer.immerse': 'Dans l’eau bouillante.',
  'utensils.answer.soak': 'En trempant trois jours.',
  'utensils.answer.clean': 'Laver suffit.',
  'utensils.answer.put-away': 'Non cachérisé.',

  'utensils.rule.rest':
    'Lavez-le, puis rien de chaud avec pendant 24 heures. Ce qui n’est pas propre n’est pas cachérisé.',
  'utensils.rule.light-heat-test':
    'La chaleur légère suffit quand paille ou papier, tenu de l’autre côté, roussit. Tenez-la loin des manches en plastique.',
  'utensils.rule.soak':
    'Trempez-le sous l’eau froide 24 heures, jetez l’eau, remplissez encore : trois fois.',
  'utensils.rule.plain-water':
    'De l’eau pure, sans rien ajouter. Changez-la quand elle devient épaisse ou trouble.',
  'utensils.rule.pot-first':
    'La marmite est cachérisée avant de cachériser, et à nouveau après le dernier lot.',
  'utensils.rule.boil-over':
    'Une marmite est cachérisée quand, pleine à ras bord, elle bout et déborde : foyer éteint, descendez lentement de l’acier propre et chaud pour faire monter l’eau. Pas de pierre : elle peut éclater.',
  'utensils.rule.bubbling':
    'Trempez seulement tant que l’eau bouillonne. Elle s’arrête quand du froid y entre : laissez-le dessous jusqu’à ce qu’elle bouillonne de nouveau.',
  'utensils.rule.tongs':
    'Où la pince le tient, l’eau ne vient pas : lâchez-le sous l’eau, ou tournez-le et trempez encore.',
  'utensils.rule.parts':
    'Le trop long passe une moitié après l’autre, la seconde un peu au-delà du milieu.',
  'utensils.rule.apart': 'Objets viande et lait, jamais dans la même eau.',
  'utensils.rule.cold-rinse': 'Dans l’eau froide dès qu’il sort.',
  'utensils.rule.mikveh':
    'Après la cachérisation, les objets de métal et de verre pour aliments venant de non-Juifs sont trempés au mikvé.',
};
