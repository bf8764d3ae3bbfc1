import type { Section } from '../../model/message.ts';

/** Rows of the table of utensils by their id: why, and what is asked. */
export const rows = {
  'utensils.row.sieve.reason':
    'What hides in the holes cannot be cleaned out, so sieves and graters are not purged.',
  'utensils.row.dough-board.reason':
    'By custom a board on which dough was kneaded is not used, even purged.',
  'utensils.row.earthenware.reason': 'Earthenware that was used hot is not purged.',
  'utensils.row.porcelain.reason':
    'China and glazed ware are judged as earthenware, which is not purged.',
  'utensils.row.enamel.reason':
    'The code does not purge what is enamelled inside; later authorities differ.',
  'utensils.row.enamel.ask': 'May enamelled metal be immersed in boiling water?',
  'utensils.row.nonstick.reason':
    'The codes do not name coatings; a coating bears boiling water, never a glow.',
  'utensils.row.nonstick.ask': 'May a coated pan be purged by boiling water?',
  'utensils.row.made.reason': 'The codes do not name plastics, and later authorities differ.',
  'utensils.row.made.ask': 'May plastic or silicone be immersed in boiling water?',
  'utensils.row.unknown-material.reason':
    'Of what it is made is not known, so it is kept out of use.',
  'utensils.row.unknown-material.ask': 'What is it made of?',
  'utensils.row.glass-rinse.reason': 'By this custom glass absorbs nothing: it is rinsed.',
  'utensils.row.glass-drink.reason':
    'By this custom glass is judged as earthenware; many soak glasses that were used cold three days, in water changed each 24 hours.',
  'utensils.row.glass-drink.ask': 'Are glasses used cold soaked for Passover, or only washed?',
  'utensils.row.glass-hot.reason':
    'By this custom glass used hot is judged as earthenware, which is not purged.',
  'utensils.row.glass-hot.ask': 'May glass that was used hot be purged after all?',
  'utensils.row.cold.reason':
    'It was used cold only: scrubbing and rinsing are enough. Liquid that stood in it a day, or sharp food, counts as hot.',
  'utensils.row.wood-fire.reason':
    'What was used on the fire is purged by fire, which wood does not bear.',
  'utensils.row.wood-joints.reason':
    'Food stays in joints that cannot be opened, and what cannot be cleaned is not purged by water.',
  'utensils.row.wood-open.reason':
    'Cracks, pits and rough places cannot be cleaned, and what cannot be cleaned is not purged by water.',
  'utensils.row.wood-open.ask': 'Is it smooth everywhere, or can it be sanded smooth?',
  'utensils.row.wood-smooth.reason':
    'Smooth wood and stone are purged in boiling water, as metal is.',
  'utensils.row.stone-fire.reason':
    'What was used on the fire is purged by fire, and stone would crack.',
  'utensils.row.mix-up-fire.reason':
    'It was used on the fire without liquid. Light heat serves where what it absorbed was permitted then; a mix-up may not have been.',
  'utensils.row.mix-up-fire.ask': 'Is light heat enough for this mix-up?',
  'utensils.row.soft-metal-fire.reason':
    'It was used on the fire and needs heat, but this metal melts or warps before it glows.',
  'utensils.row.soft-metal-fire.ask': 'Is light heat enough for it?',
  'utensils.row.leaven-pan.reason':
    'A frying pan is used with little fat or none. Heat is the strict way; for leaven many purge it more lightly.',
  'utensils.row.leaven-pan.ask':
    'Is a frying pan purged for Passover by heat, light heat or water?',
  'utensils.row.pan.reason':
    'A frying pan used for what was not kosher is purged by heat; in water it would not be purged for hot use.',
  'utensils.row.tray.reason':
    'What food was baked on is purged by heat, greased or not. It may be simpler to replace it.',
  'utensils.row.fire.reason': 'As it absorbed so it gives out: used on the fire, purged by fire.',
  'utensils.row.gadget.reason':
    'Where joints or a glued handle cannot be opened, food stays inside, and water purges only what is clean.',
  'utensils.row.gadget.ask': 'Can it be taken apart and cleaned everywhere, handle too?',
  'utensils.row.joints.reason':
    'Food stays in joints that cannot be opened. Light heat burns it there and serves wherever water would be enough.',
  'utensils.row.cracks.reason':
    'Cracks, pits and rust cannot be cleaned. Light heat burns what is in them and serves wherever water would be enough.',
  'utensils.row.liquid.reason':
    'As it absorbed so it gives out: used in liquid on the fire, purged in boiling water.',
  'utensils.row.poured.reason':
    'Hot food was poured on it. Pouring would purge it; immersing does more and misses no spot.',
} satisfies Section;
