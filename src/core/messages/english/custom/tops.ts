import type { Section } from '../../model/message.ts';

/** Rows of the customs for counters and tables: why, what may change it, what is asked. */
export const tops = {
  'custom.way.top-stone-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.way.top-stone-passover.would-change': 'Your custom may not cover: ask.',
  'custom.way.top-stone-passover.ask': 'Is the counter to be covered for Passover after the pour?',
  'custom.way.top-stone-passover.why': 'Many cover for Passover even what was purged.',
  'custom.way.top-stone-passover.until-then': 'Pour, then cover.',
  'custom.way.top-stone-passover.answer-1': 'The pour is enough.',
  'custom.way.top-stone-passover.answer-2': 'Pour, then cover.',
  'custom.way.top-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.way.top-stone.would-change': 'Tell us if it is cracked or soaks up water.',
  'custom.way.top-glass.ashkenazic.reason': 'By this custom glass is not purged.',
  'custom.way.top-glass.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-clay.ashkenazic.reason':
    'Porcelain and glazed clay are judged as earthenware, which is not purged.',
  'custom.way.top-clay.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-enamel.ashkenazic.reason': 'What is enamelled is not purged by this custom.',
  'custom.way.top-enamel.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ; the custom is to cover.',
  'custom.way.top-made.ashkenazic.would-change':
    'Your rabbi may have it poured first: only where the maker lets it bear boiling water.',
  'custom.way.top-tile.reason':
    'The joints between tiles hold food that no pour reaches, and glazed tiles are judged as clay.',
  'custom.way.top-tile.would-change': 'Your rabbi’s word may change it.',
  'custom.way.counter-wood.ashkenazic.reason':
    'Smooth wood is purged by boiling water, as it was used; sand out every cut first, and many cover after it.',
  'custom.way.counter-wood.ashkenazic.would-change':
    'Tell us if cuts are left after sanding, if it is varnished, or if dough was kneaded on it.',
  'custom.way.counter-wood.sephardic.reason':
    'Smooth wood is purged by boiling water, as it was used; sand out every cut first.',
  'custom.way.counter-wood.sephardic.would-change':
    'Tell us if cuts are left after sanding, or if it is varnished.',
  'custom.way.top-raw.reason':
    'Raw wood soaks up water and holds food in its pores, which water does not purge.',
  'custom.way.top-raw.would-change': 'A smooth top that is not varnished is poured.',
  'custom.way.counter-unknown.ashkenazic.reason':
    'Of what the counter is made is not known, so it is covered.',
  'custom.way.counter-unknown.ashkenazic.would-change': 'Tell us what it is made of.',
  'custom.way.counter-unknown.ashkenazic.ask': 'Of what is this counter made?',
  'custom.way.counter-unknown.ashkenazic.why':
    'Stone and metal are purged by pouring; the rest is covered.',
  'custom.way.counter-unknown.ashkenazic.until-then': 'Cover it.',
  'custom.way.counter-unknown.sephardic.reason':
    'Of what the counter is made is not known, so it is poured and then covered.',
  'custom.way.counter-unknown.sephardic.would-change': 'Tell us what it is made of.',
  'custom.way.counter-unknown.sephardic.ask': 'Of what is this counter made?',
  'custom.way.counter-unknown.sephardic.why':
    'Stone and metal are purged by pouring; made materials are asked about.',
  'custom.way.counter-unknown.sephardic.until-then': 'Pour, then cover.',
  'custom.way.table-wood.reason':
    'Soup spills on a table: smooth wood is purged by pouring. Sand out every cut first; many cover after it.',
  'custom.way.table-wood.would-change':
    'Tell us if cuts are left after sanding, if it is varnished, or if dough was kneaded on it.',
  'custom.way.table-pour.reason': 'Soup spills on a table: what is smooth is purged by pouring.',
  'custom.way.table-pour.would-change':
    'Tell us if it is cut, cracked or varnished, or if a leaf of it opens.',
  'custom.way.table-other.reason':
    'The codes do not name this material, and a table is easily covered.',
  'custom.way.table-other.would-change': 'Your rabbi may have it poured.',
  'custom.way.table-unknown.reason':
    'Of what the table is made is not known, and a table is easily covered.',
  'custom.way.table-unknown.would-change': 'Tell us what it is made of.',
  'custom.way.table-unknown.ask': 'Of what is this table made?',
  'custom.way.table-unknown.why': 'Smooth wood, stone and metal are purged by pouring.',
  'custom.way.table-unknown.until-then': 'Cover it.',
  'custom.way.top-clay.sephardic.reason':
    'Glazed clay is judged as earthenware, which is not purged; later authorities of this custom pour three times.',
  'custom.way.top-clay.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-clay.sephardic.ask':
    'May this be purged by pouring three times, or is a cover needed?',
  'custom.way.top-clay.sephardic.why':
    'The code does not purge glazed clay; many pour three times.',
  'custom.way.top-clay.sephardic.until-then': 'Pour once, then cover.',
  'custom.way.top-clay.sephardic.answer-1': 'Pour three times; no cover is needed.',
  'custom.way.top-clay.sephardic.answer-2': 'Not purged: cover it.',
  'custom.way.top-enamel.sephardic.reason':
    'Enamel is asked about: some judge it as metal, some as glass, some do not purge it.',
  'custom.way.top-enamel.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-enamel.sephardic.ask':
    'May this be purged by pouring three times, or is a cover needed?',
  'custom.way.top-enamel.sephardic.why':
    'Many pour three times over enamel; others do not purge it at all.',
  'custom.way.top-enamel.sephardic.until-then': 'Pour once, then cover.',
  'custom.way.top-enamel.sephardic.answer-1': 'Pour three times; no cover is needed.',
  'custom.way.top-enamel.sephardic.answer-2': 'Not purged: cover it.',
  'custom.way.top-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.way.top-glass.sephardic.would-change': 'Tell us if it is cracked or chipped.',
  'custom.way.top-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.way.top-made.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.top-made.sephardic.ask':
    'May this counter be purged by pouring, and is a cover needed after it?',
  'custom.way.top-made.sephardic.why':
    'The codes do not name this material and later authorities differ.',
  'custom.way.top-made.sephardic.until-then': 'Pour, then cover.',
  'custom.way.top-made.sephardic.answer-1': 'Pour; no cover is needed.',
  'custom.way.top-made.sephardic.answer-2': 'Pour, then cover.',
  'custom.way.top-made.sephardic.answer-3': 'Cover it without pouring.',
} satisfies Section;
