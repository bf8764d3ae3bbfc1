import type { Formatter, Message, Section } from '../model/message.ts';

const S_DAY = 86_400;
const S_HOUR = 3600;
const S_MINUTE = 60;

type Moment = { wallMs: number; zone: string };

/** "Friday evening 17:33"; what is after midnight belongs to the day that began then. */
function when({ wallMs, zone }: Moment, f: Formatter): string {
  const clock = f.clock(wallMs, zone);
  const hour = Number(clock.slice(0, 2));
  const weekday = f.weekday(wallMs, zone);
  if (hour < 5) return `early ${weekday} ${clock}`;
  const part = hour < 12 ? 'morning' : hour < 18 ? 'afternoon' : hour < 23 ? 'evening' : 'night';
  return `${weekday} ${part} ${clock}`;
}

/** A second moment without its day where that is the same. */
function until(wallMs: number, { wallMs: fromWallMs, zone }: Moment, f: Formatter): string {
  const isSame = f.day(wallMs, zone) === f.day(fromWallMs, zone);
  return isSame ? f.clock(wallMs, zone) : when({ wallMs, zone }, f);
}

/** "51 h", "3 h 10 min", "12 days": the longer, the rounder. */
function lengthText(lengthS: number, f: Formatter): string {
  const days = Math.floor(lengthS / S_DAY);
  if (days >= 4) return `${f.number(days)} days`;
  return f.duration(lengthS - (lengthS % (lengthS < S_DAY ? S_MINUTE : S_HOUR)), 'down');
}

/** The course of a plan: its picture, its head, and the step that is pressed. */
export const planCourse = {
  'plan-page.course.about':
    'The course of the plan: who does what, and what rests, heats and cools. Arrow keys go from bar to bar, Enter opens one. The list of steps below says the same.',
  'plan-page.course.day': ({ wallMs, zone }: Moment, f) => f.day(wallMs, zone),
  'plan-page.course.weekday': ({ wallMs, zone }: Moment, f) => f.weekday(wallMs, zone),
  'plan-page.course.short-weekday': ({ wallMs, zone }: Moment, f) => f.shortWeekday(wallMs, zone),
  'plan-page.course.hour': ({ wallMs, zone }: Moment, f) => f.clock(wallMs, zone),
  'plan-page.course.part.morning': 'morning',
  'plan-page.course.part.afternoon': 'afternoon',
  'plan-page.course.part.evening': 'evening',
  'plan-page.course.part.night': 'night',
  'plan-page.course.does.prepare': 'getting ready',
  'plan-page.course.does.clean': 'cleaning',
  'plan-page.course.does.water': 'pouring',
  'plan-page.course.does.heat': 'heating',
  'plan-page.course.does.finish': 'finishing',
  'plan-page.course.until': (at: Moment, f) => `until ${when(at, f)}`,
  'plan-page.course.until.weekday': ({ wallMs, zone }: Moment, f) =>
    `until ${f.weekday(wallMs, zone)} ${f.clock(wallMs, zone)}`,
  'plan-page.course.until.short': ({ wallMs, zone }: Moment, f) =>
    `until ${f.shortMoment(wallMs, zone)}`,
  'plan-page.course.until.rest': (at: Moment, f) => `rests until ${when(at, f)}`,
  'plan-page.course.until.thaw': (at: Moment, f) => `thaws until ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.heat': (at: Moment, f) => `hot until ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.cool': (at: Moment, f) => `cools until ${f.clock(at.wallMs, at.zone)}`,
  'plan-page.course.until.water': (
    { wallMs, fromWallMs, zone }: Moment & { fromWallMs: number },
    f,
  ) => `water ${f.clock(fromWallMs, zone)}–${f.clock(wallMs, zone)}`,
  'plan-page.course.bar': (
    {
      who,
      what,
      more,
      toWallMs,
      ...from
    }: Moment & {
      who: string;
      what: Message;
      more: number;
      toWallMs: number;
    },
    f,
  ) =>
    `${who === '' ? '' : `${who}: `}${f.say(what)}${more > 0 ? ` and ${f.number(more)} more` : ''}, ${when(from, f)} to ${until(toWallMs, from, f)}`,
  'plan-page.course.steps': ({ many }: { many: number }, f) =>
    `${f.number(many)} steps of one piece of work`,
  'plan-page.course.at': (
    { toWallMs, who, ...from }: Moment & { toWallMs: number; who: string },
    f,
  ) => `${f.capital(when(from, f))} to ${until(toWallMs, from, f)}${who === '' ? '' : `, ${who}`}.`,
  'plan-page.course.slack': (at: Moment, f) => `Nothing waits for it before ${when(at, f)}.`,
  'plan-page.course.ends': (at: Moment, f) => `ends ${when(at, f)}`,
  'plan-page.course.ends-sure': ({ sureWallMs, ...at }: Moment & { sureWallMs: number }, f) =>
    `ends ${when(at, f)}; nine times in ten by ${until(sureWallMs, at, f)}`,
  'plan-page.course.due': (at: Moment, f) => `done by ${when(at, f)}`,
  'plan-page.course.due-purged': (at: Moment, f) => `purged by ${when(at, f)}`,
  'plan-page.course.late': ({ lateS }: { lateS: number }, f) => `${lengthText(lateS, f)} too late`,
  'plan-page.course.key.hands': 'hands at work',
  'plan-page.course.key.rest': 'rests',
  'plan-page.course.key.heat': 'heats',
  'plan-page.course.key.cool': 'cools',
  'plan-page.course.key.water': 'boiling water',
  'plan-page.course.key.thaw': 'thaws',
  'plan-page.course.key.watch': 'watches what glows',
  'plan-page.course.key.chain': 'decides the end',
  'plan-page.course.key.slack': 'may take longer',
  'plan-page.course.cut': ({ name, ...at }: Moment & { name: Message }, f) =>
    `${f.say(name)}, ${when(at, f)}`,
  'plan-page.course.gone': 'not possible any more',
  'plan-page.course.key.due': 'the hour it must be done by',
  'plan-page.course.key.late': 'too late',
  'plan-page.course.key.night': 'Nights and days of rest are drawn narrower.',

  'plan-page.head.ends': ({ wallMs, zone, lengthS }: Moment & { lengthS: number }, f) =>
    `Ends ${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)}; ${lengthText(lengthS, f)} from the start.`,
  'plan-page.head.in-time': (
    { wallMs, zone, spareS, purge }: Moment & { spareS: number; purge: boolean },
    f,
  ) =>
    `In time: ends ${f.day(wallMs, zone)}, ${f.clock(wallMs, zone)}; ${purge ? 'purged' : 'done'} ${lengthText(spareS, f)} before its hour.`,
  'plan-page.head.late': (
    {
      doneWallMs,
      dueWallMs,
      zone,
      lateS,
      purge,
    }: { doneWallMs: number; dueWallMs: number; zone: string; lateS: number; purge: boolean },
    f,
  ) =>
    `Too late by ${lengthText(lateS, f)}: ${purge ? 'purged' : 'done'} ${f.day(doneWallMs, zone)}, ${f.clock(doneWallMs, zone)}. Its hour is ${f.day(dueWallMs, zone)}, ${f.clock(dueWallMs, zone)}.`,
  'plan-page.head.cut': (
    { name, many, of, ...at }: Moment & { name: Message; many: number; of: number },
    f,
  ) =>
    `Too late for ${f.number(many)} of ${f.plural(of, { one: '1 place', other: `${f.number(of)} places` })}: nothing is purged after ${f.say(name)}, ${f.day(at.wallMs, at.zone)}, ${f.clock(at.wallMs, at.zone)}.`,
  'plan-page.head.close-up': ({ fixtures }: { fixtures: readonly string[] }, f) =>
    `Not possible any more. Clean, close up and keep out of use over Passover: ${f.list(fixtures)}. Ask first.`,
  'plan-page.head.free': (
    { spans, people, more }: { spans: readonly Message[]; people: number; more: boolean },
    f,
  ) =>
    `${people > 1 ? 'All are' : 'You are'} free ${f.list(spans.map((one) => f.say(one)))}${more ? ', and later' : ''}.`,
  'plan-page.head.why': 'Why, and what it means',
  'plan-page.head.free.span': ({ toWallMs, ...from }: Moment & { toWallMs: number }, f) =>
    `from ${when(from, f)} to ${until(toWallMs, from, f)}`,
  'plan-page.head.never-free': 'There are no long free hours between the first step and the last.',
} satisfies Section;
