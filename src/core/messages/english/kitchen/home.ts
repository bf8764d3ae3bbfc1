import type { Message, Section } from '../../model/message.ts';

type Name = { name: string };

/** The kitchens of this tablet, and the one that is open from above. */
export const home = {
  'kitchen.welcome': 'Make your kitchen kosher, or ready for Passover',
  'kitchen.welcome.about':
    'Tell what stands in it. Get a plan by the hour. Be led through it, step by step.',
  'kitchen.welcome.no-ruling':
    'No ruling: your rabbi decides. Makers’ manuals, local codes and licensed trades come first.',
  'kitchen.welcome.begin': 'Describe your kitchen',
  'kitchen.new-name': 'My kitchen',

  'kitchen.demos': 'Start from a kitchen',
  'kitchen.demos.first': 'Or look at one like yours',
  'kitchen.demos.another': 'Another kitchen',
  'kitchen.describe-new': 'Describe a new kitchen',
  'kitchen.open-file': 'Open a kitchen file',
  'kitchen.demo.flat-coils.name': 'Flat with coils',
  'kitchen.demo.flat-coils.tells': 'Electric coils, one steel sink, 120 V',
  'kitchen.demo.mountain-gas.name': 'Mountain house',
  'kitchen.demo.mountain-gas.tells': (_: unknown, f) =>
    `Gas at ${f.measure(2100, 'm')}, for Passover`,
  'kitchen.demo.flat-glass-230.name': 'Flat with a glass hob',
  'kitchen.demo.flat-glass-230.tells': 'Glass hob, oven in a tower, 230 V',
  'kitchen.demo.hall.name': 'Hall kitchen',
  'kitchen.demo.hall.tells': 'Eight burners, two ovens, a crew of three',

  'kitchen.problems.file': 'This file could not be read',
  'kitchen.problems.file.note': 'Nothing you had was changed.',
  'kitchen.problems.plan': 'There is no plan for this kitchen yet',
  'kitchen.problems.plan.note': 'The kitchen itself is kept. Change it to put this right.',
  'kitchen.problem.at': ({ path, line }: { path: string; line: number }) => `${path}, line ${line}`,
  'kitchen.problem': (
    { found, allowed, advice }: { found: Message; allowed: Message; advice: Message },
    f,
  ) => `Found ${f.say(found)}. Allowed: ${f.say(allowed)}. ${f.say(advice)}`,

  'kitchen.yours': 'Your kitchen',
  'kitchen.yours.demo': 'Your kitchen, as a demo has it; the first change makes it your own copy',
  'kitchen.save-file': 'Save as file',
  'kitchen.change': 'Change it',
  'kitchen.press-to-change': 'Press anything in the picture to move or change it.',
  'kitchen.see-plan': 'See the plan',
  'kitchen.empty': 'Nothing stands in it yet. Change it to tell what does.',
  'kitchen.fixtures': 'Fixtures',
  'kitchen.fixtures.heading': 'What is in it',
  'kitchen.fixtures.is': ({ what }: { what: Message }, f) => f.capital(f.say(what)),
  'kitchen.fixtures.belongs': ({ what, to }: { what: Message; to: Message }, f) =>
    `${f.capital(f.say(what))}, ${f.say(to)}`,
  'kitchen.belongs.meat': 'meat',
  'kitchen.belongs.dairy': 'dairy',
  'kitchen.belongs.pareve': 'pareve (neutral)',

  'kitchen.choices.why': 'Why',
  'kitchen.choices.custom': 'Custom',
  'kitchen.choices.lanes': 'Direction of pouring',
  'kitchen.choices.pour-until': 'Pour until',
  'kitchen.choices.people': 'People working',
  'kitchen.choices.units': 'Units',
  'kitchen.units.metric': 'Metric (cm, L, °C)',
  'kitchen.units.us-customary': 'US customary (in, qt, °F)',
  'kitchen.purpose.new-kitchen': 'New kitchen',
  'kitchen.purpose.passover': 'Passover',
  'kitchen.purpose.mix-up': 'After a mix-up',
  'kitchen.lanes.back-to-front': 'Back to front (custom)',
  'kitchen.lanes.shortest': 'The shortest way',
  'kitchen.leaven-day.dawn-nightfall': 'From dawn to nightfall (the earlier hour)',
  'kitchen.leaven-day.sunrise-sunset': 'From sunrise to sunset',
  'kitchen.pour-until.reached': 'Every spot is reached',
  'kitchen.pour-until.heated': 'It is heated through (no text asks it)',

  'kitchen.hardware.altitude': 'Altitude',
  'kitchen.hardware.altitude.value': ({ altitudeM }: { altitudeM: number }, f) =>
    f.shortMeasure(altitudeM, 'm', 3),
  'kitchen.hardware.mains': 'Mains',
  'kitchen.hardware.mains.value': ({ supplyV }: { supplyV: number }, f) =>
    `${f.shortNumber(supplyV, 3)} V`,
  'kitchen.hardware.tap': 'Tap water',
  'kitchen.hardware.tap.value': ({ tapColdC }: { tapColdC: number }, f) =>
    f.shortMeasure(tapColdC, '°C', 3),
  'kitchen.hardware.vessel': (
    { count, maxFillL, ratedW }: { count: number; maxFillL: number; ratedW: number },
    f,
  ) =>
    `${count > 1 ? `${f.number(count)} × ` : ''}${f.shortMeasure(maxFillL, 'L', 3)}${ratedW > 0 ? `, ${f.shortNumber(ratedW, 3)} W` : ''}`,
  'kitchen.hardware.vessel.on': ({ vessel, circuit }: { vessel: Message; circuit: string }, f) =>
    `${f.say(vessel)}, on ${circuit}`,
  'kitchen.hardware.circuit': ({ ratingA, voltsV }: { ratingA: number; voltsV: number }, f) =>
    `${f.shortNumber(ratingA, 3)} A at ${f.shortNumber(voltsV, 3)} V`,
  'kitchen.hardware.hood': 'Hood',
  'kitchen.hardware.hood.none': 'No hood',
  'kitchen.hardware.hood.unknown': 'not told yet: counts as none',
  'kitchen.hardware.hood.vented': ({ flowLS }: { flowLS: number }, f) =>
    `Hood to the outside, ${f.shortMeasure(flowLS, 'L/s', 3)}`,
  'kitchen.hardware.hood.recirculating': 'Recirculating hood (removes no gas)',
  'kitchen.hardware.window': 'Window',
  'kitchen.hardware.window.not-told': 'not told yet: counts as none',
  'kitchen.hardware.window.none': 'none that opens',
  'kitchen.hardware.window.opens': ({ areaM2 }: { areaM2: number }, f) =>
    `${f.shortMeasure(areaM2, 'm²', 3)} opens`,

  'kitchen.kept': 'Kitchens on this tablet',
  'kitchen.kept.changed': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `changed ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.open': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `open now, changed ${f.dateTime(wallMs, zone)}`,
  'kitchen.kept.failed': ({ why }: { why: Message }, f) =>
    `This tablet’s store did not answer, and nothing was changed. ${f.say(why)}`,
  'kitchen.kept.more': 'More',
  'kitchen.kept.less': 'Less',
  'kitchen.kept.for': ({ name }: Name) => `for “${name}”`,
  'kitchen.kept.another-name': 'Another name',
  'kitchen.kept.rename': 'Rename',
  'kitchen.kept.duplicate': 'Duplicate',
  'kitchen.kept.delete': 'Delete',
  'kitchen.kept.sure': ({ name }: Name) => `Delete “${name}”?`,
  'kitchen.kept.keep': 'Keep it',
  'kitchen.kept.delete-it': 'Delete it',
  'kitchen.kept.deleted': ({ name }: Name) =>
    `“${name}” was deleted. It can be put back for a week.`,
  'kitchen.kept.put-back': 'Put back',
} satisfies Section;
