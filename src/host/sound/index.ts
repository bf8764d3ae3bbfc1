export type { SoundHealth, SoundReason } from './health.ts';
export { createSound, type Sound } from './sound.ts';
