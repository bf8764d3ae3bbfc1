import { readFileSync } from 'node:fs';
import { english } from '../../../../src/core/messages/english/index.ts';
import { translatorOf } from '../../../support/translators.ts';
import type { ReadText } from './reader.ts';
import type { Finder } from './reading.ts';

/** What is Latin in Hebrew by right, each with why. */
const LATIN_BY_RIGHT: readonly (readonly [what: RegExp, why: string])[] = [
  [/Glowpour/g, 'the name of the app'],
  [
    /[A-Z][A-Za-z]+\/[A-Z][A-Za-z_ ]+|(?<![A-Za-z])(UTC|New York|Denver)(?![A-Za-z])/g,
    'time zones have one name',
  ],
  [/°[CF](?![A-Za-z])/g, 'units with a sign'],
  [/SHA-256|ISO \d+(-\d)?|(?<![A-Za-z])(A4|Letter)(?![A-Za-z])/g, 'standards, of paper too'],
  [
    /(?<![A-Za-z])(Enter|Tab|Esc|Escape|Shift|Page Up|Page Down|Delete|Ctrl|[RST])(?![A-Za-z])/g,
    'what stands on keys',
  ],
  [/[\da-f]{4}(?: [\da-f]{4}){3}/g, 'a digest'],
  [/"[\w-]+"/g, 'words of a file'],
  [/zzz/g, 'what the test types'],
];

/** Words that only English has. */
const ENGLISH_WORD =
  /(?<!\p{L})(the|and|of|with|your|you|is|are|was|were|it|to|from|by|at|this|that|be|an|has|have|each|after|before|until|then|when|which|water|kettles?|burners?|steps?|runs?|rests?|rested|clean|purged?|sinks?|counters?|left|right|open|close|back)(?!\p{L})/iu;

/** A key stands for its sentence where that is not loaded. */
const KEY = /^[a-z][a-z\d-]*(\.[a-z][a-z\d-]*)+$/u;

/** Shortest English sentence that is looked for as it stands; shorter ones are spelt alike by chance. */
const LEAST_LETTERS = 6;

/** Finds what is not said in the language of the page. */
export class ForeignWords implements Finder {
  readonly #language: string;
  /** English names of the demos and sentences that the language says otherwise. */
  readonly #english: ReadonlySet<string>;
  readonly #names: readonly string[];
  readonly #known: readonly string[];
  readonly #screens = new Set<string>();
  #found = new Map<string, Set<string>>();

  private constructor(language: string, known: readonly string[], own: ReadonlySet<string>) {
    this.#language = language;
    this.#known = known;
    const words = JSON.parse(
      readFileSync(`demo-kitchens/words/${language}.json`, 'utf8'),
    ) as Readonly<Record<string, string>>;
    this.#names = Object.entries(words)
      .filter(([here, there]) => here !== there && here.includes(' '))
      .map(([here]) => here);
    const plain = Object.values(english).filter((entry) => typeof entry === 'string');
    this.#english = new Set(plain.filter((text) => text.length >= LEAST_LETTERS && !own.has(text)));
  }

  /** @param known words of no language, or of a file, that stand on the screens */
  static async of(language: string, known: readonly string[]): Promise<ForeignWords> {
    const { t } = await translatorOf(language);
    const own = Object.entries(english)
      .filter(([, entry]) => typeof entry === 'string')
      .map(([key]) => t(key as Parameters<typeof t>[0]));
    return new ForeignWords(language, known, new Set(own));
  }

  look(screen: string, texts: readonly ReadText[], also: readonly string[] = []): void {
    this.#screens.add(screen);
    for (const { as, text, in: where } of texts) {
      const words = this.#foreign(text, [...this.#known, ...also]);
      if (words === undefined) continue;
      const found = this.#found.get(screen) ?? new Set<string>();
      this.#found.set(screen, found);
      found.add(`${words} (${as} of ${where}: ${text.slice(0, 120)})`);
    }
  }

  #foreign(text: string, known: readonly string[]): string | undefined {
    if (KEY.test(text)) return 'a key';
    if (this.#english.has(text)) return 'an English sentence';
    const name = this.#names.find((one) => text.includes(one));
    if (name !== undefined) return name;
    let rest = text;
    for (const one of known.toSorted((a, b) => b.length - a.length))
      rest = rest.replaceAll(new RegExp(`(?<!\\p{L})${one}(?!\\p{L})`, 'gu'), '·');
    if (this.#language !== 'he') return ENGLISH_WORD.exec(rest)?.[0];
    for (const [what] of LATIN_BY_RIGHT) rest = rest.replaceAll(what, '·');
    return /[A-Za-z]+/.exec(rest)?.[0];
  }

  get screens(): number {
    return this.#screens.size;
  }

  take(): Readonly<Record<string, readonly string[]>> {
    const found = [...this.#found].map(([screen, words]) => [screen, [...words]] as const);
    this.#found = new Map();
    return Object.fromEntries(found);
  }
}
