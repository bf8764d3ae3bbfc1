import type { Section } from '../../model/message.ts';

/** Why some steps are done: read in the plan before, not with a hand on the work. */
export const reasons = {
  'steps.prepare.ask.reason': 'What is not answered is done the stricter way.',
  'steps.prepare.gather.reason': 'Nothing can be fetched with a boiling kettle in hand.',
  'steps.prepare.alarms.reason': 'They watch what no one can smell.',
  'steps.prepare.clear.reason': 'Cleaning and pouring need bare surfaces.',
  'steps.clean.reason-resting':
    'What clings to it would shield it from the purge. It rests already, and hot cleaning would begin its rest anew.',
  'steps.unplug.reason': 'Water and mains do not meet: its plug is out before it is washed.',
  'steps.thaw.reason': 'What is frozen in cannot be cleaned out.',
  'steps.switch-on.reason': 'Food keeps in a cool box for some hours only.',
} satisfies Section;
