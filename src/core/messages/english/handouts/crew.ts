import type { Section } from '../../model/message.ts';

/** A sheet a person, of what the plan gives them. */
export const crewSheets = {
  'handouts.crew.about':
    'One sheet for each of those who work, by the plan. What the tablet says goes before it.',
  'handouts.crew.title': ({ name, kitchen }: { name: string; kitchen: string }) =>
    `${name}: ${kitchen}`,
  'handouts.crew.first':
    'By the plan: the tablet says when it is really so, and asks what has to be asked before. A burn: 20 minutes of cool running water at once.',
  'handouts.crew.nothing': 'The plan gives this person nothing to do.',
} satisfies Section;
