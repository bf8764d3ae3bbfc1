import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJsonText } from '../../../../src/core/kitchen/codec/json-text.ts';
import { inEnglish } from '../../../support/english.ts';
import { DEMO_TEXTS } from '../demos.ts';

/** Reference: the engine's own reader of RFC 8259. Confidence: computed; equal answers. */
function theirs(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

function agrees(text: string): void {
  const ours = readJsonText(text);
  const reference = theirs(text);
  if (reference === undefined) expect(ours).toHaveProperty('fault');
  else
    expect(JSON.stringify('value' in ours ? ours.value : ours)).toBe(
      JSON.stringify(reference.value),
    );
}

describe('the JSON reader', () => {
  it('reads what the engine reads', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6 }), agrees), { numRuns: 300 });
  });

  it('accepts and refuses random scraps as the engine does', () => {
    const scrap = fc.constantFrom(
      '{', '}', '[', ']', ',', ':', '"a"', '"', '1', '-', '0', '.5', 'e3', 'E+2', '01', 'true', 'null',
      'nul', 'NaN', ' ', '\n', '\r', '\t', '\\', '\\u00e9', '\\u12', "'", '/', '\u0001', '\u00a0', 'é', '-0', '1e400',
    ); // prettier-ignore
    const scraps = fc.array(scrap, { maxLength: 9 }).map((all) => all.join(''));
    fc.assert(fc.property(scraps, agrees), { numRuns: 3000 });
  });

  it('accepts and refuses a demo with one letter spoilt as the engine does', () => {
    const spoilt = fc
      .tuple(
        fc.constantFrom(...DEMO_TEXTS),
        fc.nat(),
        fc.constantFrom('', ',', '"', '}', ']', '0', '\n', ':'),
      )
      .map(([[, text], n, letter]) => {
        const at = n % text.length;
        return text.slice(0, at) + letter + text.slice(at + 1);
      });
    fc.assert(
      fc.property(spoilt, (text) => {
        const ours = readJsonText(text);
        expect('fault' in ours).toBe(theirs(text) === undefined);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps a field called __proto__ a field', () => {
    const read = readJsonText('{"__proto__": {"a": 1}}');
    expect('value' in read && Object.keys(read.value as object)).toEqual(['__proto__']);
  });

  it('counts lines for LF, CR and CRLF alike', () => {
    for (const end of ['\n', '\r', '\r\n']) {
      const read = readJsonText(['{', '"a": [', '1,', '2', ']', '}'].join(end));
      expect('lineOf' in read && read.lineOf.get('a[1]')).toBe(4);
    }
  });

  it('names fields written twice', () => {
    const read = readJsonText('{"a": 1, "b": {"c": 1, "c": 2}, "a": 3}');
    expect(read).toMatchObject({ repeated: ['b.c', 'a'] });
  });

  it.each([
    ['{"a": 1 "b": 2}', 1, 9, 'comma'],
    ['{\n"a": 1,\n}', 3, 1, 'comma'],
    ['{"a": 1,5}', 1, 9, 'point'],
    ["{'a': 1}", 1, 2, 'double quotes'],
    ['{"a": “b”}', 1, 7, 'double quotes'],
    ['{"a" 1}', 1, 6, 'colon'],
    ['{"a": .5}', 1, 7, 'zero'],
    ['{"a": +5}', 1, 7, 'plus'],
    ['{"a": 2m}', 1, 7, 'unit'],
    ['{"a": // two\n2}', 1, 7, 'comment'],
    ['{"a": [1, 2', 1, 12, 'close'],
    ['{"a": "b\n"}', 1, 9, 'close'],
    ['{"a": "\\q"}', 1, 9, 'backslash'],
    ['{} {}', 1, 4, 'after the last'],
    ['[1,]', 1, 4, 'comma'],
    [`${'['.repeat(2000)}`, 1, 42, 'Close brackets'],
  ])('says where %s breaks off and what to do', (text, line, column, advice) => {
    const read = readJsonText(text);
    expect(read).toMatchObject({ fault: { line, column } });
    expect('fault' in read && inEnglish.say(read.fault.advice)).toContain(advice);
  });
});
