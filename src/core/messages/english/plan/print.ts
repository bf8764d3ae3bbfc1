import type { Formatter, Message, Section } from '../../model/message.ts';

type Band = { readonly low: number; readonly typical: number; readonly high: number };
type StepAt = { step: Message; lengthS: Band };
type Offset = { days: number; hours: number; minutes: number };

/** "T+1 day 02:10"; on the first day "T+02:10". */
function offset({ days, hours, minutes }: Offset): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const clock = `${two(hours)}:${two(minutes)}`;
  return days === 0 ? `T+${clock}` : `T+${days} ${days === 1 ? 'day' : 'days'} ${clock}`;
}

/** One number a line: what is exact as it is, an estimate in round figures. */
function lasts({ low, typical, high }: Band, f: Formatter): string {
  return low === high ? f.duration(typical) : f.about(typical);
}

/** The plan as plain text. */
export const print = {
  'plan.customs-differ':
    'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.',
  'plan.title': ({ kitchen }: { kitchen: string }) => `Plan for ${kitchen}`,
  'plan.for': (
    { purpose, custom, people }: { purpose: Message; custom: Message; people: number },
    f,
  ) =>
    `${f.say(purpose)}, custom: ${f.say(custom)}, ${f.number(people)} ${f.plural(people, { one: 'person', other: 'people' })}`,
  'plan.boils-at': ({ boilingC, low }: { boilingC: number; low: boolean }, f) =>
    `Water boils at ${f.measure(boilingC, '°C', 1)} here${low ? '; that is boiling' : ''}.`,
  'plan.done-earliest': ({ finishS }: { finishS: number }, f) =>
    `Done after ${f.duration(finishS)}, as early as it can be.`,
  'plan.done-after': ({ finishS, boundS }: { finishS: number; boundS: number }, f) =>
    `Done after ${f.duration(finishS)}; not before ${f.duration(boundS)} in any order of work.`,
  'plan.section.methods': 'Methods',
  'plan.section.questions': 'Questions to ask',
  'plan.section.notices': 'Before you start',
  'plan.section.shopping': 'To buy and gather',
  'plan.section.totals': 'Totals',
  'plan.section.days': 'Days',
  'plan.section.timetable': 'Timetable',
  'plan.section.gates': 'Confirmed once, before the work',
  'plan.section.work': 'How it is done',
  'plan.method': (
    {
      fixture,
      method,
      minutes,
      cover,
      term,
    }: {
      fixture: string;
      method: Message;
      minutes: number;
      cover: boolean;
      term?: Message;
    },
    f,
  ) =>
    `${fixture}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', then cover' : ''}${term ? ` (${f.say(term)})` : ''}`,
  'plan.method.source': (
    { source, state, wouldChange }: { source: Message; state: Message; wouldChange: Message },
    f,
  ) => `${f.say(source)} (${f.say(state)}). ${f.say(wouldChange)}`,
  'plan.method.times': ({ times }: { times: number }, f) =>
    `Poured ${f.number(times)} times over the whole of it.`,
  'plan.method.no-rest': 'No rest before it, by the word you were given.',
  'plan.method.stone': 'A hot piece of steel is moved over it while it is poured.',
  'plan.method.part.not-purged': 'Not purged: put nothing on it',
  'plan.method.part': (
    {
      part,
      method,
      minutes,
      reason,
      source,
      state,
    }: {
      part: Message;
      method: Message;
      minutes: number;
      reason: Message;
      source: Message;
      state: Message;
    },
    f,
  ) =>
    `${f.capital(f.say(part))}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${f.say(reason)} ${f.say(source)} (${f.say(state)}).`,
  'plan.method.instead-of-row': ({ by }: { by: Message }, f) =>
    `In place of the custom’s row: ${f.say(by)}`,
  'plan.to-ask': ({ ask, untilThen }: { ask: Message; untilThen: Message }, f) =>
    `To ask: ${f.say(ask)} Until then: ${f.say(untilThen)}`,
  'plan.question.numbered': (
    { number, fixture, ask }: { number: number; fixture: string; ask: Message },
    f,
  ) => `${f.number(number)}. ${fixture}: ${f.say(ask)}`,
  'plan.question.until-then': ({ untilThen }: { untilThen: Message }, f) =>
    `Until then: ${f.say(untilThen)}`,
  'plan.buy': ({ name, amount, why }: { name: Message; amount: Message; why: Message }, f) =>
    `${f.say(name)}: ${f.say(amount)}. ${f.say(why)}`,
  'plan.total.hot': ({ hotL, kettles }: { hotL: Band; kettles: Band }, f) =>
    `Boiling water: about ${f.measure(hotL.typical, 'L')}, ${f.number(kettles.typical)} ${f.plural(kettles.typical, { one: 'kettle', other: 'kettles' })}`,
  'plan.total.cold': ({ coldL }: { coldL: Band }, f) =>
    `Cold water after it: about ${f.measure(coldL.typical, 'L')}`,
  'plan.total.electricity': ({ kWh }: { kWh: number }, f) =>
    `Electricity: about ${f.number(kWh, 1)} kWh`,
  'plan.total.gas': ({ kWh }: { kWh: number }, f) => `Gas: about ${f.number(kWh, 1)} kWh`,
  'plan.total.hands': ({ lengthS }: { lengthS: number }, f) =>
    `Work with the hands: ${f.about(lengthS)}`,
  'plan.day.begins': (
    { startWallMs, endWallMs, zone }: { startWallMs: number; endWallMs: number; zone: string },
    f,
  ) => `Begins ${f.moment(startWallMs, zone)}, done ${f.moment(endWallMs, zone)} (${zone})`,
  'plan.day.rest': (
    {
      day,
      fromWallMs,
      toWallMs,
      zone,
    }: {
      day: Message;
      fromWallMs: number;
      toWallMs: number;
      zone: string;
    },
    f,
  ) =>
    `${f.say(day)}: ${f.moment(fromWallMs, zone)} to ${f.moment(toWallMs, zone)}; nothing is planned in it`,
  'plan.day.deadline': (
    { name, wallMs, zone }: { name: Message; wallMs: number; zone: string },
    f,
  ) => `${f.say(name)}: ${f.moment(wallMs, zone)}`,
  'plan.day.date': ({ wallMs, zone }: { wallMs: number; zone: string }, f) => f.day(wallMs, zone),
  'plan.day.number': ({ day }: { day: number }, f) => `Day ${f.number(day)}`,
  'plan.step.clock': (
    { wallMs, zone, step, lengthS }: StepAt & { wallMs: number; zone: string },
    f,
  ) => `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.clock-itself': (
    { wallMs, zone, step, lengthS }: StepAt & { wallMs: number; zone: string },
    f,
  ) => `${f.clock(wallMs, zone)}  ${f.say(step)}  [${lasts(lengthS, f)}, starts by itself]`,
  'plan.step.offset': ({ days, hours, minutes, step, lengthS }: StepAt & Offset, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.step.offset-itself': ({ days, hours, minutes, step, lengthS }: StepAt & Offset, f) =>
    `${offset({ days, hours, minutes })}  ${f.say(step)}  [${lasts(lengthS, f)}, starts by itself]`,
  'plan.step.untimed': ({ step, lengthS }: StepAt, f) =>
    `not timed  ${f.say(step)}  [${lasts(lengthS, f)}]`,
  'plan.work.timer': ({ timer, lengthS }: { timer: Message; lengthS: number }, f) =>
    `${f.say(timer)}, ${f.duration(lengthS)}`,
  'plan.work.timer-about': ({ timer, lengthS }: { timer: Message; lengthS: number }, f) =>
    `after ${f.about(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-after': ({ timer, lengthS }: { timer: Message; lengthS: number }, f) =>
    `after ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.timer-every': ({ timer, lengthS }: { timer: Message; lengthS: number }, f) =>
    `every ${f.duration(lengthS)}: ${f.say(timer)}`,
  'plan.work.stage': ({ stage, timers }: { stage: Message; timers: readonly Message[] }, f) =>
    timers.length === 0
      ? f.say(stage)
      : `${f.say(stage)} [${timers.map((timer) => f.say(timer)).join('; ')}]`,
  'plan.work.caution': ({ signal, say }: { signal: Message; say: Message }, f) =>
    `${f.say(signal)}: ${f.say(say)}`,
  'plan.work.caution-after': ({ signal, say }: { signal: Message; say: Message }, f) =>
    `${f.say(signal)}, after it: ${f.say(say)}`,
  'plan.work.gate': ({ signal, say, ask }: { signal: Message; say: Message; ask: Message }, f) =>
    `${f.say(signal)}: ${f.say(say)} Confirm first: ${f.say(ask)}`,
  'plan.work.kettles': ({ fixture, kettles }: { fixture: string; kettles: number }, f) =>
    `${fixture}: ${f.number(kettles)} ${f.plural(kettles, { one: 'kettle', other: 'kettles' })} of boiling water, each followed by cold.`,
  'plan.work.pour-within': ({ withinS }: { withinS: number }, f) =>
    `The last drop falls within ${f.duration(withinS)} of boiling, else boil again.`,
  'plan.work.kettle-parts': ({ kettle, parts }: { kettle: number; parts: readonly Message[] }, f) =>
    `Kettle ${f.number(kettle)}: ${parts.map((part) => f.say(part)).join('; ')}`,
  'plan.work.kettle-lanes': ({ kettle, lengthM }: { kettle: number; lengthM: number }, f) =>
    `Kettle ${f.number(kettle)}: ${f.measure(lengthM, 'm', 1)} of lanes`,
  'plan.work.kettle-told': ({ kettle, told }: { kettle: number; told: readonly Message[] }, f) =>
    `Kettle ${f.number(kettle)}: ${told.map((one) => f.say(one)).join(' ')}`,

  'common.resource.hands': 'Hands',
  'common.resource.burners-lit': 'Burners lit',
  'common.resource.watch': 'Eyes',
  'common.resource.unit.shares': 'shares',
  'common.resource.unit.people': 'people',
  'common.resource.unit.burners': 'burners',
  'common.resource.unit.kettles': 'kettles',
  'common.resource.unit.amperes': 'A',
} satisfies Section;
