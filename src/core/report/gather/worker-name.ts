import type { Household } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';

/**
 * What somebody who worked is called in a record, which others read years later: by name where it
 * was told, else by their place in the crew. Nobody where the household has nobody of that number.
 * @param person number in the order of the household, from 0
 */
export function workerName({ names, people }: Household, person: number): readonly Message[] {
  if (!Number.isInteger(person) || person < 0 || person >= people) return [];
  const name = names?.[person];
  if (name !== undefined) return [asWritten(name)];
  return [
    person === 0 ? message('report.by.lead') : message('report.by.helper', { number: person }),
  ];
}
