import type { Message, Section } from '../../model/message.ts';

/** One page for the rabbi: what is known of each thing he is asked about. */
export const rabbi = {
  'sheets.rabbi.about':
    'Each open question with what you told of the thing. Write in how old it is; what he says goes into the plan under “To ask”.',
  'sheets.rabbi.age': 'Age:',
  'sheets.rabbi.trying': 'What each answer changes is being worked out…',
  'sheets.fact.part': ({ part }: { part: Message }, f) => `about: ${f.say(part)}`,
  'sheets.fact.material-unknown': 'material not known',
  'sheets.fact.condition.smooth': 'smooth',
  'sheets.fact.condition.scratched': 'scratched',
  'sheets.fact.condition.cracked': 'cracked',
  'sheets.fact.condition.porous': 'porous',
  'sheets.fact.condition.unknown': 'surface not looked at',
  'sheets.fact.top.metal': 'metal top',
  'sheets.fact.top.enamel': 'enamel top',
  'sheets.fact.top.glass-ceramic': 'glass-ceramic top',
  'sheets.fact.cleaning.pyrolytic': 'self-clean that burns out',
  'sheets.fact.cleaning.steam': 'steam clean',
  'sheets.fact.cleaning.catalytic': 'catalytic lining',
  'sheets.fact.cleaning.none': 'no self-clean',
  'sheets.fact.varnished.yes': 'varnished',
  'sheets.fact.varnished.no': 'not varnished',
  'sheets.fact.kneaded.yes': 'dough was kneaded straight on it',
  'sheets.fact.kneaded.no': 'no dough was kneaded on it',
  'sheets.fact.hotFood.yes': 'hot food lay straight on it',
  'sheets.fact.hotFood.no': 'no hot food lay on it',
  'sheets.fact.belongs': ({ to }: { to: Message }, f) => `to be for ${f.say(to)}`,
  'sheets.fact.last-hot': ({ at }: { at: Message }, f) => `last used hot ${f.say(at)}`,
} satisfies Section;
