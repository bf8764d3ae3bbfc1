import type { Formatter, Message, Section } from '../model/message.ts';

type Moment = { readonly wallMs: number; readonly zone: string };
type Saved = {
  readonly endS: number;
  readonly inTime: boolean;
  readonly spanS: number;
  readonly kettles: number;
  readonly kWh: number;
};

/** Less than this is no difference to a person, s. */
const S_MINUTE = 60;
/** Nearer to the plan than this is as planned, s. */
const AS_PLANNED_S = 300;
/** Energy is told where its first decimal shows, kWh. */
const LEAST_KWH = 0.05;

/** "nearly always", "93 times in 100": never more sure than it is. */
function often(chance: number, f: Formatter): string {
  const percent = Math.floor(chance * 100);
  if (percent >= 99) return 'nearly always';
  return percent < 1 ? 'hardly ever' : `${f.number(percent)} times in 100`;
}

/** To the minute: a saving is no measurement. */
function inMinutes(lengthS: number, f: Formatter): string {
  return f.duration(Math.round(lengthS / S_MINUTE) * S_MINUTE);
}

function kettlesText(kettles: number, f: Formatter): string {
  const many = Math.abs(kettles);
  const word = f.plural(many, { one: 'kettle', other: 'kettles' });
  return `${f.number(many)} ${word} ${kettles > 0 ? 'fewer' : 'more'}`;
}

function savedText({ endS, inTime, spanS, kettles, kWh }: Saved, f: Formatter): string {
  const parts = [
    ...(inTime ? ['keeps the deadline'] : []),
    ...(endS >= S_MINUTE ? [`ends ${inMinutes(endS, f)} sooner`] : []),
    ...(endS < S_MINUTE && spanS >= S_MINUTE
      ? [`the same end, ${inMinutes(spanS, f)} shorter`]
      : []),
    ...(kettles === 0 ? [] : [kettlesText(kettles, f)]),
    ...(Math.abs(kWh) < LEAST_KWH
      ? []
      : [`${f.number(Math.abs(kWh), 1)} kWh ${kWh > 0 ? 'less' : 'more'}`]),
  ];
  return parts.join('; ');
}

/** What would help a plan, and how sure its end is. */
export const advice = {
  'advice.title': ({ kitchen }: { kitchen: string }) => `What would help: ${kitchen}`,
  'advice.heading': 'What would help',
  'advice.about':
    'Each is planned again with that one change. They do not add up: take one, then look again.',
  'advice.trying': ({ done, of }: { done: number; of: number }, f) =>
    `Plan ${f.number(done)} of ${f.number(of)} …`,
  'advice.stop': 'Stop',
  'advice.none': 'Nothing that was tried makes this plan better.',
  'advice.more': ({ many, triage }: { many: number; triage: boolean }, f) =>
    `${f.number(many)} more${triage ? ', and what can still be done in time' : ''}`,
  'advice.take': 'Take it',
  'advice.take.last-hot': 'It is so',
  'advice.take.said': 'Say who decided',
  'advice.taken': ({ change }: { change: Message }, f) => `Taken. ${f.say(change)}`,
  'advice.undo': 'Undo',
  'advice.line': ({ change, saved }: { change: Message; saved: Message }, f) =>
    `${f.say(change)} ${f.say(saved)}`,
  'advice.saves': (saved: Saved, f) => `${f.capital(savedText(saved, f))}.`,

  'advice.vessel.kettle': 'Second kettle',
  'advice.vessel.stove-kettle': 'Kettle on the stove',
  'advice.vessel.urn': 'Urn',
  'advice.change.kettle': ({ on, count }: { on: string; count: number }, f) =>
    `${count > 1 ? `${f.number(count)} kettles` : 'A second kettle'}${on === '' ? '' : `, plugged in at: ${on}`}.`,
  'advice.change.stove-kettle': ({ on }: { on: string }) =>
    `A kettle, or a pan that pours, on a burner that is purged by then: ${on}.`,
  'advice.change.urn': 'An urn.',
  'advice.change.people': ({ people }: { people: number }, f) =>
    `One more person: ${f.number(people)} in all.`,
  'advice.change.start': ({ wallMs, zone }: Moment, f) => `Begin ${f.moment(wallMs, zone)}.`,
  'advice.change.last-hot': ({ wallMs, zone }: Moment, f) =>
    `If nothing here was used hot since ${f.moment(wallMs, zone)}: rests count from then.`,
  'advice.change.answer': ({ fixture, answer }: { fixture: string; answer: Message }, f) =>
    `${fixture}, if the answer is: ${f.say(answer)}`,
  'advice.change.cover': ({ fixture }: { fixture: string }) =>
    `${fixture}: covered, not purged. Ask first.`,
  'advice.change.close': ({ fixture }: { fixture: string }) =>
    `${fixture}: closed up and not used, not purged.`,

  'advice.in-vain': ({ what }: { what: readonly Message[] }, f) =>
    `Tried, and saves nothing: ${what.map((one) => f.say(one)).join('; ')}.`,
  'advice.kind.kettle': 'a second kettle',
  'advice.kind.stove-kettle': 'a kettle on a purged burner',
  'advice.kind.urn': 'an urn (what is ladled from it is in a second vessel, so it does not pour)',
  'advice.kind.people': 'one more person',
  'advice.kind.start': 'beginning at another hour',
  'advice.kind.last-hot': 'the last hot use',
  'advice.kind.answer': 'an answer to a question',
  'advice.kind.cover': 'covering instead of purging',

  'advice.decided': ({ links }: { links: readonly Message[] }, f) =>
    `Longest on the way to the end: ${links.map((one) => f.say(one)).join('; ')}.`,

  'advice.outlook': (
    {
      wallMs,
      zone,
      aheadS,
      about,
    }: { wallMs: number; zone: string; aheadS: number; about: boolean },
    f,
  ) => {
    const end = `the work ends ${about ? 'about ' : ''}${f.moment(wallMs, zone)}.`;
    if (Math.abs(aheadS) < AS_PLANNED_S) return `As planned, ${end}`;
    const by = inMinutes(Math.abs(aheadS), f);
    return `You are ${by} ${aheadS > 0 ? 'ahead of' : 'behind'} the plan; ${end}`;
  },

  'advice.sure.heading': 'How sure the end is',
  'advice.sure.moment': (
    { endWallMs, wallMs, zone }: { endWallMs: number; wallMs: number; zone: string },
    f,
  ) =>
    `Planned to end ${f.moment(endWallMs, zone)}; nine times in ten by ${f.moment(wallMs, zone)}.`,
  'advice.sure.after': ({ endS, lengthS }: { endS: number; lengthS: number }, f) =>
    `Planned to end after ${f.duration(endS)}; nine times in ten after ${f.duration(lengthS, 'up')} at most.`,
  'advice.sure.due': ({ chance, isSure }: { chance: number; isSure: boolean }, f) =>
    `${isSure ? 'It' : 'Close: it'} keeps the deadline ${often(chance, f)}.`,
  'advice.sure.rest-day': (
    {
      day,
      wallMs,
      zone,
      chance,
      last,
      beginByWallMs,
    }: Moment & { day: Message; chance: number; last: Message; beginByWallMs: number },
    f,
  ) =>
    `Close: what is planned before ${f.say(day)}, ${f.moment(wallMs, zone)}, is done ${often(chance, f)}. Begin “${f.say(last).replace(/\.$/, '')}” by ${f.day(beginByWallMs, zone) === f.day(wallMs, zone) ? f.clock(beginByWallMs, zone) : f.moment(beginByWallMs, zone)}, or leave it for after.`,
  'advice.sure.rests-on': ({ plays }: { plays: number }, f) =>
    `By ${f.number(plays)} plays of this plan with slow and quick hands; faults and breaks are not in it.`,

  'advice.triage.heading': 'What can still be done in time',
  'advice.triage.kept': ({ fixtures }: { fixtures: readonly string[] }) =>
    `In this order: ${fixtures.join('; ')}.`,
  'advice.triage.none': 'Nothing that is purged.',
  'advice.triage.utensils': 'Utensils: put away and locked; they are purged another time.',
  'advice.triage.closed': ({ fixtures }: { fixtures: readonly string[] }) =>
    `Covered or closed up until there is time: ${fixtures.join('; ')}. Ask first.`,
} satisfies Section;
