import { kitchenCodec } from '../codec/kitchen-codec.ts';
import type { Kitchen } from '../model/kitchen.ts';

const STEP = '  ';

/** A list of words that is longer goes one word a line, letters. */
const LONGEST_WORDS = 60;

/** Numbers, one list of numbers, or a few words: `[2.5, 0.6]`, `[[2, 3]]`, `["Noa", "Eli"]`. */
function isFlat(list: readonly unknown[]): boolean {
  const [only] = list;
  if (list.length === 1 && Array.isArray(only)) return isFlat(only);
  const isWords = list.every((one) => typeof one === 'string');
  if (isWords) return list.join('').length <= LONGEST_WORDS;
  return list.every((one) => typeof one === 'number');
}

/** Objects and lists of more than numbers go one item a line; a corner stays on one line. */
function print(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const deeper = indent + STEP;
  const wrap = (open: string, items: readonly string[], close: string): string =>
    items.length === 0
      ? open + close
      : `${open}\n${items.map((item) => deeper + item).join(',\n')}\n${indent}${close}`;
  if (!Array.isArray(value)) {
    const items = Object.entries(value).map(
      ([name, one]) => `${JSON.stringify(name)}: ${print(one, deeper)}`,
    );
    return wrap('{', items, '}');
  }
  const items = value.map((one: unknown) => print(one, deeper));
  return isFlat(value) ? `[${items.join(', ')}]` : wrap('[', items, ']');
}

/**
 * Writes a kitchen as a file: fields in the order of the format, two spaces,
 * LF, a line end at the end. Reading it back gives the same kitchen.
 */
export function formatKitchen(kitchen: Kitchen): string {
  return `${print(kitchenCodec.encode(kitchen), '')}\n`;
}
