import type { MethodId } from '../kitchen/index.ts';

/** Terms of the trade for methods that a household sets itself. */
export const TERMS: Readonly<Partial<Record<MethodId, string>>> = {
  glow: 'libun gamur',
  'light-heat': 'libun kal',
  'self-clean': 'libun gamur',
  pour: 'irui',
  immerse: 'hagalah',
  'boil-over': 'hagalah',
};
