import custom from '../../../shared/sources/custom.json';
import safety from '../../../shared/sources/safety.json';
import type { Message } from '../messages/index.ts';
import type { Source } from './types.ts';

const SOURCES: Readonly<Record<string, Source>> = { ...custom, ...safety };

/** Keys of the sources of customs, cautions and cleaning. */
export const SOURCE_KEYS: readonly string[] = Object.keys(SOURCES);

/**
 * A citation to print: title and place. A test holds the catalogue against the table.
 * @throws RangeError when no source has that key
 */
export function citation(key: string): Message {
  if (!Object.hasOwn(SOURCES, key))
    throw new RangeError(`source is "${key}"; allowed: a key of the sources. Add it there.`);
  return { key: `sources.${key}`, params: {} };
}
