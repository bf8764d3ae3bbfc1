import type { Section } from '../../model/message.ts';

/** What the state of a surface, or what it was used for, changes about the row of a fixture. */
export const rules = {
  'custom.way.wood-scratched.reason': 'Cuts that cannot be sanded out hold food: pour, then cover.',
  'custom.way.sink-scratched.reason': 'Scratches are scrubbed open first.',
  'custom.way.sink-scratched.ask':
    'Are the scratches of the sink so deep that food stays in them after scrubbing?',
  'custom.way.sink-scratched.why':
    'Fine scratches are usual in steel and are purged with it; deep ones hold food.',
  'custom.way.sink-scratched.until-then': 'Pour, then put a rack in each bowl.',
  'custom.way.sink-scratched.answer-1': 'They are fine: the pour is enough.',
  'custom.way.sink-scratched.answer-2': 'They are deep: a rack in each bowl after the pour.',
  'custom.way.sink-broken.reason':
    'A crack that cannot be cleaned out is not purged by water, so a basin is used.',
  'custom.way.sink-porous.reason':
    'What soaks up water holds what no scrubbing reaches, so a basin is used.',
  'custom.way.top-worn.reason':
    'Old and scratched tops hold food: pour, then cover with thick plastic.',
  'custom.way.top-broken.reason':
    'A crack that cannot be cleaned out is not purged by water, so it is covered and not poured.',
  'custom.way.top-porous.reason':
    'What soaks up water holds what no scrubbing reaches, so it is covered and not poured.',
  'custom.way.sink-unseen.reason': 'Its condition is not known.',
  'custom.way.sink-unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.way.sink-unseen.why':
    'A smooth surface is purged by the pour alone; a cracked one is not poured.',
  'custom.way.sink-unseen.until-then':
    'Clean it, or pour where the method says so, then put a rack in each bowl.',
  'custom.way.unseen.reason': 'Its condition is not known.',
  'custom.way.unseen.ask':
    'Is it smooth, or scratched, cracked or porous? Draw a fingernail over it.',
  'custom.way.unseen.why':
    'A smooth surface is purged by the pour alone; a cracked one is not poured.',
  'custom.way.unseen.until-then': 'Clean it, or pour where the method says so, then cover.',
  'custom.way.shelf-worn.reason': 'Worn or porous shelves hold crumbs, so they are lined.',
  'custom.way.shelf-unseen.reason': 'Their condition is not known.',
  'custom.way.shelf-unseen.ask': 'Are the shelves smooth and sealed?',
  'custom.way.shelf-unseen.why': 'Smooth shelves are only cleaned; worn ones are lined.',
  'custom.way.shelf-unseen.until-then': 'Clean and line them.',
  'custom.way.sink-varnished.reason':
    'Varnished wood is judged as clay, which is not purged: use a basin.',
  'custom.way.sink-varnished-unseen.reason': 'Whether it is varnished is not known.',
  'custom.way.sink-varnished-unseen.ask':
    'Is the wood varnished or lacquered? A drop of water stands on varnish and sinks into oiled wood.',
  'custom.way.sink-varnished-unseen.why': 'Varnished wood is judged as clay, which is not purged.',
  'custom.way.sink-varnished-unseen.until-then': 'Use it with a basin on a rack.',
  'custom.way.varnished.reason': 'Varnished wood is judged as clay, which is not purged: cover it.',
  'custom.way.varnished-unseen.reason': 'Whether it is varnished is not known.',
  'custom.way.varnished-unseen.ask':
    'Is the wood varnished or lacquered? A drop of water stands on varnish and sinks into oiled wood.',
  'custom.way.varnished-unseen.why': 'Varnished wood is judged as clay, which is not purged.',
  'custom.way.varnished-unseen.until-then': 'Cover it.',
  'custom.way.kneaded.reason':
    'Dough was kneaded on it: by custom it is not used in Passover even when purged, so it is covered.',
  'custom.way.kneaded-unseen.reason': 'Whether dough was kneaded on it is not known.',
  'custom.way.kneaded-unseen.ask': 'Was dough kneaded straight on it?',
  'custom.way.kneaded-unseen.why':
    'By custom boards for dough are not used in Passover even when purged.',
  'custom.way.kneaded-unseen.until-then': 'Cover it.',
  'custom.way.hot-food.reason': 'Hot food was laid straight on it.',
  'custom.way.hot-food.ask':
    'Hot food was laid straight on it. Is a hot stone, or hot steel, needed while pouring?',
  'custom.way.hot-food.why':
    'A hot stone, or steel, moved over the whole while it is poured makes it as if it stood on the fire. The pour alone serves after the fact.',
  'custom.way.hot-food.until-then': 'Pour, then cover.',
  'custom.way.hot-food.answer-1': 'Pour, with hot steel moved over every spot.',
  'custom.way.hot-food.answer-2': 'The pour alone is enough.',
  'custom.way.hot-food.answer-3': 'Pour, then cover.',
  'custom.way.hot-food-unseen.reason': 'Whether hot food was laid straight on it is not known.',
  'custom.way.hot-food-unseen.ask':
    'Was hot food laid straight on it, without a plate or a trivet?',
  'custom.way.hot-food-unseen.why': 'What hot food lay on needs more than a pour.',
  'custom.way.hot-food-unseen.until-then': 'Pour, then cover.',
  'custom.way.shelf-hot.reason':
    'Hot food was kept in it: boiling water is poured over it, and it is lined.',
} satisfies Section;
