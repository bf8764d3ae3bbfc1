import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRun } from '../../../../../src/core/import/index.ts';
import { decodeJournal, encodeEntries } from '../../../../../src/core/journal/index.ts';
import { reportOf, reportText } from '../../../../../src/core/report/index.ts';
import { perform, view, type Fact } from '../../../../../src/core/run/index.ts';
import { inEnglish } from '../../../../support/english.ts';
import { frozenEntries, translator } from '../../../journal/frozen/read.ts';
import { runs } from '../../../../support/runs.ts';

const CLOSED = 'whole-sephardic-v2';
const OPEN = 'open-purge-v2';
const FROZEN = [
  'good-v1',
  'alarms-v1',
  'open-purge-v1',
  'rest-day-learned-v1',
  'whole-sephardic-v1',
  'alarms-v2',
  'disturbed-v2',
  'rest-day-calibrated-v2',
  OPEN,
  CLOSED,
];

type Loose = { at: unknown; body: Record<string, unknown> };

const factsOf = (name: string): readonly Fact[] => decodeJournal(frozenEntries(name)).facts;
const facts = { [CLOSED]: factsOf(CLOSED), [OPEN]: factsOf(OPEN) };
type Journal = keyof typeof facts;

const read = (changed: readonly unknown[]): ReturnType<typeof readRun> =>
  readRun(encodeEntries(changed as readonly Fact[]), inEnglish.say);

function problemsOf(changed: readonly unknown[]): string {
  const run = read(changed);
  return 'problems' in run ? run.problems.map(inEnglish.say).join('\n') : '';
}

/** The last fact of a kind, or the last of all, with something else in it. */
function withLast(name: Journal, kind: string | null, change: (fact: Loose) => object): unknown[] {
  const place = facts[name].findLastIndex(({ body }) => kind === null || body.kind === kind);
  expect(place).toBeGreaterThan(0);
  return facts[name].map((fact, i) =>
    i === place ? { ...fact, ...change(fact as unknown as Loose) } : fact,
  );
}

function withField(name: Journal, kind: string, field: string, value: unknown): unknown[] {
  return withLast(name, kind, ({ body }) => ({ body: { ...body, [field]: value } }));
}

/** The open run with one more fact. */
function withMore(body: object): unknown[] {
  const last = facts[OPEN].at(-1);
  return [...facts[OPEN], { ...last, seq: facts[OPEN].length + 1, id: 'more', body }];
}

const WALL = 'allowed: a finite number from 0 to 253402300799999';

describe('a fact of a run from a file', () => {
  it.each([
    [
      'no clock in any',
      () => facts[CLOSED].map((fact) => ({ ...fact, at: {} })),
      `at.wallMs is nothing; ${WALL}`,
    ],
    [
      'no clock in the last of an open run',
      () => withLast(OPEN, null, () => ({ at: {} })),
      `at.wallMs is nothing; ${WALL}`,
    ],
    [
      'a moment beyond all dates',
      () => withLast(CLOSED, null, ({ at }) => ({ at: { ...(at as object), wallMs: 1e300 } })),
      `at.wallMs is 1e+300; ${WALL}`,
    ],
    ['a note of nothing', () => withField(OPEN, 'noted', 'text', null), 'noted.text is null'],
    [
      'a note that is no text',
      () => withField(OPEN, 'noted', 'text', { a: 1 }),
      'noted.text is {"a":1}; allowed: a text',
    ],
    [
      'an end without a reason',
      () => withField(CLOSED, 'run-closed', 'reason', null),
      'run-closed.reason is null; allowed: an object',
    ],
    [
      'a reason that is no sentence',
      () => withField(CLOSED, 'run-closed', 'reason', { key: 'common.as-written', params: {} }),
      'run-closed.reason.params.text is nothing; allowed: a text',
    ],
    [
      'a stop without a reason',
      () => withMore({ kind: 'closing-begun', as: 'stopped', reason: null }),
      'closing-begun.reason is null; allowed: an object',
    ],
    [
      'a step that is over without a reason',
      () => withField(OPEN, 'step-settled', 'reason', null),
      'step-settled.reason is null; allowed: an object',
    ],
    [
      'a reason whose sentence lacks what fills it',
      () => withField(OPEN, 'step-settled', 'reason', { key: 'engine.step.went-on', params: {} }),
      'step-settled: Cannot ',
    ],
    [
      'a fault that nobody knows',
      () => withField(OPEN, 'fault-raised', 'faultKind', 'nope'),
      'fault-raised.faultKind is "nope"; allowed: burned, no-glow',
    ],
    [
      'a longer clock than anybody may ask for',
      () => withMore({ kind: 'timer-extended', timer: 'any', byS: 86_401 }),
      'timer-extended.byS is 86401; allowed: a finite number from 0 to 86400',
    ],
  ])('with %s is refused by its field', (_, changed, problem) => {
    // Verifies: I-28
    expect(problemsOf(changed())).toContain(problem);
  });

  it.each([
    ['step', { kind: 'step-repeated', step: 'constructor', attempt: 2, reason: words('So.') }],
    ['clock', { kind: 'timer-due', timer: 'constructor', cause: 1, lateByS: 0 }],
  ])('about a %s that only every object has is refused', (_, body) => {
    // Verifies: I-28
    expect(problemsOf(withMore(body))).toContain('tells of “constructor”');
  });

  it('is told by its record', () => {
    const seq = facts[OPEN].findLastIndex(({ body }) => body.kind === 'noted') + 1;
    expect(problemsOf(withField(OPEN, 'noted', 'text', 7))).toContain(`at record ${seq}.`);
  });

  it('may say more than is known', () => {
    expect(problemsOf(withField(OPEN, 'noted', 'more', 7))).toBe('');
  });

  it.each(FROZEN)('as a version wrote it is one: %s', (name) => {
    // Verifies: I-28, I-15
    const run = readRun(frozenEntries(name), inEnglish.say);
    // What plans of invented kitchens lack is another matter.
    const keys = 'problems' in run ? run.problems.map(({ key }) => key) : [];
    expect(keys.filter((key) => key !== 'shell.import.plan')).toEqual([]);
  });

  it.each([OPEN, CLOSED] as const)('as this version wrote it comes in: %s', (name) => {
    expect(problemsOf(facts[name])).toBe('');
  });
});

function words(text: string): object {
  return { key: 'common.as-written', params: { text } };
}

/** Where something lies in a fact: every field of it, and of what is in it. */
function placesIn(value: unknown, at: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) =>
    name === 'plan' || (at.length === 0 && name === 'seq')
      ? []
      : [[...at, name], ...placesIn(one, [...at, name])],
  );
}

function replaced(value: unknown, [name, ...more]: readonly string[], junk: unknown): unknown {
  if (name === undefined) return junk;
  const inside = replaced((value as Record<string, unknown>)[name], more, junk);
  return Array.isArray(value)
    ? value.map((one: unknown, i) => (String(i) === name ? inside : one))
    : { ...(value as object), [name]: inside };
}

const junk = fc.oneof(
  fc.constantFrom<unknown>(null, true, {}, { a: 1 }, [], [null], { key: 'common.as-written' }),
  fc.constantFrom<unknown>(-1, 0, 1.5, 1e15, 1e300, -1e300),
  fc.constantFrom<unknown>('', 'NaN', 'junk', 'constructor', '__proto__'),
);

/** One fact of a journal, of each kind as often, and where in it something lies. */
const somewhere = fc.constantFrom<Journal>(OPEN, CLOSED).chain((name) => {
  const kinds = new Set(facts[name].map(({ body }) => body.kind));
  return fc
    .constantFrom(...kinds)
    .chain((kind) => fc.constantFrom(...facts[name].filter(({ body }) => body.kind === kind)))
    .chain((fact) =>
      fc.record({
        name: fc.constant(name),
        seq: fc.constant(fact.seq),
        place: fc.constantFrom(...placesIn(fact)),
      }),
    );
});

describe('a run from a file with junk in one place', () => {
  it('is refused, or can be shown, told, opened and stopped', { timeout: 120_000 }, () => {
    // Verifies: I-28, I-13
    fc.assert(
      fc.property(somewhere, junk, ({ name, seq, place }, value) => {
        const run = read(
          facts[name].map((fact) => (fact.seq === seq ? replaced(fact, place, value) : fact)),
        );
        if ('problems' in run) {
          expect(run.problems.map(inEnglish.say).join()).not.toBe('');
          return;
        }
        const { lastAt } = run.state.clock;
        view(run.state, lastAt);
        reportText(reportOf(run.facts), translator, 'UTC');
        if (run.state.status === 'closed') return;
        const later = { wallMs: lastAt.wallMs + 60_000, monoMs: 0, session: 'another page' };
        const opened = perform(run.state, { kind: 'session-opened', tornRecords: 0 }, later);
        if ('refusal' in opened) throw new Error(opened.refusal.code);
        view(opened.state, later);
        // All was safe and it was about to close: so it has.
        if (opened.state.status === 'closed') return;
        const stopped = perform(opened.state, { kind: 'stop-run', reason: 'Enough.' }, later);
        if ('refusal' in stopped) throw new Error(stopped.refusal.code);
        view(stopped.state, later);
      }),
      { numRuns: runs(120) },
    );
  });
});
