import type { TranslationOf } from '../../model/translation.ts';
import type { retiredSteps as english } from '../../english/steps/retired.ts';

/** Sentences of steps that no plan is made with any more: an open run of an older plan still shows them. */
export const retiredSteps: TranslationOf<typeof english> = {
  'steps.cool.timer': ({ name }, f) => `בטוח לגעת: ${f.say(name)}`,
  'steps.cool.timer-short': 'בטוח לגעת',
  'steps.rest.title': ({ name }, f) => `להשאיר בלי שימוש: ${f.say(name)}.`,
  'steps.clean.oven.line-2': 'רשתות ומסילות הצד שלהן החוצה: השרו.',
  'steps.clean.cooktop.line-3': 'חצובות ומכסי מבערים: השרו ושפשפו.',
};
