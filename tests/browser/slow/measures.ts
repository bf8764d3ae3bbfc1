import type { Screen } from '../support/screen.ts';

/** How much slower than this machine the tablet is thought to be. */
export const SLOWED = 6;

declare global {
  // oxlint-disable-next-line no-var
  var slow: {
    /** From the navigation to the first picture in which it can be pressed, ms; 0: not yet. */
    usableMs: number;
    /** Touch to the next picture, ms, one each press. */
    readonly pressesMs: number[];
  };
}

/**
 * Runs inside the page before it loads: the moment at which something can be pressed, and how long
 * after each press the next picture was painted (Event Timing, which counts in steps of 8 ms).
 * @param pressable selector of what makes the page usable
 */
function installSlow(pressable: string): void {
  const now = performance.now.bind(performance);
  const slow = { usableMs: 0, pressesMs: [] as number[] };
  globalThis.slow = slow;
  const look = (): void => {
    const isThere = [...document.querySelectorAll(pressable)].some(
      (one) => one.getClientRects().length > 0,
    );
    if (!isThere) {
      requestAnimationFrame(look);
      return;
    }
    // The picture of this frame is painted before the next one begins.
    requestAnimationFrame(() => (slow.usableMs = now()));
  };
  requestAnimationFrame(look);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      if (entry.name === 'click') slow.pressesMs.push(entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
}

export async function slowDown(screen: Screen, pressable: string, rate = SLOWED): Promise<void> {
  await screen.page.addInitScript(installSlow, pressable);
  await screen.cdp.send('Emulation.setCPUThrottlingRate', { rate });
}

/** @returns ms from the navigation to a page that can be used */
export function usableMs(screen: Screen): Promise<number> {
  return screen.waitFor<number>('slow.usableMs', 'a page that can be used', 60_000);
}

/** A press of the main action by the pointer, as the person before it would. */
export async function pressMain(screen: Screen): Promise<void> {
  await screen.pressAt('.main-action:not(:disabled)');
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Chromium's own counters by name (DevTools protocol, Performance.getMetrics). */
export async function metricsOf({ cdp }: Screen): Promise<Readonly<Record<string, number>>> {
  await cdp.send('Performance.enable');
  const { metrics } = await cdp.send('Performance.getMetrics');
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
}
