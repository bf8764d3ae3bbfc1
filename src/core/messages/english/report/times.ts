import type { Message, Section } from '../../model/message.ts';
import { ended, range, type At, type Times } from './phrases.ts';

/** Gaps, answers, late alarms, and what was assumed. */
export const times = {
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
} satisfies Section;
