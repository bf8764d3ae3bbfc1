import type { Section } from '../../model/message.ts';

/** What a household should look at although the file is used. */
export const warnings = {
  'problems.load.one.found': ({ vessel, drawA }: { vessel: string; drawA: number }, f) =>
    `"${vessel}", which draws ${f.number(drawA, 1)} A`,
  'problems.load.one.allowed': ({ ratingA }: { ratingA: number }) => `at most ${ratingA} A`,
  'problems.load.one.advice': 'It would trip the breaker: use another circuit or a weaker one.',
  'problems.load.several.found': (
    { count, circuit, togetherA }: { count: number; circuit: string; togetherA: number },
    f,
  ) => `${f.number(count)} on "${circuit}", ${f.number(togetherA, 1)} A together`,
  'problems.load.several.allowed': ({ ratingA }: { ratingA: number }) =>
    `at most ${ratingA} A at once`,
  'problems.load.several.advice': 'They cannot boil at the same time there; the plan takes turns.',
  'problems.voltage.found': ({ ratedV, voltsV }: { ratedV: number; voltsV: number }) =>
    `${ratedV} V on a circuit of ${voltsV} V`,
  'problems.voltage.allowed': ({ voltsV }: { voltsV: number }) => `about ${voltsV} V`,
  'problems.voltage.advice': 'Read the plate under it again.',
  'problems.utensil-material.allowed': ({ materials }: { materials: string }) =>
    `one of ${materials} for this kind`,
  'problems.utensil-material.advice': 'Look at it again, or tell it as another kind.',
  'problems.utensil-mass.allowed': ({ mostKg }: { mostKg: number }, f) =>
    `at most ${f.shortMeasure(mostKg, 'kg', 3, 'down')} for its size`,
  'problems.utensil-mass.advice': 'Solid silver would weigh less: weigh or measure it again.',
  'problems.no-fixtures.allowed': 'at least one fixture to plan',
  'problems.no-fixtures.advice':
    'Describe what is in the kitchen; until then there is nothing to plan.',
  'problems.no-vessels.allowed': 'at least one kettle, urn or pot',
  'problems.no-vessels.advice': 'Describe what boils the water, or nothing can be poured.',
  'problems.unplugged.found': 'nothing',
  'problems.unplugged.allowed': 'the id of a circuit',
  'problems.unplugged.advice': 'Say which circuit it is plugged into, or its load is not watched.',
  'problems.hood-flow.allowed': 'the flow of a vented hood in L/s',
  'problems.hood-flow.advice': 'Read the flow in the manual; until then it counts as no hood.',
  'problems.hood-kind.found': ({ flowLS }: { flowLS: number }, f) =>
    `"none" with a flow of ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'problems.hood-kind.allowed': 'a kind of hood',
  'problems.hood-kind.advice': 'Say "vented" or "recirculating", or take the flow out.',
  'problems.room-small.found': ({ volumeM3 }: { volumeM3: number }, f) =>
    `a room of ${f.shortMeasure(volumeM3, 'm³', 1)}`,
  'problems.room-small.allowed': ({ leastM3 }: { leastM3: number }, f) =>
    `${f.measure(leastM3, 'm³', 0, 'up')} or more`,
  'problems.room-small.advice':
    'Measure floor and ceiling again; for a smaller room its heat and air are not reckoned.',
  'problems.last-hot.zone.allowed': 'a last hot use in a kitchen that tells its place',
  'problems.last-hot.zone.advice':
    'Add the place: until then nobody knows which moment that is, and each rest counts from its cleaning.',
  'problems.cycle.found': ({ cycleMin }: { cycleMin: number }) =>
    `${cycleMin} for an oven that does not clean itself`,
  'problems.cycle.allowed': 'no cycle',
  'problems.cycle.advice': 'Take it out, or say "pyrolytic" if the oven has such a cycle.',
  'problems.own-rests.found': ({
    name,
    basedOn,
    followed,
  }: {
    name: string;
    basedOn: string;
    followed: string;
  }) => `"${name}", copied from ${basedOn}, while the household follows ${followed}`,
  'problems.own-rests.advice': ({ basedOn }: { basedOn: string }) =>
    `It is kept and not used; follow ${basedOn} again to use it.`,
  'problems.unusual-answer.found': ({ method, fixture }: { method: string; fixture: string }) =>
    `"${method}" for "${fixture}"`,
  'problems.unusual-answer.advice':
    'Ask again whether this was meant; the plan follows it as far as it can.',
} satisfies Section;
