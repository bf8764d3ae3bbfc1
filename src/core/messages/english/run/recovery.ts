import type { Section } from '../../model/message.ts';

/** On a fault, and while something is made safe. */
export const recovery = {
  'run.clock.withdraw': 'The answer about the clock was wrong',

  'run.suspended': 'Fault',
  'run.suspended.stopped': 'Stopped',
  'run.suspended.meanwhile': 'Meanwhile, for somebody else',
  'run.suspended.go-on':
    'Heat and clocks go on meanwhile: stay with them. Only if you end it here, make it safe:',
  'run.suspended.clear': 'It is put right',

  'run.closing': 'Make safe',
  'run.closing.title': 'Make these safe, then say so',
  'run.make-safe.done': 'safe',
  'run.make-safe.press': 'It is safe',

  'run.rest-day.look-in': 'Look in on the run',
} satisfies Section;
