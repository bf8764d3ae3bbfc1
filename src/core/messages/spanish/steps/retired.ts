import type { TranslationOf } from '../../model/translation.ts';
import type { retiredSteps as english } from '../../english/steps/retired.ts';

/** Sentences of steps that no plan is made with any more: an open run of an older plan still shows them. */
export const retiredSteps: TranslationOf<typeof english> = {
  'steps.cool.timer': ({ name }, f) => `Se puede tocar: ${f.say(name)}`,
  'steps.cool.timer-short': 'Se puede tocar',
  'steps.rest.title': ({ name }, f) => `Deje sin usar: ${f.say(name)}.`,
  'steps.clean.oven.line-2': 'Rejillas y sus guías laterales fuera: en remojo.',
  'steps.clean.cooktop.line-3': 'Parrillas y tapas de los quemadores: remoje y frote.',
};
