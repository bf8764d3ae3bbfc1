import type { Message, Section } from '../../model/message.ts';

/** Kinds of utensils, and what is done with them. */
export const words = {
  'utensils.kind-for': ({ kind, designation }: { kind: Message; designation: Message }, f) =>
    `${f.say(kind)} (${f.say(designation)})`,
  'utensils.kind.pot': 'Pots',
  'utensils.kind.lid': 'Lids',
  'utensils.kind.pan': 'Frying pans',
  'utensils.kind.tray': 'Baking trays',
  'utensils.kind.rack': 'Racks and grills',
  'utensils.kind.cutlery': 'Cutlery',
  'utensils.kind.knife': 'Knives',
  'utensils.kind.ladle': 'Ladles and turners',
  'utensils.kind.wooden-spoon': 'Wooden spoons',
  'utensils.kind.board': 'Boards',
  'utensils.kind.plate': 'Plates and bowls',
  'utensils.kind.mug': 'Mugs',
  'utensils.kind.glass': 'Glasses',
  'utensils.kind.silver': 'Silver',
  'utensils.kind.sieve': 'Sieves and graters',
  'utensils.kind.gadget': 'Gadgets',

  'utensils.method.heat': 'Heat until it glows, or through a full self-clean cycle',
  'utensils.method.light-heat': 'Heat until straw scorches on the far side',
  'utensils.method.immerse': 'Immerse in boiling water',
  'utensils.method.soak': 'Soak in cold water',
  'utensils.method.clean': 'Scrub and rinse',
  'utensils.method.put-away': 'Put away or replace',

  'utensils.answer.heat': 'Only by heat to glow.',
  'utensils.answer.light-heat': 'By light heat.',
  'utensils.answer.immerse': 'In boiling water.',
  'utensils.answer.soak': 'By soaking three days.',
  'utensils.answer.clean': 'Washing is enough.',
  'utensils.answer.put-away': 'Not purged.',

  'utensils.rule.rest':
    'Wash it, then use it for nothing hot for 24 hours. What is not clean is not purged.',
  'utensils.rule.light-heat-test':
    'Light heat is enough when straw or paper held to the far side scorches. Keep it away from plastic handles.',
  'utensils.rule.soak':
    'Soak it under cold water for 24 hours, pour the water away, fill again: three times.',
  'utensils.rule.plain-water':
    'Plain water, nothing added. Change it when it turns thick or cloudy.',
  'utensils.rule.pot-first':
    'The pot is purged before it purges anything, and again after the last batch.',
  'utensils.rule.boil-over':
    'A pot is purged when it is filled to the brim and boils over its rim: burner off, slowly lower clean hot steel to raise the water. No stone: it can burst.',
  'utensils.rule.bubbling':
    'Dip only while the water bubbles. It stops when something cold goes in: leave it under until it bubbles again.',
  'utensils.rule.tongs':
    'Where tongs hold it no water comes: let it go under the water, or turn it and dip it again.',
  'utensils.rule.parts':
    'What is too long goes under one half after the other, the second a little past the middle.',
  'utensils.rule.apart': 'Meat and dairy things never in the same water.',
  'utensils.rule.cold-rinse': 'Into cold water as soon as it comes out.',
  'utensils.rule.mikveh':
    'After the purge, things of metal and glass for food that come from non-Jews are immersed in a mikveh.',
} satisfies Section;
