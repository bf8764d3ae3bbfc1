import type { Message, Section } from '../../model/message.ts';

/** One page for the rabbi: what is known of each thing he is asked about. */
export const rabbi = {
  'handouts.rabbi.about':
    'Each open question with what you told of the thing. Write in how old it is; what he says goes into the plan under “To ask”.',
  'handouts.rabbi.facts': ({ facts }: { facts: readonly Message[] }, f) =>
    `${f.capital(facts.map(f.say).join('; '))}.`,
  'handouts.rabbi.age': 'Age:',
  'handouts.rabbi.trying': 'What each answer changes is being worked out…',
  'handouts.fact.part': ({ part }: { part: Message }, f) => `about: ${f.say(part)}`,
  'handouts.fact.material-unknown': 'material not known',
  'handouts.fact.condition.smooth': 'smooth',
  'handouts.fact.condition.scratched': 'scratched',
  'handouts.fact.condition.cracked': 'cracked',
  'handouts.fact.condition.porous': 'porous',
  'handouts.fact.condition.unknown': 'surface not looked at',
  'handouts.fact.top.metal': 'metal top',
  'handouts.fact.top.enamel': 'enamel top',
  'handouts.fact.top.glass-ceramic': 'glass-ceramic top',
  'handouts.fact.cleaning.pyrolytic': 'self-clean that burns out',
  'handouts.fact.cleaning.steam': 'steam clean',
  'handouts.fact.cleaning.catalytic': 'catalytic lining',
  'handouts.fact.cleaning.none': 'no self-clean',
  'handouts.fact.varnished.yes': 'varnished',
  'handouts.fact.varnished.no': 'not varnished',
  'handouts.fact.kneaded.yes': 'dough was kneaded straight on it',
  'handouts.fact.kneaded.no': 'no dough was kneaded on it',
  'handouts.fact.hotFood.yes': 'hot food lay straight on it',
  'handouts.fact.hotFood.no': 'no hot food lay on it',
  'handouts.fact.belongs': ({ to }: { to: Message }, f) => `to be for ${f.say(to)}`,
  'handouts.fact.last-hot': ({ at }: { at: Message }, f) => `last used hot ${f.say(at)}`,
} satisfies Section;
