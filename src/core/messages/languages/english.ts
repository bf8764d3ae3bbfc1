import { englishTraits } from '../english/traits.ts';
import type { Sentences } from './language.ts';

export const english: Sentences = {
  traits: englishTraits,
  first: async () => (await import('../english/first-sections.ts')).firstSections,
  sections: {
    frame: async () => (await import('../english/shell/frame.ts')).frame,
    kitchen: async () => (await import('../english/kitchen/index.ts')).kitchen,
    survey: async () => (await import('../english/survey/index.ts')).survey,
    problems: async () => (await import('../english/problems/index.ts')).problems,
    plan: async () => (await import('../english/plan/index.ts')).plan,
    'plan-page': async () => (await import('../english/plan-page.ts')).planPage,
    advice: async () => (await import('../english/advice.ts')).advice,
    custom: async () => (await import('../english/custom/index.ts')).custom,
    sources: async () => (await import('../english/sources.ts')).sources,
    report: async () => (await import('../english/report/index.ts')).report,
    'run-later': async () => (await import('../english/run/later.ts')).runLater,
    'run-ends': async () => (await import('../english/run/ends.ts')).runEnds,
    rehearse: async () => (await import('../english/rehearse.ts')).rehearse,
    pictures: async () => (await import('../english/run/pictures.ts')).pictures,
    'record-page': async () => (await import('../english/record-page.ts')).recordPage,
    utensils: async () => (await import('../english/utensils/index.ts')).utensils,
    covers: async () => (await import('../english/covers/index.ts')).covers,
    handouts: async () => (await import('../english/handouts/index.ts')).handouts,
  },
};
