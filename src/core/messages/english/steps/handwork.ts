import type { Formatter, Message, Section } from '../../model/message.ts';

type Name = { name: Message };
/** A time of day, filled in by a view that knows it. */
type Until = { until?: Message };

function untilText(until: Message | undefined, f: Pick<Formatter, 'say'>): string {
  return until ? ` until ${f.say(until)}` : '';
}

/** Cleaning, resting, covering, marking: what is done without heat. */
export const handwork = {
  'steps.clean.title': ({ name }: Name, f) => `Clean: ${f.say(name)}.`,
  'steps.clean.title-vessel': ({ name }: Name, f) => `Clean and descale: ${f.say(name)}.`,
  'steps.clean.cold-only': 'Cold water only, no steam: it rests already.',
  'steps.clean.sand': 'Sand out every cut and scratch.',
  'steps.clean.rinse-vessel': 'Rinse it well, lid and spout too.',
  'steps.clean.say': 'It is clean',

  'steps.unplug.title': ({ name }: Name, f) => `Empty and unplug: ${f.say(name)}.`,
  'steps.unplug.food': 'Food into a cool box with ice packs; keep its lid shut.',
  'steps.unplug.plug': 'Dry hands, plug out, its end hung up where no water runs.',
  'steps.unplug.towels': 'Towels and a tray under it.',
  'steps.unplug.say': 'It is unplugged',
  'steps.thaw.title': ({ name }: Name, f) => `Let the ice melt: ${f.say(name)}.`,
  'steps.thaw.open': 'Door open; wring out the towels now and then.',
  'steps.thaw.no-tools': 'Take ice off by hand only: no knife, no flame, no heater.',
  'steps.thaw.say': 'The ice is off',
  'steps.thaw.timer': ({ name }: Name, f) => `Look at the ice: ${f.say(name)}`,
  'steps.switch-on.title': ({ name }: Name, f) => `Switch on again: ${f.say(name)}.`,
  'steps.switch-on.dry': 'Wipe it dry inside, dry your hands, then plug in.',
  'steps.switch-on.chilled': (_: unknown, f) =>
    `Food goes back when a thermometer inside shows ${f.measure(5, '°C')} or less.`,
  'steps.switch-on.frozen': (_: unknown, f) =>
    `Food goes back when a thermometer inside shows ${f.measure(-15, '°C')} or less.`,
  'steps.switch-on.say': 'It runs',

  'steps.rest.title-nothing-hot': ({ name, until }: Name & Until, f) =>
    `${f.say(name)}: nothing hot in it or on it${untilText(until, f)}.`,
  'steps.rest.title-sink': ({ name, until }: Name & Until, f) =>
    `${f.say(name)}: cold water only${untilText(until, f)}.`,
  'steps.rest.label': ({ until }: Until, f) =>
    `Put up: RESTING, do not heat${until ? `, until ${f.say(until)}` : ''}.`,
  'steps.rest.detail':
    'No hot use and no hot cleaning until its time is up. If in doubt, say so: the rest begins again.',
  'steps.rest.from-last-hot': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `Planned from its last hot use, ${f.moment(wallMs, zone)}: confirm that in the run. Until then the whole rest counts from its cleaning.`,
  'steps.rest.timer': ({ name }: Name, f) => `Rest: ${f.say(name)}`,
  'steps.rest.timer-short': 'Rest',

  'steps.cool.title': ({ name }: Name, f) => `Let it cool untouched: ${f.say(name)}.`,
  'steps.cool.wait': ({ name }: Name, f) => `Until it is safe to touch: ${f.say(name)}`,
  'steps.cool.wait-short': 'Hot: until it is safe to touch',
  'steps.cool.slow-end': 'The clock takes the longest it may need. It proves nothing by itself.',
  'steps.cool.test.lamp':
    'Then look at the residual-heat lamp of the hob: it must be out. Hold the back of the hand above, not on it.',
  'steps.cool.test.drop':
    'Then hold the back of the hand above, not on it. Let one drop of water fall on it: it must not hiss.',
  'steps.cool.test.drop-in-oven':
    'Then open the door, stand aside, and hold the back of the hand inside without touching. Let one drop of water fall on the floor of the oven: it must not hiss.',
  'steps.cool.not-over': 'Not while a burner in front of it is lit or hot: try that one first.',
  'steps.cool.lamp-dead':
    'A lamp that never came on proves nothing: let one drop of water fall on the glass, it must not hiss. Write a note.',
  'steps.cool.still-hot.lamp': 'Lamp on, or heat felt? Add time to the clock and leave it.',
  'steps.cool.still-hot.drop': 'A hiss, or heat felt? Add time to the clock and leave it.',
  'steps.cool.say.lamp': 'Lamp out, no heat felt',
  'steps.cool.say.drop': 'No hiss, no heat felt',
  'steps.cool.say.drop-in-oven': 'No hiss, no heat felt inside',

  'steps.parts.take-out': ({ parts }: { parts: readonly Message[] }, f) =>
    `Out for good, new ones go in at the end: ${f.list(parts.map((part) => f.say(part)))}.`,
  'steps.parts.until-new': ({ part }: { part: Message }, f) =>
    `Clean and back in for the heat, new ones after it: ${f.say(part)}.`,
  'steps.parts.pour-over': ({ part }: { part: Message }, f) => `With it: ${f.say(part)}.`,
  'steps.parts.into-cycle': ({ part, fixture }: { part: Message; fixture: string }, f) =>
    `Put in, where its maker allows it: ${f.say(part)} of ${fixture}.`,
  'steps.parts.heat': (
    { part, fixture, lengthS }: { part: Message; fixture: string; lengthS: number },
    f,
  ) => `Heat at the highest setting, ${f.duration(lengthS)}: ${f.say(part)} of ${fixture}.`,
  'steps.parts.fire': (
    { part, fixture, lengthS }: { part: Message; fixture: string; lengthS: number },
    f,
  ) => `Bring to a glow by fire, ${f.duration(lengthS)}: ${f.say(part)} of ${fixture}.`,
  'steps.parts.boiling': ({ part, fixture }: { part: Message; fixture: string }, f) =>
    `Boiling water over every spot: ${f.say(part)} of ${fixture}.`,
  'steps.parts.title': ({ fixture }: { fixture: string }) => `Put the new parts in: ${fixture}.`,
  'steps.parts.title-cover': ({ fixture }: { fixture: string }) =>
    `Cover the rest of it: ${fixture}.`,
  'steps.parts.new': ({ part }: { part: Message }, f) => `New: ${f.say(part)}.`,
  'steps.parts.cover': ({ part }: { part: Message }, f) => `Cover: ${f.say(part)}.`,
  'steps.parts.cold': 'Only when all of it is cold to the touch.',
  'steps.parts.say': 'They are in',

  'steps.cover.title': ({ fixture }: { fixture: string }) => `Cover: ${fixture}.`,
  'steps.line.title': ({ fixture }: { fixture: string }) => `Line: ${fixture}.`,
  'steps.cover.with': ({ material }: { material: Message }, f) => `With ${f.say(material)}.`,
  'steps.cover.with-area': ({ material, areaM2 }: { material: Message; areaM2: number }, f) =>
    `With ${f.say(material)}. About ${f.shortMeasure(areaM2, 'm²')}.`,
  'steps.cover.put-in': 'Clean, dry and cold first.',
  'steps.cover.taped': 'Clean, dry and cold first; tape the edges so that nothing slips under.',
  'steps.cover.say': 'It is covered',

  'steps.mark.title': 'Mark the meat, dairy and neutral places.',
  'steps.mark.meat': ({ fixture }: { fixture: string }) => `${fixture}: meat`,
  'steps.mark.dairy': ({ fixture }: { fixture: string }) => `${fixture}: dairy`,
  'steps.mark.pareve': ({ fixture }: { fixture: string }) => `${fixture}: pareve (neutral)`,
  'steps.mark.undecided': ({ fixture }: { fixture: string }) =>
    `${fixture}: meat, dairy or neutral?`,
  'steps.mark.out-of-use': ({ fixture }: { fixture: string }) =>
    `${fixture}: keep out of use until it has been asked about`,
  'steps.mark.say': 'All is marked',

  'steps.open-question': ({ ask, untilThen }: { ask: Message; untilThen: Message }, f) =>
    `Not answered yet: ${f.say(ask)} Until then: ${f.say(untilThen)}`,
} satisfies Section;
