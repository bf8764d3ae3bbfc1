import { englishTraits } from '../english/traits.ts';
import type { Section } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';
import type { Translator } from '../translate/translator.ts';

/** Sections that only some pages need, and that are loaded with their page; a run's come right after it. */
export type PageSection =
  | 'kitchen'
  | 'survey'
  | 'problems'
  | 'plan'
  | 'plan-page'
  | 'advice'
  | 'custom'
  | 'sources'
  | 'report'
  | 'record-page'
  | 'run-later'
  | 'run-ends'
  | 'rehearse'
  | 'pictures'
  | 'utensils'
  | 'covers'
  | 'handouts';

/** A language as data: how it is written, and where its sentences are loaded from. */
export type Language = {
  /** As its own readers call it. */
  readonly name: string;
  readonly traits: LanguageTraits;
  /** Offered to people; else it is only found by its tag. */
  readonly isOffered: boolean;
  /** What an open run needs: common, shell, run, engine, steps, cautions, calendar. */
  readonly first: () => Promise<Section>;
  readonly sections: Readonly<Record<PageSection, () => Promise<Section>>>;
  /** Made of the sentences of another language. */
  readonly remake?: () => Promise<(base: Translator) => Translator>;
};

const english: Language = {
  name: 'English',
  traits: englishTraits,
  isOffered: true,
  first: async () => (await import('../english/first-sections.ts')).firstSections,
  sections: {
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

const pseudo: Language = {
  ...english,
  name: 'Pseudo',
  traits: { ...englishTraits, language: 'en-XA' },
  isOffered: false,
  remake: async () => (await import('../pseudo/index.ts')).pseudoTranslator,
};

/** All languages, the one that stands in for any other first. */
export const LANGUAGES: readonly [Language, ...Language[]] = [english, pseudo];

/**
 * The language for a reader: of the tags (BCP 47, the dearest first) the first
 * that is here by itself, or, if it is offered, by its language alone.
 */
export function languageFor(tags: readonly string[]): Language {
  for (const tag of tags) {
    const wanted = tag.toLowerCase();
    const exact = LANGUAGES.find(({ traits }) => traits.language.toLowerCase() === wanted);
    if (exact) return exact;
    const alone = wanted.split('-')[0];
    const near = LANGUAGES.find(
      ({ traits, isOffered }) => isOffered && traits.language.toLowerCase() === alone,
    );
    if (near) return near;
  }
  return LANGUAGES[0];
}
