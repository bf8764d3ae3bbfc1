import type { Message, Section } from '../../model/message.ts';

type Clock = { wallMs: number; zone: string };
type Missing = { missingS: number };

/** After an interruption, on a fault, while it is made safe, and when there is nothing to do. */
export const recovery = {
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
  'run.clock.really': 'What time is it really?',
  'run.clock.right': 'This is the right time',
  'run.clock.right-passed': ({ missingS }: Missing, f) =>
    `This is right, and ${f.duration(missingS)} passed`,
  'run.clock.right-set': 'This is right, but the clock was set',
  'run.clock.withdraw': 'The answer about the clock was wrong',

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

  'run.suspended': 'Fault',
  'run.suspended.stopped': 'Stopped',
  'run.suspended.go-on':
    'Heat and clocks go on meanwhile: stay with them. Only if you end it here, make it safe:',
  'run.suspended.clear': 'It is put right',

  'run.closing': 'Make safe',
  'run.closing.title': 'Make these safe, then say so',
  'run.make-safe.done': 'safe',
  'run.make-safe.press': 'It is safe',

  'run.quiet': 'Nothing to do just now',
  'run.quiet.none': 'No step can begin.',
  'run.quiet.about':
    'Leave what rests unused. Go, sleep, come back: the clocks run on, and what came due meanwhile is told at once.',

  'run.rest-day.look-in': 'Look in on the run',
} satisfies Section;
