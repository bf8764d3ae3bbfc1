import type { Section } from '../../model/message.ts';

/** Rows of the customs for sinks: why, what may change it, what is asked. */
export const sinks = {
  'custom.way.sink-metal-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.way.sink-metal-passover.would-change': 'Your custom may add nothing to the pour: ask.',
  'custom.way.sink-metal-passover.ask':
    'Is a rack or basin needed in the sink for Passover after the pour?',
  'custom.way.sink-metal-passover.why': 'Some add one for Passover; others rely on the pour.',
  'custom.way.sink-metal-passover.until-then': 'Pour, then put a rack in each bowl.',
  'custom.way.sink-metal-passover.answer-1': 'The pour is enough.',
  'custom.way.sink-metal-passover.answer-2': 'Pour, then a rack or basin.',
  'custom.way.sink-metal.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.way.sink-metal.would-change': 'Tell us if it is cracked or deeply scratched.',
  'custom.way.sink-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.way.sink-stone.would-change': 'Tell us if it is cracked or soaks up water.',
  'custom.way.sink-clay.ashkenazic.reason':
    'Porcelain and glazed clay are judged as earthenware, which is not purged: clean it, line it, and use a basin on a rack.',
  'custom.way.sink-clay.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-enamel.ashkenazic.reason':
    'What is enamelled inside is not purged by this custom: clean it, line it, and use a basin on a rack.',
  'custom.way.sink-enamel.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-glass.ashkenazic.reason': 'By this custom glass is not purged.',
  'custom.way.sink-glass.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.way.sink-made.ashkenazic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-made.ashkenazic.ask': 'May a sink of this material be purged by pouring?',
  'custom.way.sink-made.ashkenazic.why': 'The codes do not name it and later authorities differ.',
  'custom.way.sink-made.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.way.sink-made.ashkenazic.answer-1': 'Pour; no basin is needed.',
  'custom.way.sink-made.ashkenazic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.way.sink-made.ashkenazic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.way.sink-made.sephardic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.way.sink-made.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-made.sephardic.ask': 'May a sink of this material be purged by pouring?',
  'custom.way.sink-made.sephardic.why': 'The codes do not name it and later authorities differ.',
  'custom.way.sink-made.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.way.sink-made.sephardic.answer-1': 'Pour; no basin is needed.',
  'custom.way.sink-made.sephardic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.way.sink-made.sephardic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.way.sink-wood.reason':
    'Smooth wood is purged by boiling water, as it was used; a basin stands in it after that.',
  'custom.way.sink-wood.would-change': 'Tell us if it is cut, cracked or varnished.',
  'custom.way.sink-raw.reason':
    'Raw wood soaks up water and holds food in its pores, which water does not purge.',
  'custom.way.sink-raw.would-change': 'A smooth sink that is not varnished is poured.',
  'custom.way.sink-unknown.ashkenazic.reason':
    'Of what the sink is made is not known, so it is used with a basin.',
  'custom.way.sink-unknown.ashkenazic.would-change': 'Tell us what it is made of.',
  'custom.way.sink-unknown.ashkenazic.ask': 'Of what is this sink made?',
  'custom.way.sink-unknown.ashkenazic.why': 'Metal is purged by pouring; clay is not purged.',
  'custom.way.sink-unknown.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.way.sink-unknown.sephardic.reason':
    'Of what the sink is made is not known, so it is poured and then used with a basin.',
  'custom.way.sink-unknown.sephardic.would-change': 'Tell us what it is made of.',
  'custom.way.sink-unknown.sephardic.ask': 'Of what is this sink made?',
  'custom.way.sink-unknown.sephardic.why':
    'Metal is purged by pouring; clay and made materials are asked about.',
  'custom.way.sink-unknown.sephardic.until-then': 'Pour, then use it with a basin on a rack.',
  'custom.way.sink-clay.sephardic.reason':
    'Glazed clay is judged as earthenware, which is not purged; later authorities of this custom pour three times.',
  'custom.way.sink-clay.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-clay.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.way.sink-clay.sephardic.why':
    'The code does not purge glazed clay; many pour three times.',
  'custom.way.sink-clay.sephardic.until-then': 'Pour once, then use it with a basin on a rack.',
  'custom.way.sink-clay.sephardic.answer-1': 'Pour three times, no basin.',
  'custom.way.sink-clay.sephardic.answer-2': 'Not purged: use a basin on a rack.',
  'custom.way.sink-enamel.sephardic.reason':
    'Enamel is asked about: some judge it as metal, some as glass, some do not purge it.',
  'custom.way.sink-enamel.sephardic.would-change': 'Your rabbi’s word may change it.',
  'custom.way.sink-enamel.sephardic.ask':
    'May this sink be purged by pouring three times, or is a basin needed?',
  'custom.way.sink-enamel.sephardic.why':
    'Many pour three times over enamel; others do not purge it at all.',
  'custom.way.sink-enamel.sephardic.until-then': 'Pour once, then use it with a basin on a rack.',
  'custom.way.sink-enamel.sephardic.answer-1': 'Pour three times, no basin.',
  'custom.way.sink-enamel.sephardic.answer-2': 'Not purged: use a basin on a rack.',
  'custom.way.sink-glass.sephardic.reason':
    'Glass does not absorb: rinsing is enough by this custom.',
  'custom.way.sink-glass.sephardic.would-change': 'Tell us if it is cracked or chipped.',
} satisfies Section;
