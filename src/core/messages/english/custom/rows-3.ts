import type { Section } from '../../model/message.ts';

/** Rows of the customs by their text id: why, what would change it, what is asked. */
export const rowsThree = {
  'custom.row.sink-broken.reason':
    'A crack or pore holds what no scrubbing reaches, so a basin is used after it.',
  'custom.row.top-worn.reason':
    'Old, scratched or porous tops hold food: pour, then cover with thick plastic.',
  'custom.row.sink-unseen.reason': 'Its condition is not known.',
  'custom.row.sink-unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.sink-unseen.why':
    'A smooth surface is purged by the pour alone; a worn one is covered after it.',
  'custom.row.sink-unseen.until-then':
    'Clean it, or pour where the method says so, then put a rack in each bowl.',
  'custom.row.unseen.reason': 'Its condition is not known.',
  'custom.row.unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.unseen.why':
    'A smooth surface is purged by the pour alone; a worn one is covered after it.',
  'custom.row.unseen.until-then': 'Clean it, or pour where the method says so, then cover.',
  'custom.row.shelf-worn.reason': 'Worn or porous shelves hold crumbs, so they are lined.',
  'custom.row.shelf-unseen.reason': 'Their condition is not known.',
  'custom.row.shelf-unseen.ask': 'Are the shelves smooth and sealed?',
  'custom.row.shelf-unseen.why': 'Smooth shelves are only cleaned; worn ones are lined.',
  'custom.row.shelf-unseen.until-then': 'Clean and line them.',
  'custom.row.sink-clay.sephardic.reason':
    'Glazed clay is judged as earthenware by many, which is not purged; enamel is asked about.',
  'custom.row.sink-clay.sephardic.would-change': 'Your rabbi’s word.',
  'custom.row.sink-clay.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.row.sink-clay.sephardic.why':
    'Many pour three times over porcelain and enamel; others do not purge it at all.',
  'custom.row.sink-clay.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-clay.sephardic.answer-1': 'Pour three times, no basin.',
  'custom.row.sink-clay.sephardic.answer-2': 'Not purged: use a basin on a rack.',
  'custom.row.sink-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.row.sink-glass.sephardic.would-change': 'A crack or chip.',
  'custom.row.sink-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.sephardic.would-change': 'Your rabbi’s word.',
  'custom.row.sink-made.sephardic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.sephardic.why': 'The codes do not name it and later authorities differ.',
  'custom.row.sink-made.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-made.sephardic.answer-1': 'Pour; no basin is needed.',
  'custom.row.sink-made.sephardic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.row.sink-made.sephardic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.row.sink-unknown.sephardic.reason':
    'Of what the sink is made is not known, so it is poured and then used with a basin.',
  'custom.row.sink-unknown.sephardic.would-change': 'Knowing the material.',
  'custom.row.sink-unknown.sephardic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.sephardic.why':
    'Metal is purged by pouring; clay and made materials are asked about.',
  'custom.row.sink-unknown.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.top-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.row.top-glass.sephardic.would-change': 'A crack or chip.',
  'custom.row.top-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.top-made.sephardic.would-change': 'Your rabbi’s word.',
  'custom.row.top-made.sephardic.ask':
    'May this counter be purged by pouring, and is a cover needed after it?',
  'custom.row.top-made.sephardic.why':
    'The codes do not name this material and later authorities differ.',
  'custom.row.top-made.sephardic.until-then': 'Pour, then cover.',
  'custom.row.top-made.sephardic.answer-1': 'Pour; no cover is needed.',
  'custom.row.top-made.sephardic.answer-2': 'Pour, then cover.',
  'custom.row.top-made.sephardic.answer-3': 'Cover it without pouring.',
  'custom.row.counter-wood.sephardic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first.',
  'custom.row.counter-wood.sephardic.would-change': 'Cuts that cannot be sanded out.',
  'custom.row.counter-unknown.sephardic.reason':
    'Of what the counter is made is not known, so it is poured and then covered.',
  'custom.row.counter-unknown.sephardic.would-change': 'Knowing the material.',
  'custom.row.counter-unknown.sephardic.ask': 'Of what is this counter made?',
  'custom.row.counter-unknown.sephardic.why':
    'Stone and metal are purged by pouring; made materials are asked about.',
  'custom.row.counter-unknown.sephardic.until-then': 'Pour, then cover.',
  'custom.row.burner-glass.sephardic.reason':
    'Food burned on the zone over fire, so the zone is heated until it glows.',
  'custom.row.burner-glass.sephardic.would-change': 'Your rabbi’s number of minutes.',
  'custom.row.burner-glass.sephardic.note':
    'The glass between the zones is not purged: let no pot or hot food touch it.',
  'custom.row.burner-gas.sephardic.reason':
    'Food burned on the grate over fire without liquid, so the grate is purged by full flame until it glows where the flame reaches.',
  'custom.row.burner-gas.sephardic.would-change':
    'Your rabbi’s number of minutes, or grates that go through a self-clean cycle.',
  'custom.row.burner-gas.sephardic.note':
    'Grates and heads: full flame, glowing where the flame reaches.',
  'custom.row.oven-plain.sephardic.reason':
    'It has no self-clean cycle that burns out (a steam or catalytic clean is not a purge), so it is heated at its highest setting.',
  'custom.row.oven-plain.sephardic.would-change': 'Your rabbi’s number of hours.',
  'custom.row.oven-plain.sephardic.ask': 'How long at the highest setting: one hour or two?',
  'custom.row.oven-plain.sephardic.why': 'Views run from one hour to two.',
  'custom.row.oven-plain.sephardic.until-then': 'Heat it at the highest setting for two hours.',
  'custom.row.oven-plain.sephardic.answer-1': 'One hour.',
  'custom.row.oven-plain.sephardic.answer-2': 'Two hours.',
} satisfies Section;
