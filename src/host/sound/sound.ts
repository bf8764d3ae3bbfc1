import type { Alert, AlertFamily } from '../../core/run/index.ts';
import { withTimeout } from '../timeout/index.ts';
import { soundLengthS, URGENCY } from './families.ts';
import { judgeSound, type ClockPair, type SoundHealth, type SoundReason } from './health.ts';
import { alertKey, planSoundings } from './plan-soundings.ts';
import { createScheduler, type SoundScheduler } from './scheduler.ts';
import { createSoundBank, type SoundBank } from './sound-bank.ts';
import { trackAlerts, timedAlerts, type TrackedAlert } from './track-alerts.ts';
import { stopVibrating, vibrate } from './vibrate.ts';

type SoundOptions = {
  readonly onHealth: (health: SoundHealth) => void;
};

export type Sound = {
  /** From a person's touch: unlocks and starts the audio, loads what is missing, and measures for a second. */
  arm(): Promise<SoundHealth>;
  /** An ordinary sound now: the hearing check, a step's end. Gain 0 to 1. */
  play(family: AlertFamily, gain: number): void;
  /** What sounds and what will; call it with every view. An alert left out is cut at once. */
  syncAlerts(alerts: readonly Alert[]): void;
  /** Was the alert heard by the audio clock, or does it lie on it, to sound even when the page is stuck? */
  isHanded(alertId: string): boolean;
  /** After a gap, a wake-up, a return to the page: anchors everything anew. */
  wake(): void;
  stop(): void;
};

/** How far ahead alerts are put on the audio clock, s: a hidden page may look only once a minute, and miss one of these looks. */
const AHEAD_S = 130;
/** Everything is anchored anew at least this often, ms. */
const REANCHOR_MS = 10_000;
/** Readings of the audio clock, one each, ms; the last few are kept. */
const WATCH_MS = 500;
const PAIRS_KEPT = 8;
/** After arming, the clock is watched this long before an answer is given, ms. */
const MEASURE_MS = 1050;
/** `resume` without a gesture never answers; this long is waited, ms. */
const RESUME_LIMIT_MS = 1500;
/** A stuck clock is mended at most this often, ms. */
const MEND_MS = 10_000;
/** What starting the audio again may mend once a person has touched the page. */
const MENDABLE: readonly SoundReason[] = ['stuck', 'suspended', 'interrupted'];
/** Vibration is repeated this often while a must-answer alert sounds, ms. */
const VIBRATE_MS = 5000;

/** The one place that makes alerts heard. */
export function createSound(options: SoundOptions): Sound {
  return new AlertSound(options);
}

class AlertSound implements Sound {
  #options: SoundOptions;
  #bank: SoundBank = createSoundBank();
  #scheduler: { readonly context: AudioContext; readonly to: SoundScheduler } | undefined;
  #alerts: readonly Alert[] = [];
  /** When `#alerts` were true, s of the page's clock. */
  #alertsAtS = 0;
  #tracked: ReadonlyMap<string, TrackedAlert> = new Map();
  #pairs: ClockPair[] = [];
  #health: SoundHealth = { light: 'unknown', reason: 'loading' };
  #gesture = false;
  /** The most urgent family that sounds now. */
  #sounding: AlertFamily | undefined;
  #mendedAtMs = -Infinity;
  #vibratedAtMs = -Infinity;
  #timers: ReturnType<typeof setInterval>[];

  constructor(options: SoundOptions) {
    this.#options = options;
    void this.#bank.load().then(() => this.wake());
    this.#timers = [
      setInterval(() => this.#watch(), WATCH_MS),
      setInterval(() => this.#follow(), REANCHOR_MS),
    ];
  }

  async arm(): Promise<SoundHealth> {
    this.#gesture = true;
    const context = this.#bank.context();
    if (context) await this.#resume(context);
    if (this.#bank.status() === 'failed') await this.#bank.load();
    this.wake();
    await new Promise((resolve) => setTimeout(resolve, MEASURE_MS));
    this.#watch();
    return this.#health;
  }

  play(family: AlertFamily, gain: number): void {
    this.#bank.play(family, gain);
  }

  syncAlerts(alerts: readonly Alert[]): void {
    this.#alerts = alerts;
    this.#alertsAtS = performance.now() / 1000;
    this.#follow();
    this.#shake();
  }

  isHanded(alertId: string): boolean {
    const one = this.#tracked.get(alertId);
    const to = this.#scheduler?.to;
    if (!one || !to || this.#health.light !== 'armed') return false;
    const alert = alertKey({ id: alertId, round: one.round });
    return one.heard || to.heard(alert) || to.holds(alert);
  }

  wake(): void {
    this.#pairs = [];
    this.#watch();
    this.#follow();
  }

  stop(): void {
    this.#timers.forEach((timer) => clearInterval(timer));
    this.#scheduler?.to.clear();
    stopVibrating();
  }

  /** The scheduler on the context of now; a replaced context takes its timeline with it. */
  #schedulerNow(): SoundScheduler | undefined {
    const context = this.#bank.context();
    if (!context) return undefined;
    if (this.#scheduler?.context !== context) {
      context.addEventListener('statechange', () => this.wake());
      const to = createScheduler(context, (family) => this.#bank.bufferOf(family));
      this.#scheduler = { context, to };
    }
    return this.#scheduler.to;
  }

  /** Puts the next two minutes on the audio clock. */
  #follow(): void {
    const scheduler = this.#schedulerNow();
    const nowMonoS = performance.now() / 1000;
    this.#tracked = trackAlerts(
      this.#tracked,
      this.#agedAlerts(nowMonoS),
      nowMonoS,
      (alert) => scheduler?.heard(alert) ?? false,
    );
    if (!scheduler) return;
    // A clock that stands would play everything late, at once, when it starts again.
    if (this.#bank.context()?.state !== 'running') return scheduler.clear();
    const alerts = timedAlerts(this.#tracked, nowMonoS);
    const soundings = planSoundings(alerts, this.#horizonS(nowMonoS));
    scheduler.follow(soundings, new Set(alerts.map(alertKey)));
  }

  /** A rest day is quiet from its first second: nothing is laid on the clock that would sound into it. */
  #horizonS(nowMonoS: number): number {
    const quietInS = this.#agedAlerts(nowMonoS).map(
      ({ family, silentInS = Infinity }) => silentInS - soundLengthS(family),
    );
    return Math.min(AHEAD_S, ...quietInS);
  }

  /** Alerts of the last view brought to now, for anchoring between two views. */
  #agedAlerts(nowMonoS: number): readonly Alert[] {
    const goneS = nowMonoS - this.#alertsAtS;
    return this.#alerts.map((alert) => {
      const inS = Math.max(0, alert.inS - goneS);
      return {
        ...alert,
        inS,
        sounding: alert.sounding || inS === 0,
        ...(alert.silentInS !== undefined && { silentInS: alert.silentInS - goneS }),
      };
    });
  }

  #shake(): void {
    const family = URGENCY.find((one) =>
      this.#alerts.some((alert) => alert.sounding && alert.family === one),
    );
    if (family !== this.#sounding) {
      this.#sounding = family;
      this.#vibratedAtMs = -Infinity;
      if (!family) stopVibrating();
    }
    const nowMs = performance.now();
    if ((family === 'due' || family === 'hazard') && nowMs - this.#vibratedAtMs >= VIBRATE_MS) {
      this.#vibratedAtMs = nowMs;
      vibrate(family);
    }
  }

  /** Reads both clocks, judges, tells a change, mends a stuck clock. */
  #watch(): void {
    const context = this.#bank.context();
    this.#schedulerNow();
    this.#gesture ||= navigator.userActivation?.hasBeenActive ?? false;
    if (context) {
      const pair = { audioS: context.currentTime, monoMs: performance.now() };
      this.#pairs = [...this.#pairs, pair].slice(-PAIRS_KEPT);
    }
    const health = judgeSound({
      state: context?.state,
      gesture: this.#gesture,
      sounds: this.#bank.status(),
      pairs: this.#pairs,
    });
    if (health.light !== this.#health.light || health.reason !== this.#health.reason) {
      this.#health = health;
      this.#options.onHealth(health);
    }
    if (context && this.#gesture && MENDABLE.includes(health.reason)) {
      void this.#mend(context, health.reason);
    }
  }

  async #mend(context: AudioContext, reason: SoundReason): Promise<void> {
    const nowMs = performance.now();
    if (nowMs - this.#mendedAtMs < MEND_MS) return;
    this.#mendedAtMs = nowMs;
    if (reason === 'stuck') {
      await withTimeout('pausing-audio', RESUME_LIMIT_MS, context.suspend()).catch(() => undefined);
    }
    await this.#resume(context);
    this.wake();
  }

  /** No answer is an answer too: the light shows what became of it. */
  async #resume(context: AudioContext): Promise<void> {
    await withTimeout('starting-audio', RESUME_LIMIT_MS, context.resume()).catch(() => undefined);
  }
}
