import type { Message, Section } from '../../model/message.ts';

type Clock = { wallMs: number; zone: string };
type Missing = { missingS: number };

/** After an interruption, on a rest day, and when there is nothing to do: each comes with its screen. */
export const gaps = {
  'run.clock': 'The clock',
  'run.clock.ask': ({ wallMs, zone }: Clock, f) => `Is ${f.moment(wallMs, zone)} right now?`,
  'run.clock.yes': ({ wallMs, zone }: Clock, f) => `Yes, it is ${f.moment(wallMs, zone)}`,
  'run.clock.yes-passed': ({ missingS }: Missing, f) =>
    `Yes, and those ${f.duration(missingS)} passed`,
  'run.clock.yes-set': 'Yes, but the clock was set',
  'run.clock.no': 'No, it is not',
  'run.clock.unknown': 'Nobody knows',
  'run.clock.about':
    'The tablet slept or its clock was changed. Waits count the missing time only after you say so.',
  'run.last-hot.ask': ({ name, wallMs, zone }: Clock & { name: Message }, f) =>
    `${f.say(name)}: was its last hot use on ${f.moment(wallMs, zone)}, or before?`,
  'run.last-hot.about':
    'Hot water, hot food and hot cleaning all count. Only if you are sure: then its rest counts from that time.',
  'run.last-hot.yes': ({ wallMs, zone }: Clock, f) =>
    `Yes, and it is ${f.moment(wallMs, zone)} now`,
  'run.last-hot.no': 'No, or nobody knows: begin its rest now',
  'run.last-hot.reason': 'Said before the run, and again when it was clean.',
  'run.last-hot.no-reason': 'Its last hot use was later than was said, or nobody knows.',
  'run.clock.really': 'What time is it really?',
  'run.clock.right': 'This is the right time',
  'run.clock.right-passed': ({ missingS }: Missing, f) =>
    `This is right, and ${f.duration(missingS)} passed`,
  'run.clock.right-set': 'This is right, but the clock was set',

  'run.review': 'What happened meanwhile',
  'run.review.title': 'Here is where you were',
  'run.review.away': ({ step, gapS }: { step: Message; gapS: number }, f) => {
    const title = f.say(step);
    return `${title.endsWith('.') ? title : `${title}.`} The tablet was away for ${f.duration(gapS)}.`;
  },
  'run.review.away-only': ({ gapS }: { gapS: number }, f) =>
    `The tablet was away for ${f.duration(gapS)}.`,
  'run.review.went-on': 'Yes, I saw it',
  'run.review.broke-off': 'No, it stopped',
  'run.review.unknown': 'Nobody saw',

  'run.quiet': 'Nothing to do just now',
  'run.quiet.none': 'No step can begin.',
  'run.quiet.about':
    'Use nothing hot that rests. Go, sleep, come back: the clocks run on, and what came due meanwhile is told at once.',

  'run.rest-day': 'Rest day',
  'run.rest-day.title': 'Rest. Nothing is asked of you.',
  'run.rest-day.until': ({ when }: { when: Message }, f) =>
    `The run waits, and nothing sounds, until ${f.say(when)}. What comes due meanwhile is told after that.`,
  'run.rest-day.wait': ({ waits, when }: { waits: Message; when: Message }, f) =>
    `${f.say(waits)}, until ${f.say(when)}`,
  'run.rest-day.hot': 'Still hot:',
  'run.rest-day.danger': 'Danger to life comes first: call the local emergency number.',
  'common.other-zone': (
    { wallMs, zone, tabletZone }: { wallMs: number; zone: string; tabletZone: string },
    f,
  ) =>
    `All times are those of the kitchen, where it is ${f.shortMoment(wallMs, zone)}. This tablet is set to another zone and would show ${f.shortMoment(wallMs, tabletZone)}.`,
} satisfies Section;
