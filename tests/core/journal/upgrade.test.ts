import { describe, expect, it } from 'vitest';
import {
  decodeJournal,
  encodeEntries,
  exportJournal,
  importJournal,
  openJournal,
} from '../../../src/core/journal/index.ts';
import { canonical } from '../../../src/core/journal/canonical.ts';
import { crc32 } from '../../../src/core/journal/crc32.ts';
import { resourceKindOf } from '../../../src/core/journal/upgrade/resource-kind.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import { finishes, standing } from '../run/support/finishing.ts';
import { frozenEntries } from './frozen/read.ts';

type Loose = { v: number; seq: number; fact: { body: Record<string, unknown> }; sum: string };

function stepsOf(first: Loose | undefined): readonly object[] {
  return (first?.fact.body['plan'] as { steps: readonly object[] } | undefined)?.steps ?? [];
}

/** Entries of version 1 with one body changed and every sum made right again. */
function forged(at: number, body: Record<string, unknown>): readonly unknown[] {
  let prev: string | undefined;
  return (frozenEntries('good-v1') as readonly Loose[]).map((entry, index) => {
    const { v, seq, fact } = entry;
    const rest = {
      v,
      seq,
      ...(prev !== undefined && { prev }),
      fact: index === at ? { ...fact, body } : fact,
    };
    prev = crc32(canonical(rest));
    return { ...rest, sum: prev };
  });
}

describe('an entry of version 1', () => {
  it('is kept as it is stored, and told in the words of version 2', () => {
    const raw = frozenEntries('good-v1');
    const { entries, facts } = decodeJournal(raw);
    expect(entries).toEqual(raw);
    const kinds = facts.map(({ body }) => body.kind);
    expect(kinds).toContain('recheck-reported');
    expect(kinds).not.toContain('doubt-reported');
    expect(facts.map(({ seq, id, at }) => ({ seq, id, at }))).toEqual(
      entries.map(({ fact: { seq, id, at } }) => ({ seq, id, at })),
    );
  });

  it('has its sentences as they were written', () => {
    const raw = frozenEntries('open-purge-v1') as readonly Loose[];
    const { facts } = decodeJournal(raw);
    /** Every message that is as written, as its text. */
    const plain = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null) return value;
      const { key, params } = value as Partial<Message>;
      if (key === 'common.as-written') return params?.['text'];
      if (Array.isArray(value)) return value.map(plain);
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, plain(one)]));
    };
    const text = JSON.stringify(facts);
    expect(text.match(/"key":"(?!common\.as-written)/g)).toBeNull();
    const [first] = facts;
    const [firstRaw] = raw;
    if (first?.body.kind !== 'drafted') throw new Error('no plan');
    const steps = plain(first.body.plan.steps) as readonly object[];
    const before = stepsOf(firstRaw);
    expect(steps).toHaveLength(before.length);
    steps.forEach((step, n) => expect(step).toMatchObject(before[n] ?? {}));
    expect(facts.some(({ body }) => body.kind === 'plan-amended')).toBe(true);
  });

  it('says what kind of thing its resources are', () => {
    const { state } = openJournal(frozenEntries('open-purge-v1'));
    const kinds = Object.fromEntries(state?.plan.resources.map(({ id, kind }) => [id, kind]) ?? []);
    expect(kinds).toMatchObject({
      hands: 'hands',
      'burners-lit': 'burners-lit',
      'range-range-top': 'range',
      'vessel-kettle': 'vessel',
      'circuit-sockets-left': 'circuit',
    });
    expect(resourceKindOf('kettle')).toBe('vessel');
  });

  it('that version 1 cannot have written is no crash', () => {
    expect(decodeJournal(forged(4, { kind: 'teleported' })).problem).toMatchObject({
      name: 'unknown-fact',
      seq: 5,
    });
    const bad = openJournal(forged(0, { kind: 'drafted', plan: { steps: 7 } }));
    expect(bad.problem).toMatchObject({ name: 'does-not-fold', seq: 1 });
    expect(bad.facts).toEqual([]);
  });
});

describe('a run begun in version 1', () => {
  it('goes on in version 2, in one journal', () => {
    const raw = frozenEntries('open-purge-v1');
    const { facts, state, lastSum } = openJournal(raw);
    if (!state) throw new Error('no state');
    const tablet = standing(facts, state.plan);
    tablet.restarts(60);
    finishes(tablet);
    const later = tablet.facts.slice(facts.length);
    expect(later.length).toBeGreaterThan(10);
    const whole = [...raw, ...encodeEntries(later, lastSum)];
    const again = openJournal(whole);
    expect(again.problem).toBeUndefined();
    expect(again.state).toEqual(tablet.state);
    expect(again.entries.map(({ v }) => v)).toEqual([...raw.map(() => 1), ...later.map(() => 2)]);
    // What is stored of version 1 leaves as it is, and comes back.
    const file = importJournal(exportJournal(again.entries));
    expect('entries' in file && decodeJournal(file.entries).facts).toEqual(tablet.facts);
  });
});
