import type { Section } from '../../model/message.ts';

/** Rows of the customs for appliances and cupboards: why, what may change it, what is asked. */
export const appliances = {
  'custom.way.hood.reason': 'Only steam and grease reach it, and no food is cooked in it.',
  'custom.way.hood.would-change': 'Tell us if anything dripped from it into pots.',
  'custom.way.hood.note': 'Do not use it with the filters out.',
  'custom.way.microwave.reason':
    'It took in steam, and steam of boiling water inside is the usual answer. No code names it, and one asks for a boiling vessel where steam was.',
  'custom.way.microwave.would-change':
    'Tell us if its lining is cracked or it has a browning element.',
  'custom.way.microwave.ask': 'May the microwave be purged by steam, and for how many minutes?',
  'custom.way.microwave.why': 'No code names it. Views run from 10 to 20 minutes.',
  'custom.way.microwave.until-then': 'Steam it for 20 minutes.',
  'custom.way.microwave.answer-1': 'Steam for 10 minutes.',
  'custom.way.microwave.answer-2': 'Steam for 20 minutes.',
  'custom.way.dishwasher.reason':
    'Hot water with food in it runs over the tub, the racks and the pump, and views differ whether a cycle purges them.',
  'custom.way.dishwasher.would-change': 'Your rabbi’s word may change it.',
  'custom.way.dishwasher.ask': 'May this dishwasher be purged, and by which cycle?',
  'custom.way.dishwasher.why':
    'Metal tubs are judged otherwise than plastic ones, and the racks and the filter are asked about apart.',
  'custom.way.dishwasher.until-then': 'Clean it and keep it out of use.',
  'custom.way.dishwasher.answer-1': 'Clean it, then run it empty, hottest cycle.',
  'custom.way.dishwasher.answer-2': 'Clean it only.',
  'custom.way.dishwasher.answer-3': 'It stays out of use.',
  'custom.way.warming-drawer.reason':
    'It does not reach a purging heat, so it is cleaned and lined.',
  'custom.way.warming-drawer.would-change':
    'Tell us if its manual says it reaches the heat of an oven.',
  'custom.way.warming-drawer.ask': 'May the warming drawer be purged, and how?',
  'custom.way.warming-drawer.why': 'It warms covered food and seldom reaches a purging heat.',
  'custom.way.warming-drawer.until-then': 'Line it, and put only covered food in it.',
  'custom.way.warming-drawer.answer-1': 'Heat it at its highest setting.',
  'custom.way.warming-drawer.answer-2': 'Line it.',
  'custom.way.cold-passover.reason':
    'It was used cold only: cleaning is enough, and many line the shelves for Passover.',
  'custom.way.cold-passover.would-change':
    'Your custom may not line: ask. Tell us if hot pots were put down in it, or if spills stood in it for a day.',
  'custom.way.cold.reason': 'It was used cold only, so thorough cleaning and a rinse are enough.',
  'custom.way.cold.would-change':
    'Tell us if hot pots were put down in it, or if spills stood in it for a day.',
  'custom.way.shelf-raw.reason':
    'Raw wood holds crumbs and damp, so it is cleaned and lined; it was not used hot.',
  'custom.way.shelf-raw.would-change': 'Tell us if hot food was kept on it.',
  'custom.way.shelf-unknown.reason':
    'Of what the shelves are made is not known, so they are cleaned and lined.',
  'custom.way.shelf-unknown.would-change': 'Tell us what it is made of.',
  'custom.way.shelf-unknown.ask': 'Of what are these shelves made?',
  'custom.way.shelf-unknown.why': 'Raw wood holds crumbs; closed surfaces are only cleaned.',
  'custom.way.shelf-unknown.until-then': 'Clean and line them.',
  'custom.way.shelf.reason': 'It was used cold only, so thorough cleaning is enough.',
  'custom.way.shelf.would-change': 'Tell us if hot food was kept in it.',
} satisfies Section;
