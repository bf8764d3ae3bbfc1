export type RefusalCode =
  | 'duplicate-id'
  | 'unknown-id'
  | 'bad-number'
  | 'too-many'
  | 'over-capacity'
  | 'cycle'
  | 'infeasible'
  | 'not-found';

/**
 * A problem that cannot be timed. `infeasible` is proven; `not-found` means
 * only that the search found nothing and could not prove that nothing exists.
 */
export class ScheduleRefusal extends Error {
  readonly code: RefusalCode;
  /** The field, e.g. `activities[3].durationS`. */
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(code: RefusalCode, input: string, found: unknown, allowed: string, advice: string) {
    super(`${input} is ${String(found)}; allowed: ${allowed}. ${advice}`);
    this.name = 'ScheduleRefusal';
    this.code = code;
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}
