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
  /** Voltage on the plate of an ordinary kettle where it is not the nominal one. */
  readonly kettleV?: number;
  /** How its sockets are fused; id of a practice. */
  readonly practice: string;
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

/** Voltage on the plate of an ordinary kettle, V: 240 V where plates say "220-240 V", else the mains. */
export function kettlePlateV(code: unknown, supplyV: number): number {
  return countryOf(code)?.kettleV ?? supplyV;
}

/** Where a country is not in the table. */
const STRICT_SHARE = 1;

/**
 * What one short load (a kettle) may draw of a circuit's rating before its fuse
 * or breaker goes, as a share of it.
 * Source: shared/countries.json, by country.
 */
export function shortLoadShare(code: unknown): number {
  const practice = countryOf(code)?.practice;
  return countries.practices.find(({ id }) => id === practice)?.bearsShare ?? STRICT_SHARE;
}
