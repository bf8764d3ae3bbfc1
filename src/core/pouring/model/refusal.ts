export type LanesRefusalCode =
  | 'too-few-points'
  | 'not-a-number'
  | 'too-large'
  | 'too-many-points'
  | 'too-fine'
  | 'no-area'
  | 'all-cut-away'
  | 'no-such-edge'
  | 'swath-out-of-range'
  | 'volume-out-of-range'
  | 'speed-out-of-range'
  | 'size-out-of-range'
  | 'place-out-of-range'
  | 'arm-out-of-range'
  | 'nowhere-to-stand';

/**
 * A surface or an amount for which no lanes can be drawn. Its message names
 * the field, what was found, what is allowed and what to do.
 */
export class LanesRefusal extends Error {
  readonly code: LanesRefusalCode;
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(
    code: LanesRefusalCode,
    input: string,
    found: unknown,
    allowed: string,
    advice: string,
  ) {
    super(`${input} is ${String(found)}; allowed: ${allowed}. ${advice}`);
    this.name = 'LanesRefusal';
    this.code = code;
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}

/**
 * Returns `value` if it is a number within [min, max].
 * @throws LanesRefusal with `code` otherwise
 */
export function within(
  code: LanesRefusalCode,
  input: string,
  value: number,
  min: number,
  max: number,
): number {
  if (typeof value !== 'number' || !(value >= min && value <= max)) {
    throw new LanesRefusal(
      code,
      input,
      value,
      `${min} to ${max}`,
      'Enter a value in that range, in the unit the name ends with.',
    );
  }
  return value;
}
