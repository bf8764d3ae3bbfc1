import type { Message, Section } from '../../model/message.ts';

/** What to buy and gather. */
export const shopping = {
  /** What is bought, before how much of it. */
  'plan.buy.before-amount': ({ name }: { name: Message }, f) => `${f.say(name)}:`,
  'plan.buy.kettle': ({ maxFillL, ratedW }: { maxFillL: number; ratedW: number }, f) =>
    `Electric kettle, ${f.shortMeasure(maxFillL, 'L')}, ${f.number(ratedW)} W`,
  'plan.buy.kettle.why': 'The kitchen names no kettle that can be poured from.',
  'plan.buy.jugs': ({ jugL }: { jugL: number }, f) => `Cold-water jugs of ${f.fill(jugL, true)}`,
  'plan.buy.jugs.why': ({ coldL }: { coldL: number }, f) =>
    `About ${f.measure(coldL, 'L')} of cold water follow the boiling water.`,
  'plan.buy.mop': 'Mop, bucket and floor towels',
  'plan.buy.mop.why': 'The floor gets wet after each kettle.',
  'plan.buy.gloves': 'Heat-proof waterproof gloves, long',
  'plan.buy.gloves.why': 'Boiling water and hot metal.',
  'plan.buy.rubber-gloves': 'Rubber gloves and eye cover',
  'plan.buy.rubber-gloves.why': 'Cleaners.',
  'plan.buy.extinguisher': 'Fire extinguisher for kitchens, or a fire blanket',
  'plan.buy.extinguisher.why': 'Glow and oven heat.',
  'plan.buy.co-alarm': 'CO alarm, tested',
  'plan.buy.co-alarm.why': 'Flames and burning grease give carbon monoxide.',
  'plan.buy.smoke-alarm': 'Smoke alarm, tested',
  'plan.buy.smoke-alarm.why': 'It stays in place, not disabled.',
  'plan.buy.ladder': 'Step ladder',
  'plan.buy.ladder.why': 'High places are reached from a ladder, not from a chair.',
  'plan.buy.towels': 'Clean towels or a sheet',
  'plan.buy.towels.why': 'Clean things stand on them until the counters are done.',
  'plan.buy.cleaning': 'Washing-up liquid, brushes, scrubbers, vacuum',
  'plan.buy.cleaning.why': 'Cleaning from top to bottom.',
  'plan.buy.labels': 'Labels or tape in three colours',
  'plan.buy.labels.why': 'Meat, dairy and neutral places.',
  'plan.buy.stone': 'Smooth clean piece of steel, and long tongs',
  'plan.buy.stone.why': 'It is heated and moved along while boiling water is poured.',
  'plan.buy.parts': ({ parts }: { parts: readonly Message[] }, f) =>
    `New: ${f.list(parts.map((part) => f.say(part)))}`,
  'plan.buy.parts.why': ({ fixture }: { fixture: string }) =>
    `${fixture}: these are not purged. Measure the old ones first.`,
  'plan.buy.cover': ({ material }: { material: Message }, f) => f.capital(f.say(material)),
  'plan.buy.cover.why': ({ fixtures }: { fixtures: readonly string[] }) =>
    `For ${fixtures.join(', ')}.`,
  'plan.amount.count': ({ count }: { count: number }, f) => f.number(count),
  'plan.amount.set': '1 set',
  'plan.amount.pairs': ({ pairs }: { pairs: number }, f) =>
    `${f.number(pairs)} ${f.plural(pairs, { one: 'pair', other: 'pairs' })}`,
  'plan.amount.bowls': ({ bowls }: { bowls: number }, f) =>
    `for ${f.number(bowls)} ${f.plural(bowls, { one: 'bowl', other: 'bowls' })}`,
  'plan.amount.area': ({ areaM2 }: { areaM2: number }, f) => f.shortMeasure(areaM2, 'm²'),
  'plan.amount.to-size': 'to size',
} satisfies Section;
