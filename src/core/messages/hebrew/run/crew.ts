import type { TranslationOf } from '../../model/translation.ts';
import type { crew as english } from '../../english/run/crew.ts';

/** Those who work with one another: what they are called, and who does what now. */
export const crew: TranslationOf<typeof english> = {
  'crew.you': 'אתם',
  'crew.helper': ({ number }, f) => `עוזר ${f.number(number)}`,
  'crew.now': 'מי עושה מה עכשיו',
  'crew.show': 'להראות',
  'crew.begin-next': 'להתחיל את הבא',
  'crew.helps': 'לעזור',
  'crew.free': 'אין מה לעשות עכשיו',
  'crew.later': ({ step }, f) => `הבא: ${f.say(step)}`,
  'crew.watches': ({ what }, f) => `גם משגיחים על: ${f.list(what)}`,
  'crew.give': 'להעביר הלאה',
  'crew.give-to': 'למי?',
  'crew.keep': 'להשאיר',
};
