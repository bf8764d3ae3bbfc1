import type { BurnerType } from '../../kitchen/index.ts';

/** Does this burner burn gas? */
export function isGas(type: BurnerType): boolean {
  return type.startsWith('gas') || type === 'commercial-open';
}
