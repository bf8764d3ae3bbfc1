import { spanishTraits } from '../spanish/traits.ts';
import type { Sentences } from './language.ts';

/** Spanish, said so that it is understood on both sides of the ocean. */
export const spanish: Sentences = {
  traits: spanishTraits,
  first: async () => (await import('../spanish/first-sections.ts')).firstSections,
  sections: {
    frame: async () => (await import('../spanish/shell/frame.ts')).frame,
    kitchen: async () => (await import('../spanish/kitchen/index.ts')).kitchen,
    survey: async () => (await import('../spanish/survey/index.ts')).survey,
    problems: async () => (await import('../spanish/problems/index.ts')).problems,
    plan: async () => (await import('../spanish/plan/index.ts')).plan,
    'plan-page': async () => (await import('../spanish/plan-page.ts')).planPage,
    advice: async () => (await import('../spanish/advice.ts')).advice,
    custom: async () => (await import('../spanish/custom/index.ts')).custom,
    sources: async () => (await import('../spanish/sources.ts')).sources,
    report: async () => (await import('../spanish/report/index.ts')).report,
    'run-later': async () => (await import('../spanish/run/later.ts')).runLater,
    'run-ends': async () => (await import('../spanish/run/ends.ts')).runEnds,
    rehearse: async () => (await import('../spanish/rehearse.ts')).rehearse,
    pictures: async () => (await import('../spanish/run/pictures.ts')).pictures,
    'record-page': async () => (await import('../spanish/record-page.ts')).recordPage,
    utensils: async () => (await import('../spanish/utensils/index.ts')).utensils,
    covers: async () => (await import('../spanish/covers/index.ts')).covers,
    handouts: async () => (await import('../spanish/handouts/index.ts')).handouts,
  },
};
