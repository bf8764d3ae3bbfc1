import type { Section } from '../../model/message.ts';

/** What is done before anything is cleaned (shared/cleaning.json). */
export const preparing = {
  'steps.prepare.say': 'Done',
  'steps.prepare.ask.title': 'Ask the open questions and write down the answers.',
  'steps.prepare.ask.line-1': 'The list of questions is part of this plan.',
  'steps.prepare.ask.line-2':
    'Enter each answer in the kitchen: it replaces the row of the custom.',
  'steps.prepare.gather.title': 'Gather what the list names.',
  'steps.prepare.gather.line-1':
    'Read the manuals of oven, hob and kettle, and of the counter’s maker.',
  'steps.prepare.gather.line-2': 'Keep extinguisher, gloves and cold jugs where the work will be.',
  'steps.prepare.alarms.title': 'Test the smoke alarm and the CO alarm.',
  'steps.prepare.alarms.line-1': 'Press the test button of each.',
  'steps.prepare.alarms.line-2': 'Hood on high: does it draw a strip of paper?',
  'steps.prepare.alarms.line-3': 'Open the window once.',
  'steps.prepare.clear.title': 'Empty the kitchen of food, dishes and whatever moves.',
  'steps.prepare.clear.line-1': 'Clean things stand on a towel elsewhere.',
  'steps.prepare.clear.line-2': 'Unplug the small appliances.',
  'steps.prepare.clear.line-3': 'Note the last hot use of each fixture.',
} satisfies Section;
