import type { Message, Section } from '../../model/message.ts';

type Name = { name: string };
type Numbered = { number: number };

/** The plan that is shaped by finger, and the sheet of one fixture. */
export const fixture = {
  'survey.editor.plan':
    'Plan of the kitchen. Arrow keys move what is chosen by a centimetre, with Shift by ten; Delete takes it out; Enter goes to its sheet.',
  'survey.editor.sized': (
    { name, length, depth }: { name: string; length: Message; depth: Message },
    f,
  ) => `${name}, ${f.say(length)} by ${f.say(depth)}`,
  'survey.editor.whereabouts': ({ left, front }: { left: Message; front: Message }, f) =>
    `${f.say(left)} from the left, ${f.say(front)} from the front`,
  'survey.editor.look': 'Look',
  'survey.editor.nearer': 'Nearer',
  'survey.editor.farther': 'Farther',
  'survey.editor.whole-room': 'Whole room',

  'survey.chosen': '(chosen)',
  'survey.sheet.next': 'Add the next',
  'survey.sheet.name': 'Name',
  'survey.sheet.belongs': 'To belong to',
  'survey.sheet.off-plan': 'Off the plan',
  'survey.sheet.onto-plan': 'Onto the plan',
  'survey.sheet.turn': 'Turn',
  'survey.sheet.copy': 'Copy',

  'survey.size.length': 'Length',
  'survey.size.depth': 'Depth',
  'survey.size.from-left': 'From the left',
  'survey.size.from-front': 'From the front',
  'survey.size.corners': ({ count }: { count: number }, f) =>
    `It has ${f.number(count)} corners: length and depth are those of the box round it.`,

  'survey.shape': 'Shape',
  'survey.shape.walls': 'Which edges stand at a wall?',
  'survey.shape.stand': 'At which sides can you stand?',
  'survey.shape.stand-at': ({ side, length }: { side: Message; length: Message }, f) =>
    `At the ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.edge': ({ side, length }: { side: Message; length: Message }, f) =>
    `${f.say(side)}, ${f.say(length)}`,
  'survey.shape.numbered-edge': (
    { from, to, side, length }: { from: number; to: number; side: Message; length: Message },
    f,
  ) => `${f.number(from)}–${f.number(to)}, ${f.say(side)}, ${f.say(length)}`,
  'survey.shape.side.far': 'far side',
  'survey.shape.side.near': 'near side',
  'survey.shape.side.left': 'left side',
  'survey.shape.side.right': 'right side',
  'survey.shape.open': 'Corners one by one',
  'survey.shape.close': 'Done with the corners',
  'survey.shape.crosses': 'Then the outline would cross itself.',
  'survey.shape.corner-left': ({ number }: Numbered, f) => `${f.number(number)} from the left`,
  'survey.shape.corner-front': ({ number }: Numbered, f) => `${f.number(number)} from the front`,
  'survey.shape.add-after': 'Add after',
  'survey.shape.add-after-corner': ({ number }: Numbered, f) =>
    `Add after corner ${f.number(number)}`,
  'survey.shape.take-out-corner': ({ number }: Numbered, f) =>
    `Take out corner ${f.number(number)}`,
  'survey.shape.backsplash': 'Backsplash, height',

  'survey.surface.heading': 'What is it made of?',
  'survey.surface.another': 'Another material',
  'survey.surface.fingernail': 'Draw a fingernail across it',

  'survey.sink.bowl-length': 'Bowl, length',
  'survey.sink.bowl-width': 'Bowl, width',
  'survey.sink.bowl-depth': 'Bowl, depth',
  'survey.sink.bowl-n-length': ({ number }: Numbered, f) => `Bowl ${f.number(number)}, length`,
  'survey.sink.bowl-n-width': ({ number }: Numbered, f) => `Bowl ${f.number(number)}, width`,
  'survey.sink.bowl-n-depth': ({ number }: Numbered, f) => `Bowl ${f.number(number)}, depth`,
  'survey.sink.rim': 'Rim',
  'survey.sink.handles': 'Handles of the tap',
  'survey.sink.sprayer': 'Pull-out sprayer',
  'survey.sink.drainboard': 'Drainboard',

  'survey.parts': 'Which of these has it?',
  'survey.fact.varnished': 'Is the wood varnished or lacquered?',
  'survey.fact.kneaded': 'Was dough kneaded straight on it?',
  'survey.fact.hotFood': 'Did hot food lie straight on it, without a dish?',
  'survey.last-hot.own': 'Its own last hot use, if it was another',
  'survey.last-hot.all': 'When was anything here last used hot?',
  'survey.last-hot.all.hint':
    'Stove, oven, sink, counters, kettle; hot cleaning counts. The rests are then planned from that time, and all is cleaned with cold water only. The run asks again.',
  'survey.last-hot.forget': 'Not told',
  'survey.cupboard.place': 'Where is it?',
  'survey.cupboard.over-counter': 'Over the counter',
  'survey.cupboard.under-counter': 'Under the counter',

  'survey.shelves': 'Shelves',
  'survey.shelves.drawer': 'Floors to line',
  'survey.shelves.cupboard': 'Shelves to line',
  'survey.shelves.length': ({ number }: Numbered, f) => `Shelf ${f.number(number)}, length`,
  'survey.shelves.depth': ({ number }: Numbered, f) => `Shelf ${f.number(number)}, depth`,
  'survey.shelves.take-out': ({ number }: Numbered, f) => `Take out shelf ${f.number(number)}`,
  'survey.shelves.one-more': 'One more like the last',
  'survey.shelves.add': 'Add a shelf',

  'survey.appliance.power': 'Power',
  'survey.appliance.power.empty': 'on its plate',

  'survey.cooktop.kind': 'Kind of burners',
  'survey.cooktop.several': 'Of several kinds',
  'survey.cooktop.between': 'What lies between the burners?',
  'survey.cooktop.each': 'Each burner',
  'survey.cooktop.add': 'Add a burner',
  'survey.cooktop.called': 'Called',
  'survey.cooktop.power': ({ name }: Name) => `Power, ${name}`,
  'survey.cooktop.across': ({ name }: Name) => `Across, ${name}`,
  'survey.cooktop.lamp': 'Does a lamp show that it is still hot?',
  'survey.cooktop.volts': ({ name }: Name) => `Volts on its plate, ${name}`,
  'survey.cooktop.volts.empty': 'as its circuit',
  'survey.cooktop.senses': ({ name }: Name) => `Senses the pan, ${name}`,
  'survey.lamp.lamp': 'A lamp of residual heat',
  'survey.lamp.none': 'No lamp',
  'survey.senses.no': 'No, or not known',
  'survey.senses.yes': 'Yes: it limits itself, and may not redden bare',
  'survey.cooktop.burner-kind': 'Kind',
  'survey.cooktop.take-out': ({ name }: Name) => `Take out the burner ${name}`,

  'survey.oven.cleaning': 'How does it clean itself?',
  'survey.oven.steam-trap':
    'Steam clean is not a purge. The plan treats this oven as one that does not clean itself.',
  'survey.oven.catalytic-trap':
    'A catalytic lining is not a purge. The plan treats this oven as one that does not clean itself.',
  'survey.oven.cycle': 'Length of the cycle',
  'survey.oven.cycle.empty': 'by the manual',
  'survey.oven.racks': 'What does the manual say of the racks?',
  'survey.oven.heated-by': 'Heated by',
  'survey.oven.range': 'In one appliance with',
  'survey.oven.no-cooktop': 'No cooktop',
} satisfies Section;
