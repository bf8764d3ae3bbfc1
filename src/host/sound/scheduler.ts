import type { AlertFamily } from '../../core/run/index.ts';
import { voiceKey, type Sounding } from './plan-soundings.ts';

/** Puts soundings on an audio clock ahead of time. */
export type SoundScheduler = {
  /** Makes the timeline be the plan: adds, moves, and cuts what is no longer wanted. */
  follow(plan: readonly Sounding[], wanted: ReadonlySet<string>): void;
  /** Has a sounding of this voice been played, by the audio clock? */
  heard(voice: string): boolean;
  /** Takes everything off the timeline. */
  clear(): void;
};

type Placed = {
  /** Keys of the voices it speaks for. */
  readonly voices: readonly string[];
  readonly whenS: number;
  readonly source: AudioBufferSourceNode;
  readonly gain: GainNode;
};

/** A sounding planned within this of where it is placed stays, s. */
const SAME_S = 0.05;
/** One that starts within this is not touched any more, s. */
const TOO_LATE_TO_MOVE_S = 0.1;
/** Played for this long counts as heard, s. */
const HEARD_AFTER_S = 0.2;
/** Fade of a sound that is cut, s, against a click. */
const FADE_S = 0.03;

export function createScheduler(
  context: AudioContext,
  bufferOf: (family: AlertFamily) => AudioBuffer | undefined,
): SoundScheduler {
  const placed = new Map<string, Placed>();
  /** Voices heard, whose nodes may have ended, and soundings that were started once. */
  const heardVoices = new Set<string>();
  const startedKeys = new Set<string>();

  const put = (sounding: Sounding, whenS: number): void => {
    const buffer = bufferOf(sounding.family);
    if (!buffer) return;
    const source = context.createBufferSource();
    source.buffer = buffer;
    const gain = context.createGain();
    gain.gain.value = sounding.gain;
    source.connect(gain).connect(context.destination);
    source.start(whenS);
    placed.set(sounding.key, { voices: sounding.voices.map(voiceKey), whenS, source, gain });
  };
  const cut = (key: string, one: Placed): void => {
    placed.delete(key);
    const nowS = context.currentTime;
    if (one.whenS <= nowS) {
      one.gain.gain.setTargetAtTime(0, nowS, FADE_S / 3);
      one.source.stop(nowS + FADE_S);
    } else {
      // Cut before its start, a node never sounds.
      one.source.stop();
      one.source.disconnect();
    }
  };
  /** Moves what has begun to the books, and what has ended off them. */
  const observe = (): void => {
    const nowS = context.currentTime;
    for (const [key, one] of placed) {
      if (one.whenS <= nowS) startedKeys.add(key);
      if (one.whenS + HEARD_AFTER_S <= nowS) one.voices.forEach((voice) => heardVoices.add(voice));
      if (one.whenS + (one.source.buffer?.duration ?? 0) < nowS) placed.delete(key);
    }
  };

  return {
    follow(plan, wanted) {
      observe();
      const nowS = context.currentTime;
      const planned = new Set(plan.map(({ key }) => key));
      for (const [key, one] of placed) {
        const begun = one.whenS <= nowS;
        const unwanted = !one.voices.some((voice) => wanted.has(voice));
        if (unwanted || (!begun && !planned.has(key))) cut(key, one);
      }
      for (const voice of heardVoices) if (!wanted.has(voice)) heardVoices.delete(voice);
      for (const sounding of plan) {
        if (startedKeys.has(sounding.key)) continue;
        const whenS = Math.max(nowS, nowS + sounding.atS);
        const old = placed.get(sounding.key);
        if (old) {
          const settled = old.whenS - nowS <= TOO_LATE_TO_MOVE_S;
          if (settled || Math.abs(old.whenS - whenS) <= SAME_S) continue;
          cut(sounding.key, old);
        }
        put(sounding, whenS);
      }
      for (const key of startedKeys)
        if (!planned.has(key) && !placed.has(key)) startedKeys.delete(key);
    },
    heard(voice) {
      observe();
      return heardVoices.has(voice);
    },
    clear() {
      for (const [key, one] of placed) cut(key, one);
      startedKeys.clear();
      heardVoices.clear();
    },
  };
}
