/**
 * Names that the version after uses for what the version before called
 * otherwise, by what they name. A rename is no difference; everything else is.
 * Example: `role: { carry: 'freshness' }`.
 */
const RENAMES = {
  /** Kinds of steps, stages' phases, attention, what an interruption does, hazards. */
  word: {},
  /** Roles of timers. */
  role: { carry: 'freshness' },
  /** Kinds of facts. */
  fact: { 'doubt-reported': 'recheck-reported' },
  /** Fields of facts. */
  field: {},
  /** Ids of gates. */
  gate: {},
  /** Ids of cautions. */
  caution: {},
  /** Ids of questions, without the fixture. */
  question: {},
  /** Ids of what is bought. */
  shopping: {},
  /** Ids of resources. */
  resource: {},
} satisfies Record<string, Readonly<Record<string, string>>>;

export type Named = keyof typeof RENAMES;

/** The name in the version after. */
export function renamed(what: Named, name: string): string {
  return (RENAMES[what] as Readonly<Record<string, string>>)[name] ?? name;
}
