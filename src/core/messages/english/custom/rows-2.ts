import type { Section } from '../../model/message.ts';

/** Rows of the customs by their text id: why, what would change it, what is asked. */
export const rowsTwo = {
  'custom.row.burner-induction.reason':
    'Induction heats the pot and not itself: it never glows, and its glass took in what boiled over.',
  'custom.row.burner-induction.would-change': 'Your rabbi’s word.',
  'custom.row.burner-induction.ask': 'How may an induction hob be purged?',
  'custom.row.burner-induction.why':
    'It gives no glow. Some pour on the cooled glass where its maker allows it, some cover the zones.',
  'custom.row.burner-induction.until-then': 'Clean it and keep it out of use.',
  'custom.row.burner-induction.answer-1': 'Pour on the cooled glass, where its maker allows it.',
  'custom.row.burner-induction.answer-2': 'Clean it and cover the zones.',
  'custom.row.burner-induction.answer-3': 'It stays out of use.',
  'custom.row.burner-glass.ashkenazic.reason':
    'Food burned on the zone over fire, so the zone is heated until it glows.',
  'custom.row.burner-glass.ashkenazic.would-change': 'Your rabbi’s number of minutes.',
  'custom.row.burner-glass.ashkenazic.note':
    'The glass between the zones is not purged: let no pot or hot food touch it, and put a clean pot rest under whatever is taken off.',
  'custom.row.burner-glass.ashkenazic.ask': 'How is the glass between the zones to be treated?',
  'custom.row.burner-glass.ashkenazic.why':
    'The zones glow, and the glass between them stays cooler. Some cover it while the hob is cold, some keep everything off it.',
  'custom.row.burner-glass.ashkenazic.until-then':
    'Let no pot, spoon or food touch the glass between the zones.',
  'custom.row.burner-glass.ashkenazic.answer-1': 'Keep everything off the glass between the zones.',
  'custom.row.burner-glass.ashkenazic.answer-2': 'Cover that glass while the hob is cold.',
  'custom.row.burner-gas.ashkenazic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.row.burner-gas.ashkenazic.would-change':
    'Your rabbi’s number of minutes, or grates that go through a self-clean cycle.',
  'custom.row.burner-gas.ashkenazic.note':
    'Grates and heads: full flame, glowing where the flame reaches. Many lay a metal sheet over the burners to spread the heat: only on a metal range whose maker allows it.',
  'custom.row.burner-fire.reason':
    'Food burned on the element over fire without liquid, so the element is heated until it glows.',
  'custom.row.burner-fire.would-change': 'Your rabbi’s number of minutes: some say 5 to 15.',
  'custom.row.oven-pyrolytic.reason':
    'Food burned on its walls without liquid; the full self-clean cycle burns them out.',
  'custom.row.oven-pyrolytic.would-change':
    'A cycle cut short, or a maker’s manual that forbids it.',
  'custom.row.oven-pyrolytic.note': 'Racks go in only if the manual lets them stay.',
  'custom.row.oven-plain.ashkenazic.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge), so it is heated at its highest setting.',
  'custom.row.oven-plain.ashkenazic.would-change': 'Your rabbi’s number of hours.',
  'custom.row.oven-plain.ashkenazic.ask':
    'How long at the highest setting, and does your custom accept it without a glow?',
  'custom.row.oven-plain.ashkenazic.why':
    'Views run from one hour to two, and some want a glow or an insert.',
  'custom.row.oven-plain.ashkenazic.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.row.oven-plain.ashkenazic.answer-1': 'One hour is accepted.',
  'custom.row.oven-plain.ashkenazic.answer-2': 'Two hours are accepted.',
  'custom.row.oven-plain.ashkenazic.answer-3': 'It must glow.',
  'custom.row.oven-plain.ashkenazic.answer-4': 'Two hours, and an insert for the food.',
  'custom.row.hood.reason': 'Only steam and grease reach it, and no food is cooked in it.',
  'custom.row.hood.would-change': 'Food that dripped back from it into pots.',
  'custom.row.hood.note': 'Do not use it with the filters out.',
  'custom.row.microwave.reason':
    'It absorbed by steam, so steam of boiling water inside purges it.',
  'custom.row.microwave.would-change':
    'A crack in the lining, a browning element, or your rabbi’s number of minutes.',
  'custom.row.microwave.ask': 'May the microwave be purged by steam, and for how many minutes?',
  'custom.row.microwave.why':
    'Views run from 10 to 20 minutes, and some want its glass plate replaced.',
  'custom.row.microwave.until-then': 'Steam it for 20 minutes and keep the glass plate out of use.',
  'custom.row.microwave.answer-1': 'Steam for 10 minutes.',
  'custom.row.microwave.answer-2': 'Steam for 20 minutes, with another glass plate.',
  'custom.row.dishwasher.reason':
    'Hot water with food in it runs over the tub, the racks and the pump, and views differ whether a cycle purges them.',
  'custom.row.dishwasher.would-change': 'Your rabbi’s word.',
  'custom.row.dishwasher.ask': 'May this dishwasher be purged, and by which cycle?',
  'custom.row.dishwasher.why':
    'Metal tubs are judged otherwise than plastic ones, and the racks and the filter are asked about apart.',
  'custom.row.dishwasher.until-then': 'Clean it and keep it out of use.',
  'custom.row.dishwasher.answer-1': 'Clean it, and run it empty at its hottest.',
  'custom.row.dishwasher.answer-2': 'Clean it only.',
  'custom.row.dishwasher.answer-3': 'It stays out of use.',
  'custom.row.warming-drawer.reason':
    'It does not reach a purging heat, so it is cleaned and lined.',
  'custom.row.warming-drawer.would-change': 'A drawer that reaches oven heat, by its manual.',
  'custom.row.warming-drawer.ask': 'May the warming drawer be purged, and how?',
  'custom.row.warming-drawer.why': 'It warms covered food and seldom reaches a purging heat.',
  'custom.row.warming-drawer.until-then': 'Line it, and put only covered food in it.',
  'custom.row.warming-drawer.answer-1': 'Heat it at its highest setting.',
  'custom.row.warming-drawer.answer-2': 'Line it.',
  'custom.row.cold-passover.reason':
    'It was used cold only: cleaning is enough, and many line the shelves for Passover.',
  'custom.row.cold-passover.would-change': 'A household that does not line.',
  'custom.row.cold.reason': 'It was used cold only, so thorough cleaning and a rinse are enough.',
  'custom.row.cold.would-change': 'Hot pots put down in it.',
  'custom.row.shelf-raw.reason':
    'Raw wood holds crumbs and damp, so it is cleaned and lined; it was not used hot.',
  'custom.row.shelf-raw.would-change': 'Shelves sealed with paint or varnish.',
  'custom.row.shelf-unknown.reason':
    'Of what the shelves are made is not known, so they are cleaned and lined.',
  'custom.row.shelf-unknown.would-change': 'Knowing the material.',
  'custom.row.shelf-unknown.ask': 'Of what are these shelves made?',
  'custom.row.shelf-unknown.why': 'Raw wood holds crumbs; sealed shelves are only cleaned.',
  'custom.row.shelf-unknown.until-then': 'Clean and line them.',
  'custom.row.shelf.reason': 'It was used cold only, so thorough cleaning is enough.',
  'custom.row.shelf.would-change': 'Hot pots put down in it.',
  'custom.row.sink-wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but used with a basin.',
  'custom.row.wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but covered.',
  'custom.row.wood-scratched.reason': 'Cuts that cannot be sanded out hold food: pour, then cover.',
  'custom.row.sink-scratched.reason': 'Scratches are scrubbed open first.',
  'custom.row.sink-scratched.ask':
    'Are the scratches of the sink so deep that food stays in them after scrubbing?',
  'custom.row.sink-scratched.why':
    'Fine scratches are usual in steel and are purged with it; deep ones hold food.',
  'custom.row.sink-scratched.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-scratched.answer-1': 'They are fine: the pour is enough.',
  'custom.row.sink-scratched.answer-2': 'They are deep: a rack in each bowl after the pour.',
} satisfies Section;
