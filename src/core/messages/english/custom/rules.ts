import type { Section } from '../../model/message.ts';

/** What the state of a surface, or what it was used for, changes about the row of a fixture. */
export const rules = {
  'custom.row.wood-scratched.reason': 'Cuts that cannot be sanded out hold food: pour, then cover.',
  'custom.row.sink-scratched.reason': 'Scratches are scrubbed open first.',
  'custom.row.sink-scratched.ask':
    'Are the scratches of the sink so deep that food stays in them after scrubbing?',
  'custom.row.sink-scratched.why':
    'Fine scratches are usual in steel and are purged with it; deep ones hold food.',
  'custom.row.sink-scratched.until-then': 'Pour, then put a rack in each bowl.',
  'custom.row.sink-scratched.answer-1': 'They are fine: the pour is enough.',
  'custom.row.sink-scratched.answer-2': 'They are deep: a rack in each bowl after the pour.',
  'custom.row.sink-broken.reason':
    'A crack that cannot be cleaned out is not purged by water, so a basin is used.',
  'custom.row.sink-porous.reason':
    'What soaks up water holds what no scrubbing reaches, so a basin is used.',
  'custom.row.top-worn.reason':
    'Old and scratched tops hold food: pour, then cover with thick plastic.',
  'custom.row.top-broken.reason':
    'A crack that cannot be cleaned out is not purged by water, so it is covered and not poured.',
  'custom.row.top-porous.reason':
    'What soaks up water holds what no scrubbing reaches, so it is covered and not poured.',
  'custom.row.sink-unseen.reason': 'Its condition is not known.',
  'custom.row.sink-unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.sink-unseen.why':
    'A smooth surface is purged by the pour alone; a cracked one is not poured.',
  'custom.row.sink-unseen.until-then':
    'Clean it, or pour where the method says so, then put a rack in each bowl.',
  'custom.row.unseen.reason': 'Its condition is not known.',
  'custom.row.unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.row.unseen.why':
    'A smooth surface is purged by the pour alone; a cracked one is not poured.',
  'custom.row.unseen.until-then': 'Clean it, or pour where the method says so, then cover.',
  'custom.row.shelf-worn.reason': 'Worn or porous shelves hold crumbs, so they are lined.',
  'custom.row.shelf-unseen.reason': 'Their condition is not known.',
  'custom.row.shelf-unseen.ask': 'Are the shelves smooth and sealed?',
  'custom.row.shelf-unseen.why': 'Smooth shelves are only cleaned; worn ones are lined.',
  'custom.row.shelf-unseen.until-then': 'Clean and line them.',
  'custom.row.sink-varnished.reason':
    'Varnished wood is judged as clay, which is not purged: use a basin.',
  'custom.row.sink-varnished-unseen.reason': 'Whether it is varnished is not known.',
  'custom.row.sink-varnished-unseen.ask':
    'Is the wood varnished or lacquered? A drop of water stands on varnish and sinks into oiled wood.',
  'custom.row.sink-varnished-unseen.why': 'Varnished wood is judged as clay, which is not purged.',
  'custom.row.sink-varnished-unseen.until-then': 'Use it with a basin on a rack.',
  'custom.row.varnished.reason': 'Varnished wood is judged as clay, which is not purged: cover it.',
  'custom.row.varnished-unseen.reason': 'Whether it is varnished is not known.',
  'custom.row.varnished-unseen.ask':
    'Is the wood varnished or lacquered? A drop of water stands on varnish and sinks into oiled wood.',
  'custom.row.varnished-unseen.why': 'Varnished wood is judged as clay, which is not purged.',
  'custom.row.varnished-unseen.until-then': 'Cover it.',
  'custom.row.kneaded.reason':
    'Dough was kneaded on it: by custom it is not used in Passover even when purged, so it is covered.',
  'custom.row.kneaded-unseen.reason': 'Whether dough was kneaded on it is not known.',
  'custom.row.kneaded-unseen.ask': 'Was dough kneaded straight on it?',
  'custom.row.kneaded-unseen.why':
    'By custom boards for dough are not used in Passover even when purged.',
  'custom.row.kneaded-unseen.until-then': 'Cover it.',
  'custom.row.hot-food.reason': 'Hot food was laid straight on it.',
  'custom.row.hot-food.ask':
    'Hot food was laid straight on it. Is a hot stone needed while pouring?',
  'custom.row.hot-food.why':
    'A hot stone moved over the whole while it is poured makes it as if it stood on the fire. The pour alone serves after the fact.',
  'custom.row.hot-food.until-then': 'Pour, then cover.',
  'custom.row.hot-food.answer-1': 'Pour, with a hot stone moved over every spot.',
  'custom.row.hot-food.answer-2': 'The pour alone is enough.',
  'custom.row.hot-food.answer-3': 'Pour, then cover.',
  'custom.row.hot-food-unseen.reason': 'Whether hot food was laid straight on it is not known.',
  'custom.row.hot-food-unseen.ask':
    'Was hot food laid straight on it, without a plate or a trivet?',
  'custom.row.hot-food-unseen.why': 'What hot food lay on needs more than a pour.',
  'custom.row.hot-food-unseen.until-then': 'Pour, then cover.',
  'custom.row.shelf-hot.reason':
    'Hot food was kept in it: boiling water is poured over it, and it is lined.',
} satisfies Section;
