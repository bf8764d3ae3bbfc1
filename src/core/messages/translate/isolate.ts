import type { Message } from '../model/message.ts';
import type { Translator } from './translator.ts';

type Direction = 'ltr' | 'rtl';

/** Marks that turn or fence in what stands round them (Unicode Standard Annex 9, 2). */
const CONTROLS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;
const FIRST_STRONG_ISOLATE = '\u2068';
const POP_ISOLATE = '\u2069';

/** Letters that are written against a direction. */
const AGAINST: Readonly<Record<Direction, RegExp>> = {
  ltr: /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u,
  rtl: /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Han}]/u,
};

const hasControls = (text: string): boolean => text.search(CONTROLS) >= 0;

/** A text without marks of direction, for whoever measures it, cuts it into lines, or keeps it. */
export function unfenced(text: string): string {
  return text.replaceAll(CONTROLS, '');
}

/**
 * What a person wrote, to be shown on a page of a direction: of another script it is fenced in, so
 * that neither turns the other round; marks of its own that would reach out of it are left out.
 */
export function isolated(text: string, direction: Direction): string {
  const plain = unfenced(text);
  return AGAINST[direction].test(plain) ? FIRST_STRONG_ISOLATE + plain + POP_ISOLATE : plain;
}

/** What fills a sentence, with marks of direction left out of all its strings. */
function bare<T>(value: T): T;
function bare(value: unknown): unknown {
  if (typeof value === 'string') return unfenced(value);
  if (Array.isArray(value)) return value.map((one) => bare<unknown>(one));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, bare<unknown>(one)]));
}

/** All strings that fill a sentence, and the sentences in it. */
function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return value === '' ? [] : [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(stringsIn);
}

const escaped = (text: string): string => text.replaceAll(/[$()*+.?[\\\]^{|}]/g, String.raw`\$&`);

/**
 * A sentence as a page shows it, with each name of another script that fills it fenced in.
 * Names are looked for in what was said: of what fills a sentence some is never shown, as zones
 * and kinds, and some is compared. A translator by itself fences nothing: what is spoken, kept or
 * written into a file has no use for marks.
 */
export function sayFenced(
  { say, direction }: Pick<Translator, 'say' | 'direction'>,
  { key, params }: Message,
): string {
  const strings = stringsIn(params);
  const said = say(strings.some(hasControls) ? { key, params: bare(params) } : { key, params });
  const names = strings.map(unfenced).filter((name) => AGAINST[direction].test(name));
  if (names.length === 0) return said;
  // Of two names of which one holds the other, the longer one is meant.
  const longestFirst = [...new Set(names)].toSorted((a, b) => b.length - a.length);
  // A name of one letter is not the letter of a unit, nor one inside a word.
  const any = new RegExp(
    String.raw`(?<![\p{Script=Latin}\d°])(?:${longestFirst.map(escaped).join('|')})(?!\p{Script=Latin})`,
    'giu',
  );
  return said.replaceAll(any, (name) => isolated(name, direction));
}
