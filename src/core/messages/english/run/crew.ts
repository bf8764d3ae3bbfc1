import type { Message, Section } from '../../model/message.ts';

/** Those who work with one another: what they are called, and who does what now. */
export const crew = {
  'crew.you': 'You',
  'crew.helper': ({ number }: { number: number }, f) => `Helper ${f.number(number)}`,
  'crew.now': 'Who does what now',
  'crew.show': 'Show',
  'crew.begin-next': 'Begin next',
  'crew.helps': 'To help',
  'crew.free': 'Nothing to do now',
  'crew.later': ({ step }: { step: Message }, f) => `Next: ${f.say(step)}`,
  'crew.watches': ({ what }: { what: readonly string[] }, f) => `Also watches: ${f.list(what)}`,
  'crew.give': 'Hand on',
  'crew.give-to': 'To whom?',
  'crew.keep': 'Keep it',
} satisfies Section;
