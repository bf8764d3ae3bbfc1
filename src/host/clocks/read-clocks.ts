import type { Readings } from '../../core/run/index.ts';

/**
 * A random id (RFC 9562 version 4, hexadecimal). `randomUUID` exists only in
 * secure pages; a tablet may be served from the home's own network.
 */
export function newId(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [8, 12, 16, 20, 32].map((end, i) => hex.slice([0, 8, 12, 16, 20][i], end)).join('-');
}

const SESSION = newId();

/** Both clocks now, ms, and the id of this page load. */
export function readClocks(): Readings {
  return { wallMs: Date.now(), monoMs: performance.now(), session: SESSION };
}
