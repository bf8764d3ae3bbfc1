import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeText, fold, LINE_OCTETS } from '../../../../src/core/report/ical/content-line.ts';

const bytes = (text: string): number => new TextEncoder().encode(text).length;

/** Unfolding as RFC 5545, 3.1, words it: every CRLF with the one white space after it is removed. */
const unfold = (text: string): string => text.replaceAll(/\r\n[ \t]/g, '');

describe('folding', () => {
  it('unfolds to the example of the standard', () => {
    // Check: RFC 5545, 3.1, read in a copy; exact.
    const standard = 'DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.';
    const long = 'DESCRIPTION:This is a long description that exists on a long line.';
    expect(unfold(standard)).toBe(long);
    expect(unfold(fold(long))).toBe(`${long}\r\n`);
  });

  it('folds at 75 octets, the space of the next line counted', () => {
    // Check: RFC 5545, 3.1 (at most 75 octets without the break), read in a copy; exact.
    expect(fold('a'.repeat(LINE_OCTETS))).toBe(`${'a'.repeat(75)}\r\n`);
    expect(fold('a'.repeat(150))).toBe(`${'a'.repeat(75)}\r\n ${'a'.repeat(74)}\r\n a\r\n`);
  });

  it('never cuts a letter of several octets', () => {
    expect(fold(`${'a'.repeat(74)}é`)).toBe(`${'a'.repeat(74)}\r\n é\r\n`);
    expect(fold(`${'a'.repeat(72)}🔥`)).toBe(`${'a'.repeat(72)}\r\n 🔥\r\n`);
    expect(fold(`${'a'.repeat(71)}🔥`)).toBe(`${'a'.repeat(71)}🔥\r\n`);
  });

  it('holds for any text: short lines, whole letters, nothing lost', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
        const line = text.replaceAll(/[\r\n]/g, '');
        const folded = fold(line);
        expect(unfold(folded)).toBe(`${line}\r\n`);
        for (const part of folded.split('\r\n')) {
          expect(bytes(part)).toBeLessThanOrEqual(75);
          expect(part.isWellFormed()).toBe(true);
        }
      }),
    );
  });
});

describe('escaping', () => {
  it('writes the example of the standard', () => {
    // Check: RFC 5545, 3.3.11, from memory; exact.
    expect(escapeText('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  it('escapes what would end a value, and leaves the colon and quotes', () => {
    expect(escapeText('a;b,c\\d:"e"')).toBe('a\\;b\\,c\\\\d:"e"');
  });

  it('knows every kind of line end, and drops what the format forbids', () => {
    expect(escapeText('a\r\nb\rc\nd')).toBe('a\\nb\\nc\\nd');
    expect(escapeText('a\u0000\u0007b\u007F\tc')).toBe('ab\tc');
    expect(escapeText('a\uD83Db')).toBe('a\uFFFDb');
  });

  it('cannot be used to smuggle a line into the calendar', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(escapeText(text)).not.toMatch(/[\r\n]/);
      }),
    );
  });
});
