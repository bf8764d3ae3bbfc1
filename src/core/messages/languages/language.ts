import type { Section } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';
import type { Translator } from '../translate/translator.ts';

/** Sections that only some pages need, and that are loaded with their page; a run's come right after it. */
export type PageSection =
  | 'frame'
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

/** Where the sentences of a language are loaded from. */
export type Sentences = {
  /** How the language is written. */
  readonly traits: LanguageTraits;
  /** What an open run needs: common, shell, run, engine, steps, cautions, calendar. */
  readonly first: () => Promise<Section>;
  readonly sections: Readonly<Record<PageSection, () => Promise<Section>>>;
};

/** A language as data; how it is written and its sentences come only when it is spoken. */
export type Language = {
  /** As its own readers call it. */
  readonly name: string;
  /** BCP 47. */
  readonly tag: string;
  /** Offered to people; else it is only found by its tag. */
  readonly isOffered: boolean;
  readonly sentences: () => Promise<Sentences>;
  /** Made of the sentences of another language. */
  readonly remake?: () => Promise<(base: Translator) => Translator>;
};
