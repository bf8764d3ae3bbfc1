/** The invariants of the engine, I-01 to I-30; the 27th is the page's. */
export const INVARIANTS: readonly string[] = Array.from(
  { length: 30 },
  (_, index) => `I-${String(index + 1).padStart(2, '0')}`,
).filter((number) => number !== 'I-27');

/** One way to break a promise, and the tests that must notice. */
export type Mutation = {
  readonly id: string;
  /** Invariants that the change breaks. */
  readonly breaks: readonly string[];
  /** File, from the root. */
  readonly file: string;
  /** Text that stands exactly once in the file. */
  readonly find: string;
  readonly replace: string;
  /** What would go wrong. */
  readonly why: string;
  /** Test files that must fail, from the root. */
  readonly tests: readonly string[];
};

/** Path of a test of the run engine. */
export function run(name: string): string {
  return `tests/core/run/${name}.test.ts`;
}

/** Path of a test of one promise. */
export function promise(name: string): string {
  return run(`promises/${name}`);
}

/** Path of a test of the journal. */
export function journal(name: string): string {
  return `tests/core/journal/${name}.test.ts`;
}
