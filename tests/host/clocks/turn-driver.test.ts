import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { driveTurns } from '../../../src/host/clocks/index.ts';

const MINUTE_MS = 60_000;
/** A timer runs this much behind its mark, and what a turn found is written and shown this much later, ms. */
const BEHIND_MS = 20;
const SHOWN_AFTER_MS = 900;

/** Timers of a page that was hidden for long: they run at whole minutes of the clock only. */
function runAtWholeMinutes(): void {
  const exact = globalThis.setTimeout;
  vi.stubGlobal('setTimeout', (run: () => void, afterMs: number) => {
    const nowMs = Date.now();
    const markMs = Math.ceil((nowMs + afterMs) / MINUTE_MS) * MINUTE_MS;
    return exact(run, markMs - nowMs + BEHIND_MS);
  });
}

describe('the turns of a hidden page', () => {
  beforeEach(() => {
    vi.useFakeTimers({ now: Date.UTC(2026, 2, 1, 15, 0, 7) });
    vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'hidden' }));
    vi.stubGlobal('window', new EventTarget());
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('are at most a minute apart where its timers run at whole minutes only', async () => {
    const shown = globalThis.setTimeout;
    runAtWholeMinutes();
    const turnsMs: number[] = [];
    const driver = driveTurns({
      onTurn: () => {
        turnsMs.push(Date.now());
        // As the app does: what comes next is told once the turn is on disk.
        shown(() => driver.wakeIn(turnsMs.length % 2 ? null : 86_400), SHOWN_AFTER_MS);
      },
      onHeartbeat: () => undefined,
    });
    await vi.advanceTimersByTimeAsync(30 * MINUTE_MS);
    driver.stop();
    const apartMs = turnsMs.slice(1).map((atMs, i) => atMs - (turnsMs[i] ?? 0));
    expect(turnsMs.length).toBeGreaterThan(25);
    expect(Math.max(...apartMs)).toBeLessThanOrEqual(MINUTE_MS);
  });
});
