import type { Formatter, Message, Section } from '../model/message.ts';

/** Ends a sentence that people may have ended already. */
function ended(text: string): string {
  const line = text.trim();
  return line === '' || /[.!?…:]$/u.test(line) ? line : `${line}.`;
}

/** Without the stop of a sentence, where something follows it. */
function unended(text: string): string {
  return text.replace(/\.$/, '');
}

/** What follows a colon, where there is something. */
function after(text: string): string {
  return text === '' ? '' : `: ${text}`;
}

type Times = { fromWallMs: number; toWallMs: number; zone: string };

function range({ fromWallMs, toWallMs, zone }: Times, f: Formatter): string {
  return `${f.dateTime(fromWallMs, zone)} to ${f.dateTime(toWallMs, zone)}`;
}

type At = { wallMs: number; zone: string };

/** What was done, as it is printed, saved and shown. */
export const report = {
  'report.title': ({ kitchen }: { kitchen: string }) => `Record: ${kitchen}`,
  'report.purpose': ({ purpose }: { purpose: Message }, f) => `Purpose: ${f.say(purpose)}`,
  'report.custom': ({ custom }: { custom: Message }, f) => `Custom: ${f.say(custom)}`,
  'report.planned': ({ wallMs, zone }: At, f) =>
    `Planned: ${f.dateTime(wallMs, zone)}. Not started.`,
  'report.started': ({ wallMs, zone }: At, f) => `Started: ${f.dateTime(wallMs, zone)}`,
  'report.stands': ({ wallMs, zone, outcome }: At & { outcome: Message }, f) =>
    `As it stands: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.closed': ({ wallMs, zone, outcome }: At & { outcome: Message }, f) =>
    `Closed: ${f.dateTime(wallMs, zone)}, ${f.say(outcome)}.`,
  'report.reason': ({ reason }: { reason: Message }, f) => `Reason: ${ended(f.say(reason))}`,
  'report.run.completed': 'completed',
  'report.run.failed': 'failed',
  'report.run.stopped': 'stopped before its end',
  'report.run.open': 'still going on',

  'report.section.general': 'Without a place of their own',
  'report.section.not-done': 'Not done',
  'report.section.not-done-yet': 'Not done yet',
  'report.section.overridden': 'Confirmations overridden for the whole run',
  'report.section.faults': 'Faults of no one place',
  'report.section.gaps': 'Gaps',
  'report.section.asked': 'Asked after gaps',
  'report.section.late': 'Told late',
  'report.section.silent': 'Alarms that could not sound',
  'report.section.paused': 'Paused',
  'report.section.storage': 'Nothing could be written down',
  'report.section.notes': 'Notes',
  'report.section.questions': 'Open when the plan was made',
  'report.section.assumed': 'Taken as usual, since nobody told',
  'report.section.standing': 'What stands whatever was done',

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
  'report.source': ({ source }: { source: Message }, f) => `Source: ${f.say(source)}.`,
  'report.source-unchecked': ({ source }: { source: Message }, f) =>
    `Source: ${f.say(source)} (cited from memory, not yet checked).`,
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
    `Said by ${saidBy} on ${saidOn}: ${f.say(method)}${minutes > 0 ? `, ${f.number(minutes)} min` : ''}${{ with: ', with a cover', without: ', without a cover', unsaid: '' }[cover]}. ${ended(text)}`.trim(),
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
    const void_ =
      voided === 0
        ? ''
        : ` ${f.number(voided)} poured before ${f.plural(voided, { one: 'does', other: 'do' })} not count.`;
    return `Kettles poured: ${f.number(poured)} of ${f.number(planned)}${after}.${void_}`;
  },
  'report.recheck': ({ wallMs, zone, text }: At & { text: string }, f) =>
    `Doubt, ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
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
  'report.steps': 'Steps:',
  'report.step': ({ step, attempt }: { step: Message; attempt: Message }, f) =>
    `${unended(f.say(step))}: ${f.say(attempt)}`,
  'report.step.void': ({ attempt, because }: { attempt: Message; because: Message }, f) =>
    `Does not count: ${f.say(attempt)} Done again because: ${ended(f.say(because))}`,
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

  'report.gap.not-running': ({ unprovedS, ...times }: Times & { unprovedS: number }, f) =>
    `${range(times, f)}: the app was not running, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.torn': ({ count }: { count: number }, f) =>
    `${f.number(count)} half-written ${f.plural(count, { one: 'entry was', other: 'entries were' })} dropped.`,
  'report.gap.slept-or-set': ({ unprovedS, ...times }: Times & { unprovedS: number }, f) =>
    `${range(times, f)}: the tablet slept or its clock was set forward, ${f.duration(unprovedS, 'down')}.`,
  'report.gap.set-back': ({ unprovedS, toWallMs, zone }: Times & { unprovedS: number }, f) =>
    `Until ${f.dateTime(toWallMs, zone)}: the tablet’s clock was set back by ${f.duration(unprovedS, 'down')}.`,
  'report.clock-asked': ({ wallMs, zone, answer }: At & { answer: Message }, f) =>
    `Does the tablet show the right time (${f.dateTime(wallMs, zone)})? ${f.say(answer)}.`,
  'report.review-asked': (
    { step, gapS, ask, answer }: { step: Message; gapS: number; ask: Message; answer: Message },
    f,
  ) => `${f.say(step)}, a gap of ${f.duration(gapS, 'down')}: ${f.say(ask)} ${f.say(answer)}.`,
  'report.answer.none': 'not answered',
  'report.answer': ({ answer, wallMs, zone }: At & { answer: Message }, f) =>
    `${f.say(answer)}, answered ${f.dateTime(wallMs, zone)}`,
  'report.answer.clock-right': 'yes',
  'report.answer.clock-wrong': 'no, the right time is not known',
  'report.answer.clock-corrected': ({ wallMs, zone }: At, f) =>
    `no, it was ${f.dateTime(wallMs, zone)}`,
  'report.answer.went-on': 'it went on',
  'report.answer.broke-off': 'it broke off',
  'report.answer.unknown': 'nobody saw',
  'report.late': (
    {
      step,
      timer,
      lateByS,
      wallMs,
      zone,
    }: At & {
      step: Message;
      timer: Message;
      lateByS: number;
    },
    f,
  ) =>
    `${f.say(step)}: “${f.say(timer)}” was told ${f.duration(lateByS, 'down')} late, ${f.dateTime(wallMs, zone)}.`,
  'report.silent': (
    { step, timer, text, wallMs, zone }: At & { step: Message; timer: Message; text: string },
    f,
  ) => `${f.dateTime(wallMs, zone)}: ${f.say(step)}, “${f.say(timer)}”. ${ended(text)}`,
  'report.paused': (times: Times, f) => `${range(times, f)}.`,
  'report.paused-since': ({ wallMs, zone }: At, f) => `since ${f.dateTime(wallMs, zone)}.`,
  'report.storage': ({ text, ...times }: Times & { text: string }, f) =>
    `${range(times, f)}: ${ended(text)}`,
  'report.storage-since': ({ wallMs, zone, text }: At & { text: string }, f) =>
    `since ${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.note': ({ wallMs, zone, text }: At & { text: string }, f) =>
    `${f.dateTime(wallMs, zone)}: ${ended(text)}`,
  'report.question': (
    { fixture, ask, untilThen }: { fixture: string; ask: Message; untilThen: Message },
    f,
  ) => `${fixture}: ${f.say(ask)} Until then: ${ended(f.say(untilThen))}`,

  'report.assumed': ({ what, taken }: { what: Message; taken: Message }, f) =>
    `${f.say(what)}: ${ended(f.say(taken))}`,
  'report.assumed.filled': ({ value, why }: { value: string; why: Message }, f) =>
    `${value} (${f.say(why)})`,
  'report.assumed.place': 'Place',
  'report.assumed.no-place': 'not told: rest days were not worked out',
  'report.assumed.material': ({ fixture }: { fixture: string }) => `${fixture}: material`,
  'report.assumed.condition': ({ fixture }: { fixture: string }) => `${fixture}: condition`,
  'report.assumed.stricter': 'not told: the stricter method was planned',
  'report.assumed.cycle': ({ fixture }: { fixture: string }) =>
    `${fixture}: length of the self-clean cycle`,
  'report.assumed.usual-cycle': 'not told: the usual length was planned',

  'report.standing.customs':
    'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.',
  'report.standing.no-ruling':
    'This record tells what was planned and what people confirmed. It gives no ruling: ask your rabbi whether it suffices.',
  'report.standing.clock':
    'Times are those of the tablet’s clock. Where time rests on a person’s word, the record says so.',
  'report.standing.manuals': 'The maker’s manual and the local codes come before this plan.',
  'report.standing.trades': 'Gas, electrical and plumbing work is for licensed people.',
  'report.standing.no-guarantee':
    'No guarantee of safety is given. In need call the local emergency number.',

  'report.calibration.burner': ({ burner }: { burner: string }, f) => `${f.capital(burner)} burner`,

  'report.event.rest-over': ({ name }: { name: Message }, f) => `Rest over: ${f.say(name)}`,
  'report.event.rest-text':
    'Until then do not use it hot; a doubt begins the rest anew. The clock of the run decides, not this entry.',
  'report.event.purge': 'Purge',
  'report.event.purge-of': ({ names }: { names: readonly string[] }) =>
    `Purge: ${names.join(', ')}`,
  'report.event.purge-of-more': ({ names, more }: { names: readonly string[]; more: number }, f) =>
    `Purge: ${names.join(', ')} and ${f.number(more)} more`,
  'report.event.method': ({ name, method }: { name: string; method: Message }, f) =>
    `${name}: ${f.say(method)}`,
  'report.event.stay': 'Expected times. Somebody stays with it all the time.',
} satisfies Section;

function attempt(outcome: string, times: string, reason: string, safe: boolean): string {
  const because = reason === '' ? '' : ` Reason: ${ended(reason)}`;
  return `${outcome}${times}.${because}${safe ? ' It was made safe.' : ''}`;
}
