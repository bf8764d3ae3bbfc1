import type { Message, Section } from '../../../model/message.ts';

type Names = { names: readonly string[] };
type Clock = { wallMs: number; zone: string };

/** When hands are free, what runs until when, and the sheet of one clock. */
export const days = {
  'run.days.free': ({ from, until }: { from: Message; until: Message }, f) =>
    `Hands are free from ${f.say(from)} to ${f.say(until)}.`,
  'run.days.free-now': ({ until }: { until: Message }, f) =>
    `Hands are free now, to ${f.say(until)}.`,
  'run.days.all-over': ({ at }: { at: Message }, f) => `All is expected to be over ${f.say(at)}.`,
  'run.days.at.today': ({ wallMs, zone }: Clock, f) => `today ${f.clock(wallMs, zone)}`,
  'run.days.at.tonight': ({ wallMs, zone }: Clock, f) => `tonight ${f.clock(wallMs, zone)}`,
  'run.days.at.tomorrow': ({ wallMs, zone }: Clock, f) => `tomorrow ${f.clock(wallMs, zone)}`,
  'run.days.at.weekday': ({ wallMs, zone }: Clock, f) => f.moment(wallMs, zone),
  'run.days.by-itself': 'What runs by itself',
  'run.days.until': 'Until when',
  'run.days.wait': ({ label, names }: { label: Message; names: readonly Message[] }, f) =>
    names.length === 0
      ? f.say(label)
      : `${f.say(label)}: ${names.map((name) => f.say(name)).join(', ')}`,
  'run.days.waits': ({ waits }: { waits: readonly Message[] }, f) =>
    waits.map((wait) => f.say(wait)).join('; '),
  'run.meanwhile': 'Meanwhile: eating, washing, something hot',
  'run.meanwhile.need.eat': 'Eat',
  'run.meanwhile.need.wash': 'Wash',
  'run.meanwhile.need.heat': 'Boil and heat',
  'run.meanwhile.free': ({ names }: Names, f) => `Purged or covered: ${f.list(names)}.`,
  'run.meanwhile.before': ({ names }: Names, f) =>
    `As before, until it is cleaned: ${f.list(names)}.`,
  'run.meanwhile.cold': ({ names }: Names, f) =>
    `Cold only, one hot use and its rest begins again: ${f.list(names)}.`,
  'run.meanwhile.not-now': ({ names }: Names, f) => `Not now, hot or in work: ${f.list(names)}.`,
  'run.meanwhile.elsewhere': 'Nothing here may get hot: boil water and cook elsewhere.',
  'run.meanwhile.leaven': 'What is purged or covered is for Passover: no leaven on it.',
  'run.meanwhile.ask':
    'It is told by how far each place is. What food may be there, your custom says.',
  'run.days.in': ({ leftS }: { leftS: number }, f) => `in ${f.duration(leftS)}`,
  'run.days.rest-day': ({ day, from, to }: { day: Message; from: Message; to: Message }, f) =>
    `${f.say(day)} from ${f.say(from)} to ${f.say(to)}: nothing is asked of you then, and nothing sounds.`,
  'run.days.deadline': ({ name, when }: { name: Message; when: Message }, f) =>
    `${f.say(name)}: ${f.say(when)}`,
  'run.days.deadline-passed': ({ name, when }: { name: Message; when: Message }, f) =>
    `${f.say(name)}: ${f.say(when)}. It has passed.`,
  'run.days.work.region': 'What hands can do',
  'run.days.work': 'What can be done when',
  'run.days.work.about': 'The earliest times, by what each step waits for; hands may need longer.',
  'run.days.work.line': ({ work, steps }: { work: Message; steps: number }, f) =>
    steps === 1
      ? f.say(work)
      : `${f.say(work)}, ${f.number(steps)} ${f.plural(steps, { one: 'step', other: 'steps' })}`,
  'run.days.work.at': ({ phase, name }: { phase: Message; name: string }, f) =>
    `${f.say(phase)}: ${name}`,
  'run.days.work.from': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    `from ${f.clock(wallMs, zone)}`,
  'run.days.work.more': ({ count }: { count: number }, f) => `and ${f.number(count)} more`,
  'run.days.now': 'Now',
  'run.days.next': 'After what is in hand',
  'run.days.today': 'Today',
  'run.days.tonight': 'Tonight',
  'run.days.tomorrow': 'Tomorrow',
  'run.days.weekday': ({ wallMs, zone }: { wallMs: number; zone: string }, f) =>
    f.day(wallMs, zone),

  'run.timer.over-at': ({ label, when }: { label: Message; when: Message }, f) =>
    `${f.say(label)}: until ${f.say(when)}`,
  'run.timer.over': ({ when, leftS }: { when: Message; leftS: number }, f) =>
    `Until ${f.say(when)}, ${f.duration(leftS)} more.`,
  'run.timer.was-earlier': 'It was last hot earlier',
  'run.timer.was-used': 'It was used',
  'run.timer.last-hot': 'It was last hot at',
  'run.timer.last-hot.why': 'How do you know? It goes into the record.',
  'run.timer.last-hot.about':
    'Only when you are sure. Hot cleaning counts as hot use. In doubt leave the rest as it is.',
  'run.timer.last-hot.press': 'Count from then',
  'run.timer.used.about': 'Its 24-hour rest starts again, and what came after is done again.',
  'run.timer.used.press': 'Begin the rest again',
} satisfies Section;
