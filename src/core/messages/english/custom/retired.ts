import type { Section } from '../../model/message.ts';

/**
 * Sentences that no plan is made with any more and that journals of older runs
 * still name: a record is told in the words it was written in.
 */
export const retired = {
  'custom.row.sink-metal-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-metal-passover.ask':
    'Is a rack or basin needed in the sink for Passover after the pour?',
  'custom.row.sink-metal-passover.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-metal.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-clay.ashkenazic.reason':
    'Porcelain, glazed clay and enamel are judged as earthenware, which is not purged: clean it, line it, and use a basin on a rack.',
  'custom.row.sink-glass.ashkenazic.reason':
    'By this custom glass is judged as earthenware, which is not purged.',
  'custom.row.sink-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.ashkenazic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.sink-wood.reason': 'Wood is purged by the way it was used.',
  'custom.row.sink-unknown.ashkenazic.reason':
    'Of what the sink is made is not known, so it is used with a basin.',
  'custom.row.sink-unknown.ashkenazic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.top-stone-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.top-stone-passover.ask': 'Is the counter to be covered for Passover after the pour?',
  'custom.row.top-stone-passover.until-then': 'Pour, then cover.',
  'custom.row.top-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.top-glass.ashkenazic.reason':
    'By this custom glass is judged as earthenware, which is not purged.',
  'custom.row.top-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ; the custom is to cover.',
  'custom.row.top-tile.reason': 'The joints between tiles hold food that no pour reaches.',
  'custom.row.counter-wood.ashkenazic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first, and many cover after it.',
  'custom.row.top-raw.reason': 'Raw wood drinks water and holds food.',
  'custom.row.counter-unknown.ashkenazic.reason':
    'Of what the counter is made is not known, so it is covered.',
  'custom.row.counter-unknown.ashkenazic.ask': 'Of what is this counter made?',
  'custom.row.counter-unknown.ashkenazic.until-then': 'Cover it.',
  'custom.row.table-pour.reason':
    'Hot food stood and spilled on it: smooth wood, stone or metal is purged by pouring.',
  'custom.row.table-other.reason':
    'This material is not purged with confidence, and a table is easily covered.',
  'custom.row.table-unknown.reason':
    'Of what the table is made is not known, and a table is easily covered.',
  'custom.row.table-unknown.ask': 'Of what is this table made?',
  'custom.row.table-unknown.until-then': 'Cover it.',
  'custom.row.burner-induction.reason':
    'Induction heats the pot and not itself: it never glows, and its glass took in what boiled over.',
  'custom.row.burner-induction.ask': 'How may an induction hob be purged?',
  'custom.row.burner-induction.until-then': 'Clean it and keep it out of use.',
  'custom.row.burner-glass.ashkenazic.reason':
    'Food burned on the zone over fire, so the zone is heated until it glows.',
  'custom.row.burner-glass.ashkenazic.ask': 'How is the glass between the zones to be treated?',
  'custom.row.burner-glass.ashkenazic.until-then':
    'Let no pot, spoon or food touch the glass between the zones.',
  'custom.row.burner-gas.ashkenazic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.row.burner-fire.reason':
    'Food burned on the element over fire without liquid, so the element is heated until it glows.',
  'custom.row.oven-pyrolytic.reason':
    'Food burned on its walls without liquid; the full self-clean cycle burns them out.',
  'custom.row.oven-plain.ashkenazic.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge), so it is heated at its highest setting.',
  'custom.row.oven-plain.ashkenazic.ask':
    'How long at the highest setting, and does your custom accept it without a glow?',
  'custom.row.oven-plain.ashkenazic.until-then':
    'Heat it at the highest setting for two hours, and put food in it only covered or on an insert.',
  'custom.row.hood.reason': 'Only steam and grease reach it, and no food is cooked in it.',
  'custom.row.microwave.reason':
    'It absorbed by steam, so steam of boiling water inside purges it.',
  'custom.row.microwave.ask': 'May the microwave be purged by steam, and for how many minutes?',
  'custom.row.microwave.until-then': 'Steam it for 20 minutes and keep the glass plate out of use.',
  'custom.row.dishwasher.reason':
    'Hot water with food in it runs over the tub, the racks and the pump, and views differ whether a cycle purges them.',
  'custom.row.dishwasher.ask': 'May this dishwasher be purged, and by which cycle?',
  'custom.row.dishwasher.until-then': 'Clean it and keep it out of use.',
  'custom.row.warming-drawer.reason':
    'It does not reach a purging heat, so it is cleaned and lined.',
  'custom.row.warming-drawer.ask': 'May the warming drawer be purged, and how?',
  'custom.row.warming-drawer.until-then': 'Line it, and put only covered food in it.',
  'custom.row.cold-passover.reason':
    'It was used cold only: cleaning is enough, and many line the shelves for Passover.',
  'custom.row.cold.reason': 'It was used cold only, so thorough cleaning and a rinse are enough.',
  'custom.row.shelf-raw.reason':
    'Raw wood holds crumbs and damp, so it is cleaned and lined; it was not used hot.',
  'custom.row.shelf-unknown.reason':
    'Of what the shelves are made is not known, so they are cleaned and lined.',
  'custom.row.shelf-unknown.ask': 'Of what are these shelves made?',
  'custom.row.shelf-unknown.until-then': 'Clean and line them.',
  'custom.row.shelf.reason': 'It was used cold only, so thorough cleaning is enough.',
  'custom.row.sink-wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but used with a basin.',
  'custom.row.wood-open.reason':
    'Cracks and open grain hold what neither sanding nor water reaches, so it is not poured but covered.',
  'custom.row.wood-scratched.reason': 'Cuts that cannot be sanded out hold food: pour, then cover.',
  'custom.row.sink-scratched.reason': 'Scratches are scrubbed open first.',
  'custom.row.sink-scratched.ask':
    'Are the scratches of the sink so deep that food stays in them after scrubbing?',
  'custom.row.sink-scratched.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-broken.reason':
    'A crack or pore holds what no scrubbing reaches, so a basin is used after it.',
  'custom.row.top-worn.reason':
    'Old, scratched or porous tops hold food: pour, then cover with thick plastic.',
  'custom.row.sink-unseen.reason': 'Its condition is not known.',
  'custom.row.sink-unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.sink-unseen.until-then':
    'Clean it, or pour where the method says so, then put a rack in each bowl.',
  'custom.row.unseen.reason': 'Its condition is not known.',
  'custom.row.unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.unseen.until-then': 'Clean it, or pour where the method says so, then cover.',
  'custom.row.shelf-worn.reason': 'Worn or porous shelves hold crumbs, so they are lined.',
  'custom.row.shelf-unseen.reason': 'Their condition is not known.',
  'custom.row.shelf-unseen.ask': 'Are the shelves smooth and sealed?',
  'custom.row.shelf-unseen.until-then': 'Clean and line them.',
  'custom.row.sink-clay.sephardic.reason':
    'Glazed clay is judged as earthenware by many, which is not purged; enamel is asked about.',
  'custom.row.sink-clay.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.row.sink-clay.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.row.sink-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.sephardic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-unknown.sephardic.reason':
    'Of what the sink is made is not known, so it is poured and then used with a basin.',
  'custom.row.sink-unknown.sephardic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.top-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.row.top-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.top-made.sephardic.ask':
    'May this counter be purged by pouring, and is a cover needed after it?',
  'custom.row.top-made.sephardic.until-then': 'Pour, then cover.',
  'custom.row.counter-wood.sephardic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first.',
  'custom.row.counter-unknown.sephardic.reason':
    'Of what the counter is made is not known, so it is poured and then covered.',
  'custom.row.counter-unknown.sephardic.ask': 'Of what is this counter made?',
  'custom.row.counter-unknown.sephardic.until-then': 'Pour, then cover.',
  'custom.row.burner-glass.sephardic.reason':
    'Food burned on the zone over fire, so the zone is heated until it glows.',
  'custom.row.burner-gas.sephardic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.row.oven-plain.sephardic.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge), so it is heated at its highest setting.',
  'custom.row.oven-plain.sephardic.ask': 'How long at the highest setting: one hour or two?',
  'custom.row.oven-plain.sephardic.until-then': 'Heat it at the highest setting for two hours.',
  'sources.oc-451-3-8': 'Shulchan Aruch, Orach Chaim 451:3-8',
} satisfies Section;
