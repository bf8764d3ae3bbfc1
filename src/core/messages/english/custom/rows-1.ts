import type { Section } from '../../model/message.ts';

/** Rows of the customs by their text id: why, what would change it, what is asked. */
export const rowsOne = {
  'custom.row.sink-metal-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-metal-passover.would-change':
    'A household whose custom adds nothing to the pour.',
  'custom.row.sink-metal-passover.ask':
    'Is a rack or basin needed in the sink for Passover after the pour?',
  'custom.row.sink-metal-passover.why': 'Some add one for Passover; others rely on the pour.',
  'custom.row.sink-metal-passover.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-metal-passover.answer-1': 'The pour is enough.',
  'custom.row.sink-metal-passover.answer-2': 'Pour, then a rack or basin.',
  'custom.row.sink-metal.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-metal.would-change': 'Deep scratches or a crack.',
  'custom.row.sink-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.sink-stone.would-change': 'A crack, or a stone that drinks water.',
  'custom.row.sink-clay.ashkenazic.reason':
    'Porcelain, glazed clay and enamel are judged as earthenware, which is not purged: clean it, line it, and use a basin on a rack.',
  'custom.row.sink-clay.ashkenazic.would-change': 'Your rabbi’s word.',
  'custom.row.sink-glass.ashkenazic.reason':
    'By this custom glass is judged as earthenware, which is not purged.',
  'custom.row.sink-glass.ashkenazic.would-change': 'Your rabbi’s word.',
  'custom.row.sink-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ.',
  'custom.row.sink-made.ashkenazic.would-change': 'Your rabbi’s word.',
  'custom.row.sink-made.ashkenazic.ask': 'May a sink of this material be purged by pouring?',
  'custom.row.sink-made.ashkenazic.why': 'The codes do not name it and later authorities differ.',
  'custom.row.sink-made.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.sink-made.ashkenazic.answer-1': 'Pour; no basin is needed.',
  'custom.row.sink-made.ashkenazic.answer-2': 'Pour, and a basin on a rack after it.',
  'custom.row.sink-made.ashkenazic.answer-3': 'Not purged: use a basin on a rack.',
  'custom.row.sink-wood.reason': 'Wood is purged by the way it was used.',
  'custom.row.sink-wood.would-change': 'Cuts and open grain.',
  'custom.row.sink-unknown.ashkenazic.reason':
    'Of what the sink is made is not known, so it is used with a basin.',
  'custom.row.sink-unknown.ashkenazic.would-change': 'Knowing the material.',
  'custom.row.sink-unknown.ashkenazic.ask': 'Of what is this sink made?',
  'custom.row.sink-unknown.ashkenazic.why': 'Metal is purged by pouring; clay is not purged.',
  'custom.row.sink-unknown.ashkenazic.until-then': 'Use it with a basin on a rack.',
  'custom.row.top-stone-passover.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.top-stone-passover.would-change': 'A household whose custom does not cover.',
  'custom.row.top-stone-passover.ask': 'Is the counter to be covered for Passover after the pour?',
  'custom.row.top-stone-passover.why': 'Many cover for Passover even what was purged.',
  'custom.row.top-stone-passover.until-then': 'Pour, then cover.',
  'custom.row.top-stone-passover.answer-1': 'The pour is enough.',
  'custom.row.top-stone-passover.answer-2': 'Pour, then cover.',
  'custom.row.top-stone.reason':
    'Hot food and liquid were poured or spilled on it, so boiling water poured over every spot purges it.',
  'custom.row.top-stone.would-change': 'A crack, or a stone that drinks water.',
  'custom.row.top-glass.ashkenazic.reason':
    'By this custom glass is judged as earthenware, which is not purged.',
  'custom.row.top-glass.ashkenazic.would-change': 'Your rabbi’s word.',
  'custom.row.top-made.ashkenazic.reason':
    'The codes do not name this material and later authorities differ; the custom is to cover.',
  'custom.row.top-made.ashkenazic.would-change':
    'Your rabbi’s word that it is poured first: only where the maker lets it bear boiling water.',
  'custom.row.top-tile.reason': 'The joints between tiles hold food that no pour reaches.',
  'custom.row.top-tile.would-change': 'New joints.',
  'custom.row.counter-wood.ashkenazic.reason':
    'Smooth wood is purged by the way it was used; sand out every cut first, and many cover after it.',
  'custom.row.counter-wood.ashkenazic.would-change': 'Cuts that cannot be sanded out.',
  'custom.row.top-raw.reason': 'Raw wood drinks water and holds food.',
  'custom.row.top-raw.would-change': 'A smooth and sealed top.',
  'custom.row.counter-unknown.ashkenazic.reason':
    'Of what the counter is made is not known, so it is covered.',
  'custom.row.counter-unknown.ashkenazic.would-change': 'Knowing the material.',
  'custom.row.counter-unknown.ashkenazic.ask': 'Of what is this counter made?',
  'custom.row.counter-unknown.ashkenazic.why':
    'Stone and metal are purged by pouring; the rest is covered.',
  'custom.row.counter-unknown.ashkenazic.until-then': 'Cover it.',
  'custom.row.table-pour.reason':
    'Hot food stood and spilled on it: smooth wood, stone or metal is purged by pouring.',
  'custom.row.table-pour.would-change': 'Cuts, joints or a leaf that opens.',
  'custom.row.table-other.reason':
    'This material is not purged with confidence, and a table is easily covered.',
  'custom.row.table-other.would-change': 'Your rabbi’s word that it may be poured.',
  'custom.row.table-unknown.reason':
    'Of what the table is made is not known, and a table is easily covered.',
  'custom.row.table-unknown.would-change': 'Knowing the material.',
  'custom.row.table-unknown.ask': 'Of what is this table made?',
  'custom.row.table-unknown.why': 'Smooth wood, stone and metal are purged by pouring.',
  'custom.row.table-unknown.until-then': 'Cover it.',
} satisfies Section;
