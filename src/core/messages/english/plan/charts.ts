import type { Formatter, Message, Section } from '../../model/message.ts';

function litText(burners: number, f: Formatter): string {
  return burners === 1 ? 'one burner lit' : `${f.number(burners)} burners lit`;
}

/** Courses of heat and air, drawn on the page of the plan. */
export const charts = {
  'plan.chart.unit.temperature': (_: unknown, f) => f.unitName('°C'),
  'plan.chart.unit.concentration': 'mg/m³',
  'plan.chart.moment.off': 'off',
  'plan.chart.moment.lit': 'burners on',

  'plan.chart.boil.title': ({ vessel }: { vessel: Message }, f) => `Boil: ${f.say(vessel)}`,
  'plan.chart.boil.says': ({ litres }: { litres: number }, f) =>
    `${f.fill(litres, true)} from the tap to a rolling boil.`,
  'plan.chart.boil.says-calibrated': ({ litres }: { litres: number }, f) =>
    `${f.fill(litres, true)} from the tap to a rolling boil. The line is reckoned; the moments are from your last run.`,
  'plan.chart.boil.water': 'Water',
  'plan.chart.boil.boils-here': 'Boils here',
  'plan.chart.boil.soonest': 'soonest',
  'plan.chart.boil.about': 'about',
  'plan.chart.boil.latest': 'latest',

  'plan.chart.after-boil.title': ({ vessel }: { vessel: Message }, f) =>
    `After the boil: ${f.say(vessel)}`,
  'plan.chart.after-boil.says': ({ dropK }: { dropK: number }, f) =>
    `Its last drop falls before it has lost ${f.measure(dropK, 'K')}. The plan counts by the quicker of the two, and an emptying kettle cools sooner than these, which stay full.`,
  'plan.chart.after-boil.loses-much': 'A kettle that loses much',
  'plan.chart.after-boil.loses-little': 'A kettle that loses little',
  'plan.chart.after-boil.boil-again': 'Boil again below',
  'plan.chart.after-boil.pour-by': 'last drop by',

  'plan.chart.glow.title': ({ burnerType }: { burnerType: Message }, f) =>
    `Glow and cool-down: ${f.say(burnerType)}`,
  'plan.chart.glow.says': ({ visible, holdS }: { visible: Message; holdS: number }, f) =>
    `${f.say(visible)} The hold of ${f.duration(holdS)} begins when you say that it glows; the drawing begins it at full heat.`,
  'plan.chart.glow.line': 'What glows',
  'plan.chart.glow.first-red': 'First red in the dark',
  'plan.chart.glow.seen': 'glow seen',
  'plan.chart.burner.electric-coil': 'electric coil',
  'plan.chart.burner.solid-plate': 'solid plate',
  'plan.chart.burner.radiant-glass': 'radiant glass',
  'plan.chart.burner.gas-sealed': 'gas sealed',
  'plan.chart.burner.gas-open': 'gas open',
  'plan.chart.burner.gas-wok': 'gas wok',
  'plan.chart.burner.commercial-open': 'commercial open',
  'plan.chart.burner.portable-plate': 'portable plate',

  'plan.chart.room.title': 'The kitchen, as it feels',
  'plan.chart.room.outside': (
    { burners, outdoorC, oven }: { burners: number; outdoorC: number; oven: boolean },
    f,
  ) =>
    `With ${litText(burners, f)} at a time, one after another, hood and window as told, ${f.measure(outdoorC, '°C')} outside${oven ? ', after the oven’s own heat' : ''}. Temperature and damp together (heat index).`,
  'plan.chart.room.planned': ({ burners }: { burners: number }, f) =>
    `Planned: ${litText(burners, f)}`,
  'plan.chart.room.bad-end': 'Planned, at the bad end',
  'plan.chart.room.one-more': 'One burner more',
  'plan.chart.room.shut': 'Hood off, window shut',
  'plan.chart.room.extreme-caution': 'Extreme caution',
  'plan.chart.room.danger': 'Danger',
  'plan.chart.air.title': 'Nitrogen dioxide from the gas',
  'plan.chart.co.title': 'Carbon monoxide from the gas',
  'plan.chart.air.by-bad-end': ({ burners }: { burners: number }, f) =>
    `With ${litText(burners, f)} at a time, one after another. The plan goes by the bad end: a dirty flame, a poor hood, still air. A line over the limit for a whole hour is too much; the app never says the air is safe.`,
  'plan.chart.air.limit': 'Limit for an hour’s mean',
} satisfies Section;
