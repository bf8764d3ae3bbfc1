import { didYouMean } from './nearest.ts';
import type { JsonSchema, Codec } from './codec.ts';

const same = <T>(value: T): T => value;

const DECIMAL_TEXT = /^\s*-?\d+([.,]\d+)?\s*\p{L}*\s*$/u;

function numberAdvice(value: unknown, min: number, max: number): string {
  if (typeof value === 'string' && DECIMAL_TEXT.test(value)) {
    return 'Write the number without quotes and without a unit, with a point for decimals.';
  }
  if (value === undefined) return 'Add this field.';
  if (typeof value !== 'number') return 'Write a plain number.';
  const side = value < min ? 'more' : 'less';
  return `Enter ${side}, in the unit at the end of the name (${min} to ${max}).`;
}

/** A finite number from `min` to `max`, both allowed. */
export function number(min: number, max: number): Codec<number> {
  return {
    schema: { type: 'number', minimum: min, maximum: max },
    arrange: same,
    read(value, at, notes) {
      if (typeof value === 'number' && value >= min && value <= max) {
        return value === 0 ? 0 : value; // JSON knows a minus zero; nobody measures one
      }
      const advice = numberAdvice(value, min, max);
      return notes.refuse(at, value, `a number from ${min} to ${max}`, advice);
    },
  };
}

/** A whole number from `min` to `max`. */
export function whole(min: number, max: number): Codec<number> {
  const inside = number(min, max);
  return {
    schema: { type: 'integer', minimum: min, maximum: max },
    arrange: same,
    read(value, at, notes) {
      const allowed = `a whole number from ${min} to ${max}`;
      if (typeof value === 'number' && Number.isFinite(value) && !Number.isInteger(value)) {
        return notes.refuse(at, value, allowed, `Round it: ${Math.round(value)}.`);
      }
      return inside.read(value, at, notes);
    },
  };
}

/** Text of 1 to `longest` letters that is not blank. */
export function text(longest: number): Codec<string> {
  const allowed = `text of 1 to ${longest} letters in quotes`;
  return {
    schema: { type: 'string', minLength: 1, maxLength: longest, pattern: '\\S' },
    arrange: same,
    read(value, at, notes) {
      if (typeof value !== 'string') {
        return notes.refuse(at, value, allowed, 'Write some words in quotes.');
      }
      const letters = [...value].length;
      if (letters > longest) {
        return notes.refuse(at, value, allowed, `Shorten it by ${letters - longest} letters.`);
      }
      if (!/\S/u.test(value)) return notes.refuse(at, value, allowed, 'Write something here.');
      return value;
    },
  };
}

/** Text of one form. */
export function form(
  pattern: string,
  allowed: string,
  advice: string,
  more: JsonSchema = {},
): Codec<string> {
  const expression = new RegExp(pattern, 'u');
  return {
    schema: { type: 'string', pattern, ...more },
    arrange: same,
    read(value, at, notes) {
      if (typeof value === 'string' && expression.test(value)) return value;
      return notes.refuse(at, value, allowed, advice);
    },
  };
}

/** One of a list of words. */
export function choice<T extends string>(words: readonly T[]): Codec<T> {
  const allowed = words.map((word) => `"${word}"`).join(', ');
  return {
    schema: { enum: words },
    arrange: same,
    read(value, at, notes) {
      const found = words.find((word) => word === value);
      if (found !== undefined) return found;
      return notes.refuse(at, value, allowed, didYouMean(value, words, 'Choose one of these.'));
    },
  };
}

/** true or false. */
export const yesNo: Codec<boolean> = {
  schema: { type: 'boolean' },
  arrange: same,
  read(value, at, notes) {
    if (typeof value === 'boolean') return value;
    return notes.refuse(at, value, 'true or false', 'Write true or false, without quotes.');
  },
};

/** Exactly this one value. */
export function only<T extends string | number>(constant: T, advice: string): Codec<T> {
  return {
    schema: { const: constant },
    arrange: same,
    read(value, at, notes) {
      if (value === constant) return constant;
      return notes.refuse(at, value, JSON.stringify(constant), advice);
    },
  };
}
