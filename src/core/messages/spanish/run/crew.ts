import type { TranslationOf } from '../../model/translation.ts';
import type { crew as english } from '../../english/run/crew.ts';

/** Those who work with one another: what they are called, and who does what now. */
export const crew: TranslationOf<typeof english> = {
  'crew.you': 'Usted',
  'crew.helper': ({ number }, f) => `Ayudante ${f.number(number)}`,
  'crew.now': 'Quién hace qué ahora',
  'crew.show': 'Mostrar',
  'crew.begin-next': 'Para empezar ya',
  'crew.helps': 'Para ayudar',
  'crew.free': 'Nada que hacer ahora',
  'crew.later': ({ step }, f) => `Después: ${f.say(step)}`,
  'crew.watches': ({ what }, f) => `También vigila: ${f.list(what)}`,
  'crew.give': 'Pasar',
  'crew.give-to': '¿A quién?',
  'crew.keep': 'No pasarlo',
};
