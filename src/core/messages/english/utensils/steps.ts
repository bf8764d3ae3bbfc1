import type { Band } from '../../../units/index.ts';
import type { Message, Section } from '../../model/message.ts';

type Burner = { burner: string };
type Batch = { number: number; of: number; group: Message };
type Items = { items: readonly Message[] };
type Day = { day: number; of: number };

/** Utensils as steps of the run: batches, pots, heat, soaking. */
export const utensilSteps = {
  'utensils.all': 'Utensils',

  'cautions.dip-pot.say':
    'Long tongs or a long-handled net, face aside, lowered slowly, never left while it boils: it spits and its steam scalds.',

  'utensils.step.clean': 'Wash the utensils.',
  'utensils.step.clean-these': ({ items }: Items, f) =>
    `Wash ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.joints': 'Open what opens: rust, labels, grease and glue off, handles too.',
  'utensils.step.soak-first': ({ items }: Items, f) =>
    `When they are washed, lay these in cold water, wholly under: ${f.list(items.map((item) => f.say(item)))}.`,
  'utensils.step.put-away': ({ items }: Items, f) =>
    `Not purged here, put away or replaced: ${f.list(items.map((item) => f.say(item)))}.`,

  'utensils.step.boil': ({ vessel, group }: { vessel: Message; group: Message }, f) =>
    `Boil fresh water for utensils (${f.say(group)}): ${f.say(vessel)}.`,
  'utensils.step.lid': 'Lid on until it boils; tilt it away from you as you take it off.',
  'utensils.step.boil-ask': 'Is the water at a rolling boil?',
  'utensils.step.overflow': ({ burner }: Burner) =>
    `Fill it to the brim, turn the ${burner} burner off, and slowly lower clean hot steel into it until its whole rim runs over.`,
  'utensils.step.overflow-hob':
    'Where it stands: nobody carries it full. Stand back, and mop the hob before it is lit again.',
  'utensils.step.empty':
    'Scoop it out in small amounts; never carry the pot while it is full and hot.',

  'utensils.step.batch': ({ number, of, group }: Batch, f) =>
    `Dip batch ${f.number(number)} of ${f.number(of)}: ${f.say(group)}.`,
  'utensils.step.top-up': ({ litres }: { litres: number }, f) =>
    `Top the pot up to ${f.fill(litres)} and wait for a rolling boil.`,
  'utensils.step.lower': 'Lower it into the boiling water, wholly under.',
  'utensils.step.under': 'It is under',
  'utensils.step.under-ask': 'Was everything wholly under the boiling water?',
  'utensils.step.again': 'Leave it under until the water boils again.',
  'utensils.step.drop': ({ mixedC, recoverS }: { mixedC: number; recoverS: Band }, f) =>
    `The water falls to about ${f.measure(mixedC, '°C', 1)} and boils again after ${f.about(recoverS.typical)}, at most ${f.about(recoverS.high)}.`,
  'utensils.step.again-say': 'It boils again',
  'utensils.step.again-ask': 'Did the water boil again with the things in it?',
  'utensils.step.turn': 'Lift it, turn it in the tongs, and lower it in again.',
  'utensils.step.other-half':
    'Lift it, hold the half that was in, and lower the other one in, a little past the middle.',
  'utensils.step.one-by-one':
    'One by one: under until it boils again, turned, under again until it boils again.',
  'utensils.step.each-cold': 'Each goes from the pot straight into cold water.',
  'utensils.step.all-twice': 'All were in twice',
  'utensils.step.dips-expect': ({ isAhead }: { isAhead?: boolean }) =>
    isAhead ? 'Until all are dipped (expected)' : 'All dipped about now',
  'utensils.step.cold': 'Out of the pot and into cold water at once.',
  'utensils.step.next-batch': ({ burner }: Burner) =>
    `The next batch follows in the same water. Whoever stops here turns the ${burner} burner off.`,
  'utensils.step.off': ({ burner }: Burner) => `Turn the ${burner} burner off.`,
  'utensils.step.off-say': 'It is off',

  'utensils.step.own-rim': ({ name, piece, of }: { name: Message; piece: number; of: number }, f) =>
    `Purge by its own rim: ${f.say(name)}${of > 1 ? `, ${piece} of ${of}` : ''}.`,
  'utensils.step.own-rim-fill': ({ burner }: Burner) =>
    `Fill it to two fingers below its brim and turn the ${burner} burner on under it.`,
  'utensils.step.own-rim-safe': ({ burner }: Burner) =>
    `Turn the ${burner} burner off and leave the pot standing on it.`,
  'utensils.step.outside': 'Where its outside touched hot food this is not enough: ask.',

  'utensils.step.glow-title': 'Heat utensils until they glow.',
  'utensils.step.light-title': 'Heat utensils until straw scorches on the far side.',
  'utensils.step.glow': ({ burner }: Burner) =>
    `One by one over the ${burner} burner at full heat, until all of it has glowed.`,
  'utensils.step.light-heat': ({ burner }: Burner) =>
    `One by one over the ${burner} burner, until straw or paper scorches on the far side.`,
  'utensils.step.fire-tongs':
    'Long tongs, dry gloves. It stays burning hot long after it stops glowing: lay it on steel or stone, and touch nothing.',
  'utensils.step.glowed': 'All have glowed',
  'utensils.step.scorched': 'It scorched at all of them',

  'utensils.step.soak': ({ day, of }: Day) => `Soak in cold water: day ${day} of ${of}.`,
  'utensils.step.soak-under': 'Wholly under; nothing else in that water.',
  'utensils.step.soak-timer': ({ day, of }: Day) => `Soaking, day ${day} of ${of}`,
  'utensils.step.change': 'Pour the water away and fill with fresh cold water.',
  'utensils.step.change-say': 'Changed',
  'utensils.step.soaked': 'Take them out of the water and rinse them.',
  'utensils.step.soaked-say': 'Rinsed',
} satisfies Section;
