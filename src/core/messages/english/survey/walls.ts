import type { Message, Section } from '../../model/message.ts';

/** Walls, doors and windows, and one wall seen from the front. */
export const walls = {
  'survey.face': 'Seen from',
  'survey.face.above': 'From above',
  'survey.face.far': 'Far wall',
  'survey.face.near': 'Near wall',
  'survey.face.left': 'Left wall',
  'survey.face.right': 'Right wall',
  'survey.face.numbered': ({ wall, number }: { wall: Message; number: number }, f) =>
    `${f.say(wall)} ${f.number(number)}`,
  'survey.face.push': ({ wall, length }: { wall: Message; length: Message }, f) =>
    `Push the wall: ${f.say(wall)}, ${f.say(length)} long`,

  'survey.editor.keys': (_: unknown, f) =>
    `Arrows move by ${f.measure(5, 'cm')}, with Shift they resize. T turns, Delete takes out, Enter goes to the fields, Escape leaves.`,
  'survey.editor.lengths': 'Lengths',
  'survey.editor.names': 'Names',
  'survey.editor.walls': 'Walls',

  'survey.front.label': ({ wall }: { wall: Message }, f) => `${f.say(wall)} from the front`,
  'survey.front.spoken': (
    { name, left, from, to }: { name: string; left: Message; from: Message; to: Message },
    f,
  ) => `${name}, ${f.say(left)} from the left, from ${f.say(from)} to ${f.say(to)} above the floor`,
  'survey.front.heights': ({ from, to }: { from: Message; to: Message }, f) =>
    `${f.say(from)} – ${f.say(to)}`,
  'survey.front.untold': 'Broken lines: nobody told its height, so the usual one is drawn.',
  'survey.front.unhung': 'Not drawn yet. Press to put it at this wall:',

  'survey.opening.door': 'Door',
  'survey.opening.door.tells': 'With the way it swings',
  'survey.opening.window': 'Window',
  'survey.opening.window.tells': 'Over a counter or not',
  'survey.opening.passage': 'Passage',
  'survey.opening.passage.tells': 'An opening without a door',
  'survey.opening.spoken': (
    { name, wall, left, width }: { name: Message; wall: Message; left: Message; width: Message },
    f,
  ) => `${f.say(name)}, ${f.say(wall)}, ${f.say(left)} from its left end, ${f.say(width)} wide`,
  'survey.opening.width': 'Width',
  'survey.opening.from-left': 'From the left end of the wall',
  'survey.opening.turn': 'Turn the door',
  'survey.offers.openings': 'In the walls',
  'survey.wall-place': 'At the wall',
  'survey.heights.from': 'Lower edge above the floor',
  'survey.heights.to': 'Upper edge above the floor',
  'survey.heights.hint': 'Only for the picture.',

  'survey.done.walls': 'Walls moved',
  'survey.done.hung': ({ fixture }: { fixture: string }) => `${fixture} put at the wall`,
  'survey.what.heights': 'heights',
  'survey.what.wall-place': 'place at the wall',
} satisfies Section;
