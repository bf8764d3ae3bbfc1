import { Howl, Howler } from 'howler';
import type { AlertFamily } from '../../core/run/index.ts';
import { withTimeout } from '../timeout/index.ts';
import { URGENCY } from './families.ts';

/** Where the files are; the builder finds them by this very form. */
const URLS: Readonly<Record<AlertFamily, string>> = {
  due: new URL('../../../sounds/due.wav', import.meta.url).href,
  soon: new URL('../../../sounds/soon.wav', import.meta.url).href,
  done: new URL('../../../sounds/done.wav', import.meta.url).href,
  hazard: new URL('../../../sounds/hazard.wav', import.meta.url).href,
};

/** Longest wait for a file and for its decoding, ms. Common practice, no published source. */
const LOAD_LIMIT_MS = 15_000;

export type SoundBank = {
  /** The audio context in use now; howler may replace it once, while unlocking. */
  context(): AudioContext | undefined;
  status(): 'loading' | 'ready' | 'failed';
  bufferOf(family: AlertFamily): AudioBuffer | undefined;
  /** An ordinary sound, now, by howler. Not for alerts: its timing is not to be trusted. */
  play(family: AlertFamily, gain: number): void;
  /** Fetches and decodes what is missing. Never rejects: see `status`. */
  load(): Promise<void>;
};

/**
 * howler unlocks the audio on the first touch, owns the context, and plays
 * ordinary sounds. It keeps its decoded buffers to itself, so the alerts'
 * buffers are decoded here, on its context.
 */
export function createSoundBank(): SoundBank {
  // It would suspend the context after 30 s of quiet, and scheduled alerts with it.
  Howler.autoSuspend = false;
  const howls = new Map<AlertFamily, Howl>();
  const buffers = new Map<AlertFamily, AudioBuffer>();
  let status: 'loading' | 'ready' | 'failed' = 'loading';
  for (const family of URGENCY) howls.set(family, new Howl({ src: URLS[family], format: 'wav' }));

  const context = (): AudioContext | undefined =>
    Howler.usingWebAudio ? (Howler.ctx ?? undefined) : undefined;

  const fetchOne = async (family: AlertFamily): Promise<void> => {
    const audio = context();
    if (!audio || buffers.has(family)) return;
    const response = await fetch(URLS[family]);
    if (!response.ok) throw new Error(`${family}.wav: ${response.status}`);
    buffers.set(family, await audio.decodeAudioData(await response.arrayBuffer()));
  };

  return {
    context,
    status: () => status,
    bufferOf: (family) => buffers.get(family),
    play(family, gain) {
      const howl = howls.get(family);
      howl?.volume(gain);
      howl?.play();
    },
    async load() {
      if (status === 'failed') status = 'loading';
      try {
        await withTimeout('loading-sounds', LOAD_LIMIT_MS, Promise.all(URGENCY.map(fetchOne)));
        status = buffers.size === URGENCY.length ? 'ready' : 'failed';
      } catch {
        // The light says that the sounds are missing, the record that an alarm failed for it; the next touch loads again.
        status = 'failed';
      }
    },
  };
}
