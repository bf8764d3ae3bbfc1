import type { Formatter, Message, Section } from '../../model/message.ts';
import { ended, range, unended, type At, type Times } from './phrases.ts';

/** "Sunday 1 March 2026, 10:00": a record is read years later. */
function fullMoment({ wallMs, zone }: At, f: Formatter): string {
  return `${f.date(wallMs, zone)}, ${f.clock(wallMs, zone)}`;
}

function places(count: number, f: Formatter): string {
  return `${f.number(count)} ${f.plural(count, { one: 'place', other: 'places' })}`;
}

/** What somebody gave as the reason, as a sentence of its own. */
function because(reason: string): string {
  return reason === '' ? '' : ` ${ended(reason)}`;
}

/** "Sink: ", or nothing where it is about no one place. */
function at(name: string): string {
  return name === '' ? '' : `${name}: `;
}

/** The first page of a record: its head, what it lacks, a row a place. */
export const summary = {
  'report.head.title': ({ kitchen }: { kitchen: string }) => `${kitchen}: what was done`,
  'report.head.begun': (moment: At, f) => `Begun: ${fullMoment(moment, f)}`,
  'report.head.ended': ({ outcome, ...moment }: At & { outcome: Message }, f) =>
    `Ended: ${fullMoment(moment, f)}, ${f.say(outcome)}`,
  'report.head.stands': ({ outcome, ...moment }: At & { outcome: Message }, f) =>
    `As of ${fullMoment(moment, f)}: ${f.say(outcome)}`,
  'report.verdict': (
    {
      isOpen,
      purged,
      toPurge,
      notPurged,
      covered,
      cleaned,
      closedUp,
      notDone,
    }: {
      isOpen: boolean;
      purged: number;
      toPurge: number;
      notPurged: readonly string[];
      covered: number;
      cleaned: number;
      closedUp: number;
      notDone: readonly string[];
    },
    f,
  ) => {
    const main = `${f.number(purged)} of ${places(toPurge, f)} purged${isOpen ? ' so far' : ''}`;
    const not = notPurged.length === 0 ? '' : `; not purged: ${f.list(notPurged)}`;
    const others = [
      ...(covered === 0 ? [] : [`${f.number(covered)} covered or lined`]),
      ...(cleaned === 0 ? [] : [`${f.number(cleaned)} cleaned`]),
      ...(closedUp === 0 ? [] : [`${f.number(closedUp)} closed up`]),
    ];
    const beside = others.length === 0 ? '' : ` Besides: ${others.join(', ')}.`;
    const undone = notDone.length === 0 ? '' : ` Not finished: ${f.list(notDone)}.`;
    return `${main}${not}.${beside}${undone}`;
  },
  'report.app': ({ app }: { app: string }) => `Begun in Glowpour ${app}.`,
  'report.digest': ({ digest }: { digest: string }) => `Digest of the run: ${digest}`,
  'report.digest.check':
    'The first 16 digits of the SHA-256 of the saved run file. Bring that file in on any tablet: its record shows the same digits. They differ when one entry was changed.',

  'report.section.lacks': 'Left out, stopped or in doubt',
  'report.section.answers': 'Questions and answers',
  'report.lack.none': 'Nothing planned was left out, stopped or left in doubt.',
  'report.lack.steps': (
    {
      name,
      steps,
      many,
      planned,
      outcome,
      reason,
    }: {
      name: string;
      steps: readonly Message[];
      many: number;
      planned: number;
      outcome: Message;
      reason: Message;
    },
    f,
  ) => {
    const named = steps.map((step) => `“${unended(f.say(step))}”`);
    const more = many - steps.length;
    const what = more === 0 ? f.list(named) : `${named.join(', ')} and ${f.number(more)} more`;
    const share = planned === 0 ? '' : `not purged (${f.number(many)} of ${f.number(planned)}). `;
    return `${at(name)}${share}${what} ${f.say(outcome)}.${because(f.say(reason))}`;
  },
  'report.section.utensils': 'Utensils',
  'report.utensils.line': ({ told, items }: { told: Message; items: readonly Message[] }, f) =>
    `${f.say(told)} ${f.list(items.map((item) => f.say(item)))}.`,
  'report.lack.utensils': (
    {
      step,
      items,
      outcome,
      reason,
    }: { step: Message; items: readonly Message[]; outcome: Message; reason: Message },
    f,
  ) =>
    `${f.list(items.map((item) => f.say(item)))}: not purged. “${unended(f.say(step))}” ${f.say(outcome)}.${because(f.say(reason))}`,
  'report.lack.rest': (
    {
      name,
      provedS,
      neededS,
      outcome,
      reason,
    }: { name: string; provedS: number; neededS: number; outcome: Message; reason: Message },
    f,
  ) =>
    `${name}: rest ${f.say(outcome)}${neededS === 0 ? '' : `, ${f.duration(provedS, 'down')} of ${f.duration(neededS, 'down')} proved`}.${because(f.say(reason))}`,
  'report.lack.hold': (
    {
      name,
      label,
      provedS,
      neededS,
      isShort,
      unproved,
      wordS,
      why,
    }: {
      name: string;
      label: Message;
      provedS: number;
      neededS: number;
      isShort: boolean;
      unproved: boolean;
      wordS: number;
      why: readonly string[];
    },
    f,
  ) => {
    const told = [
      ...(isShort
        ? [`${f.duration(provedS, 'down')} of ${f.duration(neededS, 'down')} proved`]
        : []),
      ...(wordS === 0 ? [] : [`${f.duration(wordS, 'down')} on a person’s word`]),
      ...(unproved ? ['nobody saw what happened in a gap'] : []),
    ];
    return `${name}: ${f.say(label)}, ${told.join('; ')}.${because(why.join('; '))}`;
  },
  'report.lack.unreached': ({ name, areaCm2 }: { name: string; areaCm2: number }, f) =>
    `${name}: ${f.measure(areaCm2, 'cm²')} are out of reach of an arm and were not poured over.`,
  'report.lack.cold': ({ name, poured, cold }: { name: string; poured: number; cold: number }, f) =>
    `${name}: cold water confirmed after ${f.number(cold)} of ${f.number(poured)} kettles.`,
  'report.lack.overridden': (
    { name, ask, reason }: { name: string; ask: Message; reason: string },
    f,
  ) => `${at(name)}“${f.say(ask)}” was overridden.${because(reason)}`,
  'report.lack.fault': (
    { name, fault, wallMs, zone, end }: At & { name: string; fault: Message; end: Message },
    f,
  ) => `${at(name)}${f.say(fault)}, ${f.dateTime(wallMs, zone)}. ${f.say(end)}`,
  'report.lack.questions': ({ count }: { count: number }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'question was', other: 'questions were' })} open when the plan was made; the stricter way was taken.`,
  'report.lack.gaps': ({ count, unprovedS }: { count: number; unprovedS: number }, f) =>
    `The tablet was off, asleep or its clock was set ${f.plural(count, { one: 'once', other: `${f.number(count)} times` })}, together ${f.duration(unprovedS, 'down')}.`,
  'report.lack.alarms': ({ late, silent }: { late: number; silent: number }, f) =>
    `Alarms: ${f.number(late)} told late, ${f.number(silent)} could not sound.`,
  'report.lack.storage': ({ lengthS }: { lengthS: number }, f) =>
    `For ${f.duration(lengthS)} nothing could be written down.`,

  'report.said-about': ({ name, said }: { name: string; said: Message }, f) =>
    `${name}: ${f.say(said)}`,
  'report.said-row': (
    {
      names,
      method,
      minutes,
      saidBy,
      saidOn,
      why,
    }: {
      names: readonly string[];
      method: Message;
      minutes: number;
      saidBy: string;
      saidOn: string;
      why: string;
    },
    f,
  ) =>
    `${f.list(names)}: said by ${saidBy} on ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}. ${ended(why)}`.trim(),
  'report.unanswered': (
    { fixture, ask, untilThen }: { fixture: string; ask: Message; untilThen: Message },
    f,
  ) => `${fixture}: ${f.say(ask)} Not answered. Planned: ${ended(f.say(untilThen))}`,

  'report.row.method': (
    {
      method,
      isMeant,
      cover,
      term,
    }: { method: Message; isMeant: boolean; cover: boolean; term?: Message },
    f,
  ) =>
    `${isMeant ? 'Planned: ' : ''}${f.say(method)}${term ? ` (${f.say(term)})` : ''}${cover ? ', then covered' : ''}`,
  'report.row.kettles': ({ poured, planned }: { poured: number; planned: number }, f) =>
    poured === planned
      ? `${f.number(poured)} ${f.plural(poured, { one: 'kettle', other: 'kettles' })}`
      : `${f.number(poured)} of ${f.number(planned)} kettles`,
  'report.row.heat': (
    { label, provedS, times }: { label: Message; provedS: number; times: number },
    f,
  ) =>
    `${f.say(label)} ${f.duration(provedS, 'down')}${times === 1 ? '' : `, ${f.number(times)} times`}`,
  'report.row.by': ({ who }: { who: readonly Message[] }, f) =>
    `by ${f.list(who.map((one) => f.say(one)))}`,
  'report.by.lead': 'whoever leads the work',
  'report.by.helper': ({ number }: { number: number }, f) => `helper ${f.number(number)}`,
  'report.row.when': ({ fromWallMs, toWallMs, zone }: Times, f) =>
    f.day(fromWallMs, zone) === f.day(toWallMs, zone)
      ? `${f.dateTime(fromWallMs, zone)}–${f.clock(toWallMs, zone)}`
      : range({ fromWallMs, toWallMs, zone }, f),
  'report.row.rested': ({ provedS, ...times }: Times & { provedS: number }, f) =>
    `${range(times, f)} (${f.duration(provedS, 'down')})`,
  'report.row.resting': ({ wallMs, zone, provedS }: At & { provedS: number }, f) =>
    `since ${f.dateTime(wallMs, zone)} (${f.duration(provedS, 'down')})`,
  'report.row.source': ({ source, state }: { source: Message; state: Message }, f) =>
    `${f.say(source)} (${f.say(state)})`,
  'report.row.voided': ({ count }: { count: number }, f) =>
    `${f.number(count)} ${f.plural(count, { one: 'kettle', other: 'kettles' })} before did not count.`,
  'report.row.question': 'Its question was open: see below.',
} satisfies Section;
