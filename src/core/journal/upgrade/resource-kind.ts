import type { ResourceKind } from '../../plan/index.ts';

/** What a resource of version 1 is, which only its id said; any other was a vessel. */
export function resourceKindOf(id: string): ResourceKind {
  if (id === 'hands' || id === 'burners-lit') return id;
  if (id.startsWith('range-')) return 'range';
  if (id.startsWith('circuit-')) return 'circuit';
  return 'vessel';
}
