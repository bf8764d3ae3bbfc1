import type { Formatter } from '../../model/message.ts';

/** "las 18:05", "la 01:05": one o'clock is singular. */
export function theClock(wallMs: number, zone: string, f: Formatter): string {
  const told = f.clock(wallMs, zone);
  return `${told.startsWith('01') ? 'la' : 'las'} ${told}`;
}
