import type { Section } from '../../model/message.ts';

/** What makes safe: here from the first moment of a run. */
export const stop = {
  'run.stop': 'Stop – make safe',
  'run.stop.dialog': 'Stop and make safe',
  'run.stop.nothing-hot': 'Nothing in the plan is hot now.',
  'run.stop.first': 'Do this first, whatever you press:',
  'run.stop.danger':
    'Fire, gas or someone hurt: get out and call the local emergency number. The app can wait.',
  'run.stop.press': 'Stop the run now',
  'run.stop.lead': 'Lead the run here, to stop it',
  'run.stop.keep-going': 'Keep going',
  'run.stop.reason': 'Stopped by the person: make safe.',
} satisfies Section;
