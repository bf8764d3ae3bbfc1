import type { crew as english } from '../../english/run/crew.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Those who work with one another: what they are called, and who does what now. */
export const crew: TranslationOf<typeof english> = {
  'crew.you': 'Vous',
  'crew.helper': ({ number }, f) => `Aide ${f.number(number)}`,
  'crew.now': 'Qui fait quoi maintenant',
  'crew.show': 'Montrer',
  'crew.begin-next': 'Commencer la suite',
  'crew.helps': 'Pour aider',
  'crew.free': 'Rien à faire maintenant',
  'crew.later': ({ step }, f) => `Ensuite : ${f.say(step)}`,
  'crew.watches': ({ what }, f) => `Surveille aussi : ${f.list(what)}`,
  'crew.give': 'Confier',
  'crew.give-to': 'À qui ?',
  'crew.keep': 'Garder',
};
