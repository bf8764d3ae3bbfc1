import type { AlertFamily } from '../../core/run/index.ts';
import { voiceKey, type Sounding } from './plan-soundings.ts';

/** Puts soundings on an audio clock ahead of time. */
export type SoundScheduler = {
  /** Makes the timeline be the plan: adds, moves, and cuts what is no longer wanted. */
  follow(plan: readonly Sounding[], wanted: ReadonlySet<string>): void;
  /** Lies a sounding of this voice on the timeline, to sound without the page? */
  holds(voice: string): boolean;
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
  return new Timeline(context, bufferOf);
}

class Timeline implements SoundScheduler {
  #context: AudioContext;
  #bufferOf: (family: AlertFamily) => AudioBuffer | undefined;
  #placed = new Map<string, Placed>();
  /** Voices heard, whose nodes may have ended. */
  #heard = new Set<string>();
  /** Keys of soundings that were started once. */
  #started = new Set<string>();

  constructor(context: AudioContext, bufferOf: (family: AlertFamily) => AudioBuffer | undefined) {
    this.#context = context;
    this.#bufferOf = bufferOf;
  }

  follow(plan: readonly Sounding[], wanted: ReadonlySet<string>): void {
    this.#observe();
    const planned = new Set(plan.map(({ key }) => key));
    this.#cutUnwanted(planned, wanted);
    for (const sounding of plan) this.#place(sounding);
    for (const voice of this.#heard) if (!wanted.has(voice)) this.#heard.delete(voice);
    for (const key of this.#started) {
      if (!planned.has(key) && !this.#placed.has(key)) this.#started.delete(key);
    }
  }

  heard(voice: string): boolean {
    this.#observe();
    return this.#heard.has(voice);
  }

  holds(voice: string): boolean {
    return [...this.#placed.values()].some(({ voices }) => voices.includes(voice));
  }

  clear(): void {
    for (const [key, one] of this.#placed) this.#cut(key, one);
    this.#started.clear();
    this.#heard.clear();
  }

  /** Moves what has begun to the books, and what has ended off them. */
  #observe(): void {
    const nowS = this.#context.currentTime;
    for (const [key, one] of this.#placed) {
      if (one.whenS <= nowS) this.#started.add(key);
      if (one.whenS + HEARD_AFTER_S <= nowS) one.voices.forEach((voice) => this.#heard.add(voice));
      if (one.whenS + (one.source.buffer?.duration ?? 0) < nowS) this.#placed.delete(key);
    }
  }

  /** What sounds already may end, unless it was answered. */
  #cutUnwanted(planned: ReadonlySet<string>, wanted: ReadonlySet<string>): void {
    const nowS = this.#context.currentTime;
    for (const [key, one] of this.#placed) {
      const answered = !one.voices.some((voice) => wanted.has(voice));
      if (answered || (one.whenS > nowS && !planned.has(key))) this.#cut(key, one);
    }
  }

  #place(sounding: Sounding): void {
    if (this.#started.has(sounding.key)) return;
    const nowS = this.#context.currentTime;
    const whenS = Math.max(nowS, nowS + sounding.atS);
    const old = this.#placed.get(sounding.key);
    if (old) {
      const settled = old.whenS - nowS <= TOO_LATE_TO_MOVE_S;
      if (settled || Math.abs(old.whenS - whenS) <= SAME_S) return;
      this.#cut(sounding.key, old);
    }
    this.#put(sounding, whenS);
  }

  #put(sounding: Sounding, whenS: number): void {
    const buffer = this.#bufferOf(sounding.family);
    if (!buffer) return;
    const source = this.#context.createBufferSource();
    source.buffer = buffer;
    const gain = this.#context.createGain();
    gain.gain.value = sounding.gain;
    source.connect(gain).connect(this.#context.destination);
    source.start(whenS);
    const voices = sounding.voices.map((voice) => voiceKey(voice));
    this.#placed.set(sounding.key, { voices, whenS, source, gain });
  }

  #cut(key: string, one: Placed): void {
    this.#placed.delete(key);
    const nowS = this.#context.currentTime;
    if (one.whenS <= nowS) {
      one.gain.gain.setTargetAtTime(0, nowS, FADE_S / 3);
      one.source.stop(nowS + FADE_S);
    } else {
      // Cut before its start, a node never sounds.
      one.source.stop();
      one.source.disconnect();
    }
  }
}
