import { plainLine, type Kitchen } from '../../kitchen/index.ts';

/** Fields in which people wrote words; ids and numbers are none of them. */
const WORDS: ReadonlySet<string> = new Set(['name', 'names', 'text', 'why', 'saidBy', 'comment']);

function plain(value: unknown, field: string): unknown {
  if (typeof value === 'string') return WORDS.has(field) ? plainLine(value) : value;
  if (Array.isArray(value)) return value.map((one) => plain(one, field));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, plain(one, name)]));
}

/** The kitchen with every name as it may be shown and printed: a plan carries it into titles, run and record. */
export function withPlainNames(kitchen: Kitchen): Kitchen {
  return plain(kitchen, '') as Kitchen;
}
