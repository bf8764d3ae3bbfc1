import type { Message, Params } from '../model/message.ts';
import type { Translator } from './translator.ts';

type Direction = Translator['direction'];

/** Marks that turn or fence in what stands round them (Unicode Standard Annex 9, 2). */
const CONTROLS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;

/** Letters that are written against a direction: Hebrew, Arabic and their kin; Latin, Greek, Cyrillic, Armenian. */
const AGAINST: Readonly<Record<Direction, RegExp>> = {
  ltr: /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC]/,
  rtl: /[A-Za-z\u00C0-\u058F]/,
};

/** A text without marks of direction, for whoever measures it or cuts it into lines. */
export function unfenced(text: string): string {
  return text.replaceAll(CONTROLS, '');
}

/**
 * What a person wrote, to be shown on a page of a direction: of another script it is fenced in
 * (first strong isolate, pop isolate), so that neither turns the other round; marks of its own
 * that would reach out of it are left out.
 */
export function isolated(text: string, direction: Direction): string {
  const plain = unfenced(text);
  return AGAINST[direction].test(plain) ? `\u2068${plain}\u2069` : plain;
}

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
  const names = new Set<string>();
  let marked = false;
  const plain = JSON.stringify(params, (_, value: unknown) => {
    if (typeof value !== 'string') return value;
    const name = unfenced(value);
    marked ||= name !== value;
    if (AGAINST[direction].test(name)) names.add(name);
    return name;
  });
  const said = say({ key, params: marked ? (JSON.parse(plain) as Params) : params });
  if (names.size === 0) return said;
  // Of two names of which one holds the other, the longer one is meant.
  const any = [...names]
    .toSorted((a, b) => b.length - a.length)
    .map((name) => name.replaceAll(/[$()*+.?[\\\]^{|}]/g, String.raw`\$&`))
    .join('|');
  // A name of one letter is not the letter of a unit, nor one inside a word.
  return said.replaceAll(
    new RegExp(String.raw`(?<![\p{Script=Latin}\d°])(?:${any})(?!\p{Script=Latin})`, 'giu'),
    (name) => isolated(name, direction),
  );
}
