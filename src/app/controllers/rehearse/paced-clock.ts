import type { Readings } from '../../../core/run/index.ts';

/** The clocks of a rehearsal are of no page that ever led a run. */
const SESSION = 'rehearsal';

export type PacedClock = {
  readonly readClocks: () => Readings;
  /** Seconds of the rehearsed run since its start. */
  readonly atS: () => number;
  /** Goes from now to a wall time, ms, in so many real ms at speed 1; a time that is past stands. */
  readonly runTo: (wallMs: number, takesMs: number) => void;
  /** Has it come to where it was sent? */
  readonly isThere: () => boolean;
  /** Goes there at once. */
  readonly finish: () => void;
  /** Real time passes so many times as fast; 1 at the beginning. */
  readonly setSpeed: (speed: number) => void;
  readonly setPlaying: (playing: boolean) => void;
};

/**
 * Both clocks of a tablet that stands in no kitchen: they are sent from one
 * moment to the next, stop there, and never go back.
 * @param readMs real time, ms, of any monotonic clock
 * @param isStill true: it leaps to where it is sent once the time for it is over
 */
export function createPacedClock(
  startWallMs: number,
  readMs: () => number,
  isStill: () => boolean = () => false,
): PacedClock {
  let [fromMs, toMs, takesMs, goneMs] = [startWallMs, startWallMs, 0, 0];
  let [speed, playing, readAtMs] = [1, true, readMs()];
  const catchUp = (): void => {
    const nowMs = readMs();
    if (playing) goneMs = Math.min(takesMs, goneMs + (nowMs - readAtMs) * speed);
    readAtMs = nowMs;
  };
  const wallMs = (): number => {
    catchUp();
    if (goneMs >= takesMs) return toMs;
    return isStill() ? fromMs : fromMs + (toMs - fromMs) * (goneMs / takesMs);
  };
  return {
    readClocks: () => {
      const nowMs = wallMs();
      return { wallMs: nowMs, monoMs: nowMs - startWallMs, session: SESSION };
    },
    atS: () => (wallMs() - startWallMs) / 1000,
    runTo(next, takes) {
      fromMs = wallMs();
      [toMs, takesMs, goneMs] = [Math.max(fromMs, next), takes, 0];
    },
    isThere() {
      catchUp();
      return goneMs >= takesMs;
    },
    finish() {
      catchUp();
      goneMs = takesMs;
    },
    setSpeed(next) {
      catchUp();
      speed = next;
    },
    setPlaying(next) {
      catchUp();
      playing = next;
    },
  };
}
