import { type Component, createSignal, lazy } from 'solid-js';
import {
  createTranslator,
  type Entry,
  type Formatter,
  isolated,
  type LanguageTraits,
  message,
  type Message,
  type MessageKey,
  type ParamArgs,
  sayFenced,
  type SizeFormatter,
  type Translator,
} from '../../core/messages/index.ts';
import {
  FIRST_TRAITS,
  type Language,
  LANGUAGES,
  languageFor,
  type PageSection,
} from '../../core/messages/languages/index.ts';
import type { UnitSystem } from '../../core/units/index.ts';

/** A language with the sentences that are here. */
type Opened = {
  readonly language: Language;
  traits: LanguageTraits;
  readonly entries: Map<string, Entry>;
  readonly loaded: Set<PageSection>;
  /** For a language that is made of another one's sentences. */
  remake?: (base: Translator) => Translator;
};

/** Sections of the pages that were looked at, in whatever language. */
const asked = new Set<PageSection>();

function opened(language: Language): Opened {
  return { language, traits: FIRST_TRAITS, entries: new Map(), loaded: new Set() };
}

/** How sizes are written where the household reads other units than those of the sentences. */
let sizes: ((format: Formatter, traits: LanguageTraits) => SizeFormatter) | undefined;
let units: UnitSystem = 'metric';

function translatorOf({ traits, entries }: Opened): Translator {
  return createTranslator(traits, (key) => entries.get(key), sizes);
}

/** Its translator, with all sentences that are here by now. */
function spoken(of: Opened): Translator {
  const plain = translatorOf(of);
  return of.remake?.(plain) ?? plain;
}

let current = opened(LANGUAGES[0]);
let latest = current;
const [translator, setTranslator] = createSignal<Translator>(translatorOf(current));

async function fill({ language, entries, loaded }: Opened): Promise<void> {
  const { sections } = await language.sentences();
  const missing = [...asked].filter((section) => !loaded.has(section));
  await Promise.all(
    missing.map(async (name) => {
      const section = await sections[name]();
      for (const [key, entry] of Object.entries(section)) entries.set(key, entry);
      loaded.add(name);
    }),
  );
}

/**
 * Makes the page speak the first known language of some tags (BCP 47), once
 * what an open run and the pages looked at need of it is here. A later choice
 * overtakes an earlier one that is still loading.
 * Rejects when it cannot be loaded; the page then speaks as before.
 */
export async function chooseLanguage(tags: readonly string[]): Promise<void> {
  const next = opened(languageFor(tags));
  latest = next;
  const [first, remake] = await Promise.all([
    next.language.sentences().then(({ traits, first: load }) => {
      next.traits = traits;
      return load();
    }),
    next.language.remake?.(),
    fill(next),
  ]);
  for (const [key, entry] of Object.entries(first)) next.entries.set(key, entry);
  // A page was looked at meanwhile.
  await fill(next);
  if (latest !== next) return;
  current = next;
  if (remake) next.remake = remake;
  setTranslator(() => spoken(next));
}

/** Loads what a page says, in the language of now. */
async function loadSections(sections: readonly PageSection[]): Promise<void> {
  for (const section of sections) asked.add(section);
  await Promise.all([...new Set([current, latest])].map(fill));
}

/** What is in a chunk of its own, once its sentences are here too. */
export async function withSections<T>(
  sections: readonly PageSection[],
  load: () => Promise<T>,
): Promise<T> {
  const [loaded] = await Promise.all([load(), loadSections(sections)]);
  return loaded;
}

/** A page in a chunk of its own, which is shown when its sentences are here too. */
export function lazyPage<P extends object>(
  sections: readonly PageSection[],
  load: () => Promise<Component<P>>,
): Component<P> {
  return lazy(async () => ({ default: await withSections(sections, load) }));
}

/**
 * Loads what the page that stands will say later, in the language of now; what
 * already shows is said anew when it is here.
 */
export async function loadLater(sections: readonly PageSection[]): Promise<void> {
  const before = current;
  await loadSections(sections);
  if (current === before) setTranslator(() => spoken(before));
}

/** Whether what comes after the first moment is here, in the language of now; read inside JSX it follows. */
export function isHere(section: PageSection): boolean {
  return translator() !== undefined && current.loaded.has(section);
}

/** What is written in US units with, once it is here. */
let customary: typeof sizes;

/** Loads how sizes are told in these units: what is told in them next is so from its first frame. Rejects when that cannot be loaded. */
export async function loadSizes(system: UnitSystem): Promise<void> {
  if (system === 'metric' || customary) return;
  customary = (await import('../../core/messages/customary/index.ts')).customarySizes;
}

function writeSizes(): void {
  sizes = units === 'metric' ? undefined : customary;
  setTranslator(() => spoken(current));
}

/**
 * Tells sizes in these units from now on, at once where they are loaded; a later choice overtakes
 * an earlier one that is still loading. Rejects when they cannot be loaded; sizes are then told as before.
 */
export async function tellIn(system: UnitSystem): Promise<void> {
  if (system === units) return;
  units = system;
  if (system === 'metric' || customary) return writeSizes();
  await loadSizes(system);
  if (units === system) writeSizes();
}

/** The text of a key in the language of the page; read inside JSX it follows the language. */
export function t<K extends MessageKey>(key: K, ...params: ParamArgs<K>): string {
  return say(message(key, ...params));
}

/**
 * A message of the plan, the run or the report as the page shows it: in its language, with names
 * of another script fenced in.
 */
export function say(what: Message): string {
  return sayFenced(translator(), what);
}

/** A message as it is kept or spoken: names stand in it as they were written. */
export function sayPlain(what: Message): string {
  return translator().say(what);
}

/** A name or a note as a person wrote it, fenced in where its script is another one than the page's. */
export function written(text: string): string {
  return isolated(text, translator().direction);
}

/** The language of the page, with its numbers and times; read inside JSX it follows the language. */
export { translator };
