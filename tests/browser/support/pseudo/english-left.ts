import { readdirSync, readFileSync } from 'node:fs';
import type { ReadText } from './reader.ts';

/**
 * Latin words that are right in any language, each with why. Units are words
 * of the catalogue and have their accents too: none is here.
 */
const ALLOWED: readonly string[] = [
  // The name of the app.
  'Glowpour',
  // The zone of a tablet that was told none.
  'UTC',
];

/** "section.part": a key of the catalogue, with accents or without. */
const KEY = /^\p{L}[\p{L}\d-]*(\.\p{L}[\p{L}\d-]*)+$/u;

/** Digits of a digest, in hexadecimal: "f4fc 5fe0 dc30 977d". */
const DIGEST = /[\da-f]{4}(?: [\da-f]{4}){3}/u;

/** Fields of a kitchen file that people write in their own words, and the time zone (IANA), which has one name. */
const OWN_WORDS = new Set(['name', 'comment', 'text', 'saidBy', 'zone', 'reason']);

function ownWords(value: unknown, field = ''): string[] {
  if (typeof value === 'string') return OWN_WORDS.has(field) ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((one) => ownWords(one, field));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => ownWords(one, name));
}

/** What a person wrote in a demo kitchen: names, remarks, who said what; and its time zone. */
export function wordsOfDemo(demo: string): readonly string[] {
  const file = readFileSync(`demo-kitchens/${demo}.kitchen.json`, 'utf8');
  const words = ownWords(JSON.parse(file));
  // A zone is shown as people write it: "America/New York".
  return [...words, ...words.map((word) => word.replaceAll('_', ' '))];
}

function fieldsOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(fieldsOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => [name, ...fieldsOf(one)]);
}

/** Names of the fields of a kitchen file and its format: they are the same in every language. */
export function fieldsOfKitchenFiles(): readonly string[] {
  const files = readdirSync('demo-kitchens').filter((name) => name.endsWith('.kitchen.json'));
  const read = (file: string): unknown =>
    JSON.parse(readFileSync(`demo-kitchens/${file}`, 'utf8')) as unknown;
  return ['glowpour-kitchen', ...files.flatMap((file) => fieldsOf(read(file)))];
}

/** Finds words without accents in what was read: they did not come from the catalogue. */
export class EnglishLeft {
  readonly #known: readonly string[];
  readonly #screens = new Set<string>();
  #found = new Map<string, Set<string>>();

  /** @param known what people wrote themselves */
  constructor(known: readonly string[]) {
    this.#known = [...known, ...ALLOWED];
  }

  /** Looks through what was read on a screen; `also`: what else is right there. */
  look(screen: string, texts: readonly ReadText[], also: readonly string[] = []): void {
    this.#screens.add(screen);
    // Longest first, so that no part of a longer one stays over.
    const known = [...new Set([...this.#known, ...also])].toSorted((a, b) => b.length - a.length);
    for (const { as, text, in: where } of texts) {
      if (isShortened(text, known)) continue;
      let rest = text.replace(DIGEST, '·');
      for (const one of known) rest = rest.replaceAll(one, '·');
      // A key stands for its sentence where that is not loaded; it gets accents too.
      const words = KEY.test(text) ? ['a key:'] : rest.match(/[A-Za-z]{2,}/g);
      if (!words) continue;
      const found = this.#found.get(screen) ?? new Set<string>();
      this.#found.set(screen, found);
      found.add(`${words.join(' ')} (${as} of ${where}: ${text.slice(0, 80)})`);
    }
  }

  /** How many screens were looked at. */
  get screens(): number {
    return this.#screens.size;
  }

  /** What was found since it was taken last, by screen. */
  take(): Readonly<Record<string, readonly string[]>> {
    const found = [...this.#found].map(([screen, words]) => [screen, [...words]] as const);
    this.#found = new Map();
    return Object.fromEntries(found);
  }
}

/** A name that a drawing has no room for: its beginning, then three dots. */
function isShortened(text: string, known: readonly string[]): boolean {
  if (!text.endsWith('…')) return false;
  const beginning = text.slice(0, -1).trimEnd();
  return known.some((one) => one.startsWith(beginning));
}
