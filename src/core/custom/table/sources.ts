import custom from '../../../../shared/sources/custom.json';
import safety from '../../../../shared/sources/safety.json';
import { message, type Message } from '../../messages/index.ts';
import type { ChosenMethod, Source, SourceState } from '../model/types.ts';

const SOURCES = { ...custom, ...safety } as Readonly<Record<string, Source>>;

/** Keys of the sources of customs, cautions and cleaning. */
export const SOURCE_KEYS: readonly string[] = Object.keys(SOURCES);

function sourceOf(key: string): Source {
  const source = Object.hasOwn(SOURCES, key) ? SOURCES[key] : undefined;
  if (!source)
    throw new RangeError(`source is "${key}"; allowed: a key of the sources. Add it there.`);
  return source;
}

/**
 * A citation to print: title and place. A test holds the catalogue against the table.
 * @param also keys of what else it rests on
 * @throws RangeError when no source has such a key
 */
export function citation(key: string, also: readonly string[] = []): Message {
  sourceOf(key);
  const first: Message = { key: `sources.${key}`, params: {} };
  return also.length === 0
    ? first
    : message('custom.sources', { sources: [first, ...also.map((one) => citation(one))] });
}

/**
 * How far a source can be relied on.
 * @throws RangeError when no source has that key
 */
export function sourceState(key: string): SourceState {
  const { kind, checked } = sourceOf(key);
  if (kind === undefined || kind === 'text') return checked ? 'read' : 'memory';
  return kind;
}

/** How far the source of a method can be relied on; plans of older versions only say whether it was read. */
export function stateOfMethod({
  sourceState: state,
  checked,
}: Pick<ChosenMethod, 'sourceState' | 'checked'>): SourceState {
  return state ?? (checked ? 'read' : 'memory');
}
