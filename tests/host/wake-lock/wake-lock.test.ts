import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createWakeLock, type WakeState } from '../../../src/host/wake-lock/index.ts';

class Sentinel extends EventTarget {
  released = false;
  release(): Promise<void> {
    if (!this.released) {
      this.released = true;
      this.dispatchEvent(new Event('release'));
    }
    return Promise.resolve();
  }
}

/** A device that gives, refuses, or does not answer a lock; its page is seen or hidden. */
class Device {
  does: 'gives' | 'refuses' | 'is-silent' = 'gives';
  asked = 0;
  given: Sentinel[] = [];
  answers: ((lock: Sentinel) => void)[] = [];
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' });

  request(): Promise<Sentinel> {
    this.asked += 1;
    if (this.does === 'refuses') return Promise.reject(new DOMException('', 'NotAllowedError'));
    if (this.does === 'is-silent') return new Promise((resolve) => this.answers.push(resolve));
    return Promise.resolve(this.gives());
  }

  gives(): Sentinel {
    const lock = new Sentinel();
    this.given.push(lock);
    return lock;
  }

  shows(visibilityState: 'visible' | 'hidden'): void {
    this.page.visibilityState = visibilityState;
    this.page.dispatchEvent(new Event('visibilitychange'));
  }
}

describe('the screen lock', () => {
  let device: Device;
  let states: WakeState[];
  let lock: ReturnType<typeof createWakeLock>;
  const passes = (s: number) => vi.advanceTimersByTimeAsync(s * 1000);

  beforeEach(() => {
    vi.useFakeTimers();
    device = new Device();
    states = [];
    vi.stubGlobal('document', device.page);
    vi.stubGlobal('navigator', { wakeLock: { request: () => device.request() } });
    lock = createWakeLock((state) => states.push(state));
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('that is refused is asked for again every half minute, until it is given', async () => {
    device.does = 'refuses';
    lock.keep();
    await passes(91);
    expect(device.asked).toBe(4);
    expect(states).toEqual(['lost']);
    device.does = 'gives';
    await passes(30);
    expect(states).toEqual(['lost', 'held']);
    await passes(600);
    expect(device.asked).toBe(5);
  });

  it('that was taken is asked for soon, and again when that is refused', async () => {
    lock.keep();
    await passes(1);
    device.does = 'refuses';
    void device.given[0]?.release();
    await passes(32);
    expect(device.asked).toBe(3);
    expect(states).toEqual(['held', 'lost']);
  });

  it('is not asked for where nobody sees the page, but at once when it is seen, in one line', async () => {
    device.does = 'refuses';
    lock.keep();
    await passes(1);
    device.shows('hidden');
    await passes(300);
    expect(device.asked).toBe(1);
    for (const how of ['visible', 'hidden', 'visible'] as const) {
      device.shows(how);
      await passes(1);
    }
    expect(device.asked).toBe(3);
    await passes(60);
    expect(device.asked).toBe(5);
  });

  it('is not asked for any more once it is not wanted', async () => {
    device.does = 'refuses';
    lock.keep();
    await passes(1);
    lock.letGo();
    expect(vi.getTimerCount()).toBe(0);
    await passes(300);
    expect(device.asked).toBe(1);
    expect(states).toEqual(['lost', 'off']);
  });

  it('that is given twice, late, is kept once', async () => {
    device.does = 'is-silent';
    lock.keep();
    await passes(36);
    expect(device.asked).toBe(2);
    device.answers[0]?.(device.gives());
    // The second is not answered in time; the first is held all the same.
    await passes(10);
    device.answers[1]?.(device.gives());
    await passes(1);
    expect(states).toEqual(['lost', 'held']);
    expect(device.given.map(({ released }) => released)).toEqual([false, true]);
    lock.letGo();
    await passes(1);
    expect(device.given.every(({ released }) => released)).toBe(true);
  });
});
