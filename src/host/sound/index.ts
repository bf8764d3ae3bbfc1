export type { SoundHealth, SoundLight, SoundReason } from './health.ts';
export { createSound, type Sound } from './sound.ts';
