/**
 * A model refuses an input it has no ground to answer for. Never a number:
 * the caller shows `message`, which names the input, what was found, what is
 * allowed and what to do.
 */
export class OutOfRangeError extends RangeError {
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(
    input: string,
    found: unknown,
    allowed: string,
    advice = 'Enter a value in that range.',
  ) {
    super(`${input} is ${String(found)}; allowed: ${allowed}. ${advice}`);
    this.name = 'OutOfRangeError';
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}

/**
 * Returns `value` if it is a finite number within [min, max].
 * @param input name with its unit last, e.g. `altitudeM`
 * @throws OutOfRangeError otherwise
 */
export function inRange(input: string, value: number, min: number, max: number): number {
  if (typeof value !== 'number' || !(value >= min && value <= max)) {
    throw new OutOfRangeError(input, value, `${min} to ${max}`);
  }
  return value;
}
