import type { Section } from '../../model/message.ts';

/** What to buy and gather, product by product. */
export const shopping = {
  'sheets.shopping.title': ({ kitchen }: { kitchen: string }) => `To buy and gather: ${kitchen}`,
  'sheets.shopping.about':
    'One line a product, with all it is for. Ticks are kept for this kitchen; what is sent leaves out what is ticked.',
  'sheets.shopping.borrow': 'may be borrowed',
  'sheets.shopping.wait': 'ask first: an answer may make it needless',
  'sheets.shopping.only-if-said': 'only if your rabbi says so',
  'sheets.shopping.group.water': 'For the water',
  'sheets.shopping.group.hands': 'For the hands',
  'sheets.shopping.group.room': 'For the room',
  'sheets.shopping.group.cleaning': 'For cleaning',
  'sheets.shopping.group.covers': 'Covers and liners',
  'sheets.shopping.group.parts': 'New parts',
  'sheets.shopping.group.marks': 'For marking',
  'sheets.shopping.sets': ({ sets }: { sets: number }, f) =>
    `${f.number(sets)} ${f.plural(sets, { one: 'set', other: 'sets' })}`,
  'sheets.shopping.part-why': ({ fixtures }: { fixtures: readonly string[] }, f) =>
    `For ${f.list(fixtures)}: the old ones are not purged. Measure them first.`,
  'sheets.shopping.pot': 'Pot that is only for the purge',
  'sheets.shopping.pot-size': ({ leastPotL }: { leastPotL: number }, f) =>
    `at least ${f.number(leastPotL)} L`,
  'sheets.shopping.left': ({ left, all }: { left: number; all: number }, f) =>
    `${f.number(left)} of ${f.number(all)} still to get`,
  'sheets.shopping.all-there': 'Everything is there.',
} satisfies Section;
