import type { AlertFamily } from '../../core/run/index.ts';
import { MANNERS } from './families.ts';

/** Shakes the device in the family's rhythm. False: it cannot, or does not want to. */
export function vibrate(family: AlertFamily): boolean {
  if (typeof navigator.vibrate !== 'function') return false;
  return navigator.vibrate([...MANNERS[family].vibrationMs]);
}

export function stopVibrating(): void {
  if (typeof navigator.vibrate === 'function') navigator.vibrate(0);
}
