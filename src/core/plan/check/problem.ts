/** Something a plan may not have, told for whoever mends the builder. */
export type PlanProblem = {
  readonly rule:
    | 'ids'
    | 'needs'
    | 'cycle'
    | 'gates'
    | 'cautions'
    | 'faults'
    | 'stages'
    | 'timers'
    | 'cold'
    | 'rest'
    | 'rest-days'
    | 'cleaning-order'
    | 'chilled'
    | 'make-safe'
    | 'resources'
    | 'timetable'
    | 'methods'
    | 'questions'
    | 'hot-beside'
    | 'stands-on'
    | 'dry'
    | 'watch'
    | 'range'
    | 'passover-water'
    | 'parts';
  /** Ids of the steps (or of the fixture, gate, resource) it is about. */
  readonly about: readonly string[];
  readonly say: string;
};

export function problem(
  rule: PlanProblem['rule'],
  about: readonly string[],
  say: string,
): PlanProblem {
  return { rule, about, say };
}
