import { hebrewTraits } from '../hebrew/traits.ts';
import type { Sentences } from './language.ts';

/** Hebrew, right to left. */
export const hebrew: Sentences = {
  traits: hebrewTraits,
  first: async () => (await import('../hebrew/first-sections.ts')).firstSections,
  sections: {
    frame: async () => (await import('../hebrew/shell/frame.ts')).frame,
    kitchen: async () => (await import('../hebrew/kitchen/index.ts')).kitchen,
    survey: async () => (await import('../hebrew/survey/index.ts')).survey,
    problems: async () => (await import('../hebrew/problems/index.ts')).problems,
    plan: async () => (await import('../hebrew/plan/index.ts')).plan,
    'plan-page': async () => (await import('../hebrew/plan-page.ts')).planPage,
    advice: async () => (await import('../hebrew/advice.ts')).advice,
    custom: async () => (await import('../hebrew/custom/index.ts')).custom,
    sources: async () => (await import('../hebrew/sources.ts')).sources,
    report: async () => (await import('../hebrew/report/index.ts')).report,
    'run-later': async () => (await import('../hebrew/run/later.ts')).runLater,
    'run-ends': async () => (await import('../hebrew/run/ends.ts')).runEnds,
    rehearse: async () => (await import('../hebrew/rehearse.ts')).rehearse,
    pictures: async () => (await import('../hebrew/run/pictures.ts')).pictures,
    'record-page': async () => (await import('../hebrew/record-page.ts')).recordPage,
    utensils: async () => (await import('../hebrew/utensils/index.ts')).utensils,
    covers: async () => (await import('../hebrew/covers/index.ts')).covers,
    handouts: async () => (await import('../hebrew/handouts/index.ts')).handouts,
  },
};
