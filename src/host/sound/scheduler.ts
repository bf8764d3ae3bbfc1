import type { AlertFamily } from '../../core/run/index.ts';
import { alertKey, type Sounding } from './plan-soundings.ts';

/** Puts soundings on an audio clock ahead of time. */
export type SoundScheduler = {
  /** Makes the timeline be the plan: adds, moves, and cuts what is no longer wanted. */
  follow(plan: readonly Sounding[], wanted: ReadonlySet<string>): void;
  /** Lies a sounding of this alert on the timeline, to sound without the page? */
  holds(alert: string): boolean;
  /** Has a sounding of this alert been played, by the audio clock? */
  heard(alert: string): boolean;
  /** Takes everything off the timeline. */
  clear(): void;
};

type ScheduledSounding = {
  /** Keys of the alerts it speaks for. */
  readonly alerts: readonly string[];
  readonly whenS: number;
  readonly source: AudioBufferSourceNode;
  readonly gain: GainNode;
};

/** A sounding planned within this of where it is scheduled stays, s. */
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
  #scheduled = new Map<string, ScheduledSounding>();
  /** Alerts heard, whose nodes may have ended. */
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
    for (const sounding of plan) this.#schedule(sounding);
    for (const alert of this.#heard) if (!wanted.has(alert)) this.#heard.delete(alert);
    for (const key of this.#started) {
      if (!planned.has(key) && !this.#scheduled.has(key)) this.#started.delete(key);
    }
  }

  heard(alert: string): boolean {
    this.#observe();
    return this.#heard.has(alert);
  }

  holds(alert: string): boolean {
    return [...this.#scheduled.values()].some(({ alerts }) => alerts.includes(alert));
  }

  clear(): void {
    for (const [key, one] of this.#scheduled) this.#cut(key, one);
    this.#started.clear();
    this.#heard.clear();
  }

  /** Moves what has begun to the books, and what has ended off them. */
  #observe(): void {
    const nowS = this.#context.currentTime;
    for (const [key, one] of this.#scheduled) {
      if (one.whenS <= nowS) this.#started.add(key);
      if (one.whenS + HEARD_AFTER_S <= nowS) one.alerts.forEach((alert) => this.#heard.add(alert));
      if (one.whenS + (one.source.buffer?.duration ?? 0) < nowS) this.#scheduled.delete(key);
    }
  }

  /** What sounds already may end, unless it was answered. */
  #cutUnwanted(planned: ReadonlySet<string>, wanted: ReadonlySet<string>): void {
    const nowS = this.#context.currentTime;
    for (const [key, one] of this.#scheduled) {
      const answered = !one.alerts.some((alert) => wanted.has(alert));
      if (answered || (one.whenS > nowS && !planned.has(key))) this.#cut(key, one);
    }
  }

  #schedule(sounding: Sounding): void {
    if (this.#started.has(sounding.key)) return;
    const nowS = this.#context.currentTime;
    const whenS = Math.max(nowS, nowS + sounding.atS);
    const old = this.#scheduled.get(sounding.key);
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
    const alerts = sounding.alerts.map((alert) => alertKey(alert));
    this.#scheduled.set(sounding.key, { alerts, whenS, source, gain });
  }

  #cut(key: string, one: ScheduledSounding): void {
    this.#scheduled.delete(key);
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
