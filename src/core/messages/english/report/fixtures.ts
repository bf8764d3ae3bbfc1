import type { Message, Section } from '../../model/message.ts';
import { after, attempt, ended, range, unended, type At, type Times } from './phrases.ts';

type Cooled = At & { cooledS: number };

/** What was done at each fixture, kettle by kettle. */
export const fixtures = {
  'report.fixture': ({ name, designation }: { name: string; designation: Message }, f) =>
    `${name} (${f.say(designation).toLowerCase()})`,
  'report.method.none': 'Method: none in this plan.',
  'report.method': (
    {
      method,
      minutes,
      cover,
      term,
      reason,
    }: { method: Message; minutes: number; cover: boolean; term?: Message; reason: Message },
    f,
  ) =>
    `Method: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${cover ? ', then cover' : ''}${term ? ` (${f.say(term)})` : ''}. ${ended(f.say(reason))}`,
  'report.source': ({ source, state }: { source: Message; state: Message }, f) =>
    `Source: ${f.say(source)} (${f.say(state)}).`,
  'report.replaces-row': ({ by }: { by: Message }, f) =>
    `Replaces the row of the custom, by the word of: ${ended(f.say(by))}`,
  'report.open-when-planned': ({ ask, untilThen }: { ask: Message; untilThen: Message }, f) =>
    `Open when planned: ${f.say(ask)} Until then: ${ended(f.say(untilThen))}`,
  'report.said': (
    {
      saidBy,
      saidOn,
      method,
      minutes,
      cover,
      text,
    }: {
      saidBy: string;
      saidOn: string;
      method: Message;
      minutes: number;
      cover: 'with' | 'without' | 'unsaid';
      text: string;
    },
    f,
  ) =>
    `Answer of ${saidBy}, ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${{ with: ', then cover', without: ', no cover after it', unsaid: '' }[cover]}. ${ended(text)}`.trim(),
  'report.result.all': 'Result: every planned step was done.',
  'report.result.part': 'Result: only some of the planned steps were done.',
  'report.result.none': 'Result: nothing of what was planned was done.',
  'report.result.nothing': 'Result: nothing was planned.',
  'report.rest': 'Rest',
  'report.hold': (
    {
      name,
      fromWallMs,
      toWallMs,
      zone,
      provedS,
      neededS,
      addedS,
      onWordS,
    }: {
      name: Message;
      fromWallMs: number;
      toWallMs: number;
      zone: string;
      provedS: number;
      neededS: number;
      addedS: number;
      onWordS: number;
    },
    f,
  ) => {
    const over = toWallMs > 0 ? `to ${f.dateTime(toWallMs, zone)}` : 'not over';
    const added = addedS > 0 ? `, ${f.duration(addedS, 'down')} of it added by hand` : '';
    const word =
      onWordS > 0 ? `; ${f.duration(onWordS, 'down')} of it rest on a person’s word` : '';
    return `${f.say(name)}: ${f.dateTime(fromWallMs, zone)} ${over}, ${f.duration(provedS, 'down')} proved (asked ${f.duration(neededS, 'down')}${added}${word}).`;
  },
  'report.hold.short': 'Shorter than asked.',
  'report.hold.unproved': 'Doubtful: nobody saw what happened in a gap.',
  'report.hold.dated': ({ text }: { text: string }) => `Dated by hand: ${ended(text)}`,
  'report.kettles': (
    {
      poured,
      planned,
      cold,
      voided,
    }: { poured: number; planned: number; cold: number; voided: number },
    f,
  ) => {
    const after =
      poured === 0
        ? ''
        : cold === poured
          ? ', cold water after each'
          : `, cold water after ${f.number(cold)}`;
    const lost =
      voided === 0
        ? ''
        : ` ${f.number(voided)} poured before ${f.plural(voided, { one: 'does', other: 'do' })} not count.`;
    return `Kettles poured: ${f.number(poured)} of ${f.number(planned)}${after}.${lost}`;
  },
  'report.recheck': ({ wallMs, zone, text }: At & { text: string }, f) =>
    `Doubt, ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.recheck.withdrawn': ({ wallMs, zone }: At, f) =>
    `Taken back as a mistake, ${f.dateTime(wallMs, zone)}; nothing else had happened since.`,
  'report.override': ({ wallMs, zone, ask, reason }: At & { ask: Message; reason: string }, f) =>
    `Confirmation overridden, ${f.dateTime(wallMs, zone)}: “${f.say(ask)}” Reason: ${ended(reason)}`,
  'report.override-run': (
    { wallMs, zone, ask, reason }: At & { ask: Message; reason: string },
    f,
  ) => `${f.dateTime(wallMs, zone)}: “${f.say(ask)}” Reason: ${ended(reason)}`,
  'report.fault': ({ wallMs, zone, name, text }: At & { name: Message; text: Message }, f) =>
    `Fault, ${f.dateTime(wallMs, zone)}: ${f.say(name)}${after(f.say(text))}.`,
  'report.fault-at': (
    { wallMs, zone, name, step, text }: At & { name: Message; step: Message; text: Message },
    f,
  ) =>
    `Fault, ${f.dateTime(wallMs, zone)}: ${f.say(name)} at “${f.say(step)}”${after(f.say(text))}.`,
  'report.fault.not-cleared': 'Not reported as put right.',
  'report.fault.cleared': ({ wallMs, zone }: At, f) => `Put right ${f.dateTime(wallMs, zone)}.`,
  'report.cooling.open': 'No word yet on how its cooling ended.',
  'report.cooling.clock': 'The clock of the cooling',
  'report.cooling.cooled': ({ wallMs, zone, cooledS }: Cooled, f) =>
    `Cooled and covered, by a person’s word ${f.dateTime(wallMs, zone)}: ${f.duration(cooledS, 'down')} of cooling seen.`,
  'report.cooling.taken-over': ({ wallMs, zone, cooledS }: Cooled, f) =>
    `A doctor or an ambulance took over ${f.dateTime(wallMs, zone)}, after ${f.duration(cooledS, 'down')} of cooling seen.`,
  'report.cooling.mistake': ({ wallMs, zone, cooledS }: Cooled, f) =>
    `Started by mistake, nobody was burned: said ${f.dateTime(wallMs, zone)}, after ${f.duration(cooledS, 'down')}.`,
  'report.steps': 'Steps:',
  'report.step': (
    { step, attempt, by }: { step: Message; attempt: Message; by: readonly Message[] },
    f,
  ) =>
    `${unended(f.say(step))}: ${f.say(attempt)}${by.length === 0 ? '' : ` By ${f.list(by.map((one) => f.say(one)))}.`}`,
  'report.step.void': ({ attempt, because }: { attempt: Message; because: Message }, f) =>
    `Does not count: ${f.say(attempt)} Done again because: ${ended(f.say(because))}`,
  'report.step.tried': ({ wallMs, zone, said }: At & { said: Message }, f) =>
    `Tried by hand, ${f.dateTime(wallMs, zone)}: ${ended(f.say(said))}`,
  'report.step.broke-off': (
    { wallMs, zone, stage, because }: At & { stage: Message; because: Message },
    f,
  ) => `Broke off, ${f.dateTime(wallMs, zone)}: “${f.say(stage)}” ${ended(f.say(because))}`,
  'report.step.proved': ({ provedS, neededS }: { provedS: number; neededS: number }, f) =>
    `${f.duration(provedS, 'down')} of ${f.duration(neededS, 'down')} proved.`,
  'report.attempt': (
    { outcome, reason, safe }: { outcome: Message; reason: Message; safe: boolean },
    f,
  ) => attempt(f.say(outcome), '', f.say(reason), safe),
  'report.attempt.since': (
    {
      outcome,
      wallMs,
      zone,
      reason,
      safe,
    }: At & { outcome: Message; reason: Message; safe: boolean },
    f,
  ) => attempt(f.say(outcome), `, since ${f.dateTime(wallMs, zone)}`, f.say(reason), safe),
  'report.attempt.from-to': (
    {
      outcome,
      reason,
      safe,
      ...times
    }: Times & { outcome: Message; reason: Message; safe: boolean },
    f,
  ) => attempt(f.say(outcome), `, ${range(times, f)}`, f.say(reason), safe),
  'report.outcome.done': 'done',
  'report.outcome.skipped': 'left out',
  'report.outcome.failed': 'failed',
  'report.outcome.stopped': 'stopped',
  'report.outcome.not-run': 'not begun',
  'report.outcome.open': 'begun, not over',
  'report.outcome.waiting': 'not begun',
  'report.outcome.void': 'broken off',
  'report.not-done': ({ step, outcome }: { step: Message; outcome: Message }, f) =>
    `${unended(f.say(step))}: ${f.say(outcome)}.`,
  'report.not-done-at': (
    { fixture, step, outcome }: { fixture: string; step: Message; outcome: Message },
    f,
  ) => `${fixture}: ${unended(f.say(step))}: ${f.say(outcome)}.`,

  'report.missing.not-purged': ({ step }: { step: Message }, f) =>
    `Not purged: ${unended(f.say(step))}.`,
  'report.missing.left-out': ({ step }: { step: Message }, f) =>
    `Left out: ${unended(f.say(step))}.`,
} satisfies Section;
