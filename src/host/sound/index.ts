export { judgeSound, type SoundHealth, type SoundLight, type SoundReason } from './health.ts';
export { planSoundings, type Sounding, type Voice } from './plan-soundings.ts';
export { createSound, type Sound, type SoundOptions } from './sound.ts';
