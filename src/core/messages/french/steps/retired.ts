import type { retiredSteps as english } from '../../english/steps/retired.ts';
import type { TranslationOf } from '../../model/translation.ts';

/** Sentences of steps that no plan is made with any more: an open run of an older plan still shows them. */
export const retiredSteps: TranslationOf<typeof english> = {
  'steps.cool.timer': ({ name }, f) => `Sans danger au toucher : ${f.say(name)}`,
  'steps.cool.timer-short': 'Sans danger au toucher',
  'steps.rest.title': ({ name }, f) => `Laissez inutilisé : ${f.say(name)}.`,
  'steps.clean.oven.line-2': 'Grilles et supports latéraux sortis : à tremper.',
  'steps.clean.cooktop.line-3':
    'Supports de casseroles et chapeaux de brûleurs : à tremper et frotter.',
};
