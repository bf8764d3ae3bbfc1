/** `armed`: heard as far as the device tells; `touch-to-arm`: one touch is missing; `blocked`; `unknown`: not measured yet. */
type SoundLight = 'armed' | 'touch-to-arm' | 'blocked' | 'unknown';

/**
 * - `no-audio`: this browser has no audio clock;
 * - `no-gesture`: nobody touched the page yet;
 * - `loading`, `no-sounds`: the sound files are not decoded yet, or could not be;
 * - `interrupted`: a call or another app has the speaker;
 * - `suspended`: the device stopped the audio after it had run;
 * - `stuck`: it says running, but its clock stands;
 * - `measuring`: too few readings; `running`: all well.
 */
export type SoundReason =
  | 'no-audio'
  | 'no-gesture'
  | 'loading'
  | 'no-sounds'
  | 'interrupted'
  | 'suspended'
  | 'stuck'
  | 'measuring'
  | 'running';

export type SoundHealth = { readonly light: SoundLight; readonly reason: SoundReason };

/** Audio clock (s) and the page's monotonic clock (ms), read together. */
export type ClockPair = { readonly audioS: number; readonly monoMs: number };

export type SoundFacts = {
  /** State of the audio context; undefined: there is none. */
  readonly state: string | undefined;
  readonly gesture: boolean;
  readonly sounds: 'loading' | 'ready' | 'failed';
  /** Readings since the context last changed its state, oldest first. */
  readonly pairs: readonly ClockPair[];
};

/** Stretch needed to judge a clock, s. Audio clocks advance in blocks of up to about 0.1 s. */
const JUDGE_OVER_S = 0.9;
/** An audio clock this much slower than the page's is stuck. */
const STUCK_BELOW = 0.5;

/** `running` is not audible: only an audio clock that advances is taken for sound. */
export function judgeSound(facts: SoundFacts): SoundHealth {
  const { state, gesture, sounds, pairs } = facts;
  if (state === undefined || state === 'closed') return { light: 'blocked', reason: 'no-audio' };
  if (sounds === 'failed') return { light: 'blocked', reason: 'no-sounds' };
  if (state === 'interrupted') return { light: 'blocked', reason: 'interrupted' };
  if (state !== 'running') {
    return gesture
      ? { light: 'blocked', reason: 'suspended' }
      : { light: 'touch-to-arm', reason: 'no-gesture' };
  }
  if (sounds === 'loading') return { light: 'unknown', reason: 'loading' };
  const rate = clockRate(pairs);
  if (rate === undefined) return { light: 'unknown', reason: 'measuring' };
  if (rate < STUCK_BELOW) return { light: 'blocked', reason: 'stuck' };
  return { light: 'armed', reason: 'running' };
}

/** Speed of the audio clock against the page's over the latest stretch long enough; undefined: none yet. */
function clockRate(pairs: readonly ClockPair[]): number | undefined {
  const last = pairs.at(-1);
  if (!last) return undefined;
  const first = pairs.findLast((pair) => last.monoMs - pair.monoMs >= JUDGE_OVER_S * 1000);
  if (!first) return undefined;
  return (last.audioS - first.audioS) / ((last.monoMs - first.monoMs) / 1000);
}
