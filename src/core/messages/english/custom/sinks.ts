import type { Section } from '../../model/message.ts';

/** Rows of the customs for sinks: why, what may change it, what is asked. */
export const sinks = {
  'custom.row.sink-metal-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-metal-passover.would-change': 'Your custom may add nothing to the pour: ask.',
  'custom.row.sink-metal-passover.ask':
    'Is a rack or basin needed in the sink for Passover after the pour?',
  'custom.row.sink-metal-passover.why': 'Some add one for Passover; others rely on the pour.',
  'custom.row.sink-metal-passover.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-metal-passover.answer-1': 'The pour is enough.',
  'custom.row.sink-metal-passover.answer-2': 'Pour, then a rack or basin.',
  'custom.row.sink-metal.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-metal.would-change': 'Tell us if it is cracked or deeply scratched.',
  'custom.row.sink-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-stone.would-change': 'Tell us if it is cracked or soaks up water.',
  'custom.row.sink-clay.ashkenazic.reason':
    'Porcelain and glazed clay are judged as earthenware, which is not purged: clean it, line it, and use a basin on a rack.',
  'custom.row.sink-clay.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-enamel.ashkenazic.reason':
    'What is enamelled inside is not purged by this custom: clean it, line it, and use a basin on a rack.',
  'custom.row.sink-enamel.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-glass.ashkenazic.reason': 'By this custom glass is not purged.',
  'custom.row.sink-glass.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-made.ashkenazic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.ashkenazic.why': 'The codes do not name it and later authorities differ.',
  'custom.row.sink-made.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.sink-made.ashkenazic.answer-1': 'Pour; no basin is needed.',
  'custom.row.sink-made.ashkenazic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.row.sink-made.ashkenazic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.row.sink-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-made.sephardic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.sephardic.why': 'The codes do not name it and later authorities differ.',
  'custom.row.sink-made.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-made.sephardic.answer-1': 'Pour; no basin is needed.',
  'custom.row.sink-made.sephardic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.row.sink-made.sephardic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.row.sink-wood.reason':
    'Smooth wood is purged by boiling water, as it was used; a basin stands in it after that.',
  'custom.row.sink-wood.would-change': 'Tell us if it is cut, cracked or varnished.',
  'custom.row.sink-raw.reason':
    'Raw wood soaks up water and holds food in its pores, which water does not purge.',
  'custom.row.sink-raw.would-change': 'A smooth sink that is not varnished is poured.',
  'custom.row.sink-unknown.ashkenazic.reason':
    'Of what the sink is made is not known, so it is used with a basin.',
  'custom.row.sink-unknown.ashkenazic.would-change': 'Tell us what it is made of.',
  'custom.row.sink-unknown.ashkenazic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.ashkenazic.why': 'Metal is purged by pouring; clay is not purged.',
  'custom.row.sink-unknown.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.sink-unknown.sephardic.reason':
    'Of what the sink is made is not known, so it is poured and then used with a basin.',
  'custom.row.sink-unknown.sephardic.would-change': 'Tell us what it is made of.',
  'custom.row.sink-unknown.sephardic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.sephardic.why':
    'Metal is purged by pouring; clay and made materials are asked about.',
  'custom.row.sink-unknown.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.row.sink-clay.sephardic.reason':
    'Glazed clay is judged as earthenware, which is not purged; later authorities of this custom pour three times.',
  'custom.row.sink-clay.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-clay.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.row.sink-clay.sephardic.why':
    'The code does not purge glazed clay; many pour three times.',
  'custom.row.sink-clay.sephardic.until-then': 'Pour once, then use it with a basin on a rack.',
  'custom.row.sink-clay.sephardic.answer-1': 'Pour three times, no basin.',
  'custom.row.sink-clay.sephardic.answer-2': 'Not purged: use a basin on a rack.',
  'custom.row.sink-enamel.sephardic.reason':
    'Enamel is asked about: some judge it as metal, some as glass, some do not purge it.',
  'custom.row.sink-enamel.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.row.sink-enamel.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.row.sink-enamel.sephardic.why':
    'Many pour three times over enamel; others do not purge it at all.',
  'custom.row.sink-enamel.sephardic.until-then': 'Pour once, then use it with a basin on a rack.',
  'custom.row.sink-enamel.sephardic.answer-1': 'Pour three times, no basin.',
  'custom.row.sink-enamel.sephardic.answer-2': 'Not purged: use a basin on a rack.',
  'custom.row.sink-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.row.sink-glass.sephardic.would-change': 'Tell us if it is cracked or chipped.',
} satisfies Section;
