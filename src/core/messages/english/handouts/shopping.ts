import type { Message, Section } from '../../model/message.ts';

/** What to buy and gather, product by product. */
export const shopping = {
  'handouts.shopping.title': ({ kitchen }: { kitchen: string }) => `To buy and gather: ${kitchen}`,
  'handouts.shopping.about':
    'One line a product, with all it is for. Ticks are kept for this kitchen; what is sent leaves out what is ticked.',
  'handouts.shopping.item': ({ name, amount }: { name: Message; amount: Message }, f) =>
    `${f.say(name)}: ${f.say(amount)}`,
  'handouts.shopping.borrow': 'may be borrowed',
  'handouts.shopping.wait': 'ask first: an answer may make it needless',
  'handouts.shopping.only-if-said': 'only if your rabbi says so',
  'handouts.shopping.group.water': 'For the water',
  'handouts.shopping.group.hands': 'For the hands',
  'handouts.shopping.group.room': 'For the room',
  'handouts.shopping.group.cleaning': 'For cleaning',
  'handouts.shopping.group.covers': 'Covers and liners',
  'handouts.shopping.group.parts': 'New parts',
  'handouts.shopping.group.marks': 'For marking',
  'handouts.shopping.sets': ({ sets }: { sets: number }, f) =>
    `${f.number(sets)} ${f.plural(sets, { one: 'set', other: 'sets' })}`,
  'handouts.shopping.part-why': ({ fixtures }: { fixtures: readonly string[] }, f) =>
    `For ${f.list(fixtures)}: the old ones are not purged. Measure them first.`,
  'handouts.shopping.pot': 'Pot that is only for the purge',
  'handouts.shopping.pot-size': ({ leastPotL }: { leastPotL: number }, f) =>
    `at least ${f.measure(leastPotL, 'L', 0, 'up')}`,
  'handouts.shopping.left': ({ left, all }: { left: number; all: number }, f) =>
    `${f.number(left)} of ${f.number(all)} still to get`,
  'handouts.shopping.all-there': 'Everything is there.',
} satisfies Section;
