import type { Message, Section } from '../../model/message.ts';

/** Sentences of steps that no plan is made with any more: an open run of an older plan still shows them. */
export const retiredSteps = {
  'steps.cool.timer': ({ name }: { name: Message }, f) => `Safe to touch: ${f.say(name)}`,
  'steps.cool.timer-short': 'Safe to touch',
  'steps.rest.title': ({ name }: { name: Message }, f) => `Leave it unused: ${f.say(name)}.`,
  'steps.clean.oven.line-2': 'Racks and their side rails out: soak.',
  'steps.clean.cooktop.line-3': 'Grates and burner caps: soak and scrub.',
} satisfies Section;
