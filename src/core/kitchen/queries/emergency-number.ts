import numbers from '../../../../shared/emergency-numbers.json';

/**
 * The number to call where somebody is hurt, or undefined where none was read
 * for the country; then it is "the local emergency number".
 * Source: shared/emergency-numbers.json, by country.
 * @param country two letters (ISO 3166-1 alpha-2)
 */
export function emergencyNumber(country: string): string | undefined {
  return numbers.rows.find(({ code }) => code === country)?.number;
}
