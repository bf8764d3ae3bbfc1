import countries from '../../../../shared/countries.json';

/** What is usual for one country. */
export type Country = {
  /** ISO 3166-1 alpha-2 */
  readonly code: string;
  /** Nominal mains voltage between line and neutral, volts. */
  readonly supplyV: number;
  /** Usual ratings of the circuit behind a kitchen socket, amperes. */
  readonly socketA: readonly number[];
  /** Rated power of an ordinary electric kettle, watts. */
  readonly kettleW: number;
};

const BY_CODE: ReadonlyMap<string, Country> = new Map(
  countries.rows.map((row) => [row.code, row] as const),
);

/** Codes of the countries whose mains voltage the table knows. */
export const COUNTRY_CODES: readonly string[] = [...BY_CODE.keys()];

/** The row of a country, or none when the table does not hold it. */
export function countryOf(code: unknown): Country | undefined {
  return typeof code === 'string' ? BY_CODE.get(code) : undefined;
}
