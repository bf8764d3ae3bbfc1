import { crc32 as libraryCrc32 } from 'node:zlib';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decodeJournal,
  encodeEntry,
  encodeEntries,
  exportJournal,
  importJournal,
  openJournal,
  type JournalEntry,
} from '../../../src/core/journal/index.ts';
import { canonical } from '../../../src/core/journal/canonical.ts';
import { crc32 } from '../../../src/core/journal/crc32.ts';
import type { Fact } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { purgePlan } from '../run/support/fixtures.ts';
import { glowing } from '../run/support/tablet.ts';

const { facts } = glowing(purgePlan);
const entries = encodeEntries(facts);

/** The same entries with one changed and its sum made right again: a forger who knows the format. */
function forged(at: number, change: (entry: JournalEntry) => object): unknown[] {
  return entries.map((entry, index) => {
    if (index !== at) return entry;
    const { sum: _, ...rest } = { ...entry, ...change(entry) };
    return { ...rest, sum: crc32(canonical(rest)) };
  });
}

describe('the checksum', () => {
  it('gives the published check value of CRC-32 (ISO 3309, ITU-T V.42)', () => {
    // Check value 0xCBF43926 over "123456789", as printed in catalogues of CRC parameters; from memory.
    expect(crc32('123456789')).toBe('cbf43926');
    expect(crc32('')).toBe('00000000');
  });

  it('agrees with a reference library on any text', () => {
    // Reference: crc32 of zlib as shipped with Node, exact; computed.
    const check = (text: string): void => {
      const library = libraryCrc32(Buffer.from(text, 'utf8')).toString(16).padStart(8, '0');
      expect(crc32(text)).toBe(library);
    };
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), check));
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 50 }), check));
    check('שלום – ½ 🔥');
  });
});

describe('canonical text', () => {
  it('does not depend on the order of keys, and refuses what JSON cannot carry', () => {
    expect(canonical({ b: [1, { d: null, c: 'x' }], a: true, u: undefined })).toBe(
      '{"a":true,"b":[1,{"c":"x","d":null}]}',
    );
    expect(() => canonical({ a: Infinity })).toThrow(/finite/);
    expect(() => canonical({ a: () => 1 })).toThrow(/function/);
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});

describe('a journal', () => {
  it('reads back as it was written, from objects or from text', () => {
    // Verifies: I-02
    expect(decodeJournal(entries)).toMatchObject({ torn: 0, facts, lastSum: entries.at(-1)?.sum });
    expect(decodeJournal(entries.map((entry) => JSON.stringify(entry))).facts).toEqual(facts);
    expect(decodeJournal(entries).problem).toBeUndefined();
  });

  it('is written on from its last sum', () => {
    const opened = decodeJournal(entries.slice(0, 5));
    const rest = encodeEntries(facts.slice(5), opened.lastSum);
    expect([...entries.slice(0, 5), ...rest]).toEqual(entries);
    expect(() => encodeEntry(facts[3] as Fact)).toThrow(/prev/);
    expect(() => encodeEntry(facts[0] as Fact, '00000abc')).toThrow(/prev/);
    const bad = {
      ...facts[1],
      body: { kind: 'noted', text: 'x', n: Number.NaN },
    } as unknown as Fact;
    expect(() => encodeEntry(bad, '00000abc')).toThrow(/finite/);
    // What turns into something else on the disk is found before it is written.
    const changed = { ...facts[1], body: { kind: 'noted', text: new Date(0) } } as unknown as Fact;
    expect(() => encodeEntry(changed, '00000abc')).toThrow(/does not survive/);
  });

  it('drops and counts a torn last entry, whatever is left of it', () => {
    // Verifies: I-14
    const last = JSON.stringify(entries.at(-1));
    for (let cut = 0; cut < last.length; cut += 7) {
      const opened = decodeJournal([...entries.slice(0, -1), last.slice(0, cut)]);
      expect(opened).toMatchObject({ torn: 1 });
      expect(opened.facts).toHaveLength(facts.length - 1);
      expect(opened.problem).toBeUndefined();
    }
    for (const rest of [undefined, null, 7, [], {}, { v: 2, seq: facts.length }]) {
      expect(decodeJournal([...entries.slice(0, -1), rest]).torn).toBe(1);
    }
  });

  it('any change of any entry is found, and what came before it is kept', () => {
    fc.assert(
      fc.property(
        fc.nat(entries.length - 1),
        fc.nat(),
        fc.integer({ min: 1, max: 127 }),
        (at, where, by) => {
          const text = JSON.stringify(entries[at]);
          const place = where % text.length;
          const other = String.fromCharCode((text.charCodeAt(place) + by) % 128);
          const changed = text.slice(0, place) + other + text.slice(place + 1);
          const opened = decodeJournal(
            entries.map((entry, index) => (index === at ? changed : entry)),
          );
          const same = sameValue(changed, entries[at]);
          if (same) expect(opened.problem).toBeUndefined();
          else {
            const torn = opened.torn === 1 && at === entries.length - 1;
            expect(torn || opened.problem !== undefined).toBe(true);
            expect(opened.facts).toEqual(facts.slice(0, at));
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('damaged into a number beyond all bounds is altered, not a crash', () => {
    // Verifies: I-02, I-15
    const text = JSON.stringify(entries[4]).replace(/"wallMs":\d+/, '"wallMs":1e999');
    const opened = openJournal(entries.map((entry, index) => (index === 4 ? text : entry)));
    expect(opened.problem).toMatchObject({ name: 'altered', seq: 5 });
    expect(opened.state?.seq).toBe(4);
  });

  it('names what is wrong, and never resets', () => {
    // Verifies: I-02, I-15
    const middle = 4;
    const cases: [unknown[], string][] = [
      [[], 'empty'],
      [['{"v":2,'], 'empty'],
      [entries.map((entry, index) => (index === middle ? 'xx' : entry)), 'corrupt'],
      [entries.filter((_, index) => index !== middle), 'broken-chain'],
      [[...entries.slice(0, 5), entries[4], ...entries.slice(5)], 'broken-chain'],
      [forged(middle, () => ({ v: 3 as never })), 'newer-version'],
      [
        forged(middle, ({ fact }) => ({ fact: { ...fact, body: { kind: 'teleported' } } })),
        'unknown-fact',
      ],
      // A forger who mends the sum of one entry breaks the chain at the next.
      [forged(middle, ({ fact }) => ({ fact: { ...fact, id: 'other' } })), 'broken-chain'],
    ];
    for (const [some, name] of cases) {
      const opened = decodeJournal(some);
      expect(opened.problem?.name).toBe(name);
      expect(opened.facts.length).toBeLessThan(entries.length);
    }
  });

  it('of good entries that cannot have happened does not fold', () => {
    const wrong = {
      ...facts[1],
      body: { kind: 'step-started', step: 'nowhere', attempt: 1, by: 'person' },
    } as Fact;
    const opened = openJournal(encodeEntries([facts[0] as Fact, wrong]));
    expect(opened.problem).toMatchObject({ name: 'does-not-fold' });
    expect(opened.state).toBeUndefined();
  });
});

function sameValue(text: string, entry: unknown): boolean {
  try {
    return canonical(JSON.parse(text)) === canonical(entry);
  } catch {
    return false;
  }
}

describe('a journal file', () => {
  it('comes back as it went out', () => {
    const file = importJournal(exportJournal(entries));
    expect('entries' in file && decodeJournal(file.entries).facts).toEqual(facts);
  });

  it('of version 1 keeps its entries where version 1 kept them', () => {
    const file = JSON.stringify({ format: 'glowpour-journal', version: 1, records: [1, 2] });
    expect(importJournal(file)).toEqual({ entries: [1, 2] });
  });

  it('says what is wrong with another file', () => {
    const problem = (text: string): string => {
      const file = importJournal(text);
      return 'problem' in file ? inEnglish.say(file.problem) : '';
    };
    expect(problem('no')).toMatch(/not JSON/);
    expect(problem('null')).toMatch(/format is undefined/);
    expect(problem('{"format":"x"}')).toMatch(/format is "x"; allowed: "glowpour-journal"/);
    expect(problem('{"format":"glowpour-journal","version":9}')).toMatch(/version is 9/);
    expect(problem('{"format":"glowpour-journal","version":1}')).toMatch(/records is not a list/);
    expect(problem('{"format":"glowpour-journal","version":2}')).toMatch(/entries is not a list/);
    expect(problem(' '.repeat(20_000_001))).toMatch(/allowed: up to/);
  });
});
