import { frenchTraits } from '../french/traits.ts';
import type { Sentences } from './language.ts';

/** French, loaded section by section as English is. */
export const french: Sentences = {
  traits: frenchTraits,
  first: async () => (await import('../french/first-sections.ts')).firstSections,
  sections: {
    frame: async () => (await import('../french/shell/frame.ts')).frame,
    kitchen: async () => (await import('../french/kitchen/index.ts')).kitchen,
    survey: async () => (await import('../french/survey/index.ts')).survey,
    problems: async () => (await import('../french/problems/index.ts')).problems,
    plan: async () => (await import('../french/plan/index.ts')).plan,
    'plan-page': async () => (await import('../french/plan-page.ts')).planPage,
    advice: async () => (await import('../french/advice.ts')).advice,
    custom: async () => (await import('../french/custom/index.ts')).custom,
    sources: async () => (await import('../french/sources.ts')).sources,
    report: async () => (await import('../french/report/index.ts')).report,
    'run-later': async () => (await import('../french/run/later.ts')).runLater,
    'run-ends': async () => (await import('../french/run/ends.ts')).runEnds,
    rehearse: async () => (await import('../french/rehearse.ts')).rehearse,
    pictures: async () => (await import('../french/run/pictures.ts')).pictures,
    'record-page': async () => (await import('../french/record-page.ts')).recordPage,
    utensils: async () => (await import('../french/utensils/index.ts')).utensils,
    covers: async () => (await import('../french/covers/index.ts')).covers,
    handouts: async () => (await import('../french/handouts/index.ts')).handouts,
  },
};
