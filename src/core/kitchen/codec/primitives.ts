import { message, type Message } from '../../messages/index.ts';
import type { Range } from '../model/limits.ts';
import { seenText } from '../model/plain-line.ts';
import { quoted, quotedList } from '../model/problem.ts';
import type { Codec } from './codec.ts';
import { didYouMean } from './nearest.ts';

const same = <T>(value: T): T => value;

const DECIMAL_TEXT = /^\s*-?\d+([.,]\d+)?\s*\p{L}*\s*$/u;

function numberAdvice(value: unknown, { least, most }: Range): Message {
  if (typeof value === 'string' && DECIMAL_TEXT.test(value)) return message('problems.number.bare');
  if (value === undefined) return message('problems.number.add');
  if (typeof value !== 'number') return message('problems.number.plain');
  return value < least
    ? message('problems.number.more', { least, most })
    : message('problems.number.less', { least, most });
}

/** A finite number within a range. */
export function number(range: Range): Codec<number> {
  const { least, most } = range;
  return {
    schema: { type: 'number', minimum: least, maximum: most },
    encode: same,
    read(value, at, notes) {
      if (typeof value === 'number' && value >= least && value <= most) {
        return value === 0 ? 0 : value; // JSON knows a minus zero; nobody measures one
      }
      const allowed = message('problems.number.allowed', { least, most });
      return notes.refuse(at, value, allowed, numberAdvice(value, range));
    },
  };
}

/** A whole number within a range. */
export function whole(range: Range): Codec<number> {
  const { least, most } = range;
  const inside = number(range);
  return {
    schema: { type: 'integer', minimum: least, maximum: most },
    encode: same,
    read(value, at, notes) {
      if (typeof value === 'number' && Number.isFinite(value) && !Number.isInteger(value)) {
        const allowed = message('problems.whole.allowed', { least, most });
        const advice = message('problems.whole.round', { to: Math.round(value) });
        return notes.refuse(at, value, allowed, advice);
      }
      return inside.read(value, at, notes);
    },
  };
}

/**
 * Text of so many letters that is not blank. What nobody sees in it, and what
 * would turn the words around it, is left out and told.
 */
export function text({ least, most }: Range): Codec<string> {
  const allowed = message('problems.text.allowed', { least, most });
  return {
    schema: { type: 'string', minLength: least, maxLength: most, pattern: '\\S' },
    encode: same,
    read(value, at, notes) {
      if (typeof value !== 'string') {
        return notes.refuse(at, value, allowed, message('problems.text.write'));
      }
      const seen = seenText(value);
      const letters = [...seen].length;
      if (letters > most) {
        const advice = message('problems.text.shorten', { by: letters - most });
        return notes.refuse(at, value, allowed, advice);
      }
      if (!/\S/u.test(seen)) {
        return notes.refuse(at, value, allowed, message('problems.text.blank'));
      }
      if (seen !== value) notes.leftOut(at, value);
      return seen;
    },
  };
}

/** Text of one form. */
export function form(pattern: string, allowed: Message, advice: Message): Codec<string> {
  const expression = new RegExp(pattern, 'u');
  return {
    schema: { type: 'string', pattern },
    encode: same,
    read(value, at, notes) {
      if (typeof value === 'string' && expression.test(value)) return value;
      return notes.refuse(at, value, allowed, advice);
    },
  };
}

/** One of a list of words. */
export function choice<T extends string>(words: readonly T[]): Codec<T> {
  return {
    schema: { enum: words },
    encode: same,
    read(value, at, notes) {
      const found = words.find((word) => word === value);
      if (found !== undefined) return found;
      const advice = didYouMean(value, words, message('problems.choice.advice'));
      return notes.refuse(at, value, quotedList(words), advice);
    },
  };
}

/** true or false. */
export const yesNo: Codec<boolean> = {
  schema: { type: 'boolean' },
  encode: same,
  read(value, at, notes) {
    if (typeof value === 'boolean') return value;
    const allowed = message('problems.yes-no.allowed');
    return notes.refuse(at, value, allowed, message('problems.yes-no.advice'));
  },
};

/** Exactly this one value. */
export function only<T extends string | number>(constant: T, advice: Message): Codec<T> {
  const allowed =
    typeof constant === 'string'
      ? quoted(constant)
      : message('problems.value', { json: String(constant) });
  return {
    schema: { const: constant },
    encode: same,
    read(value, at, notes) {
      return value === constant ? constant : notes.refuse(at, value, allowed, advice);
    },
  };
}
