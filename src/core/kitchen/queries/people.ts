import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Household } from '../model/kitchen.ts';

/**
 * What somebody who works is called: by name where it was told, else by their place in the crew.
 * @param person number in the order of the household, from 0
 */
export function personName({ names }: Household, person: number): Message {
  const name = names?.[person];
  if (name !== undefined) return asWritten(name);
  return person === 0 ? message('crew.you') : message('crew.helper', { number: person });
}
