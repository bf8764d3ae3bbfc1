import { afterEach, describe, expect, it, vi } from 'vitest';
import { askToPersist } from '../../../src/host/persist/index.ts';

/** A device whose browser answers so. */
function answering(storage: unknown): void {
  vi.stubGlobal('navigator', storage === undefined ? {} : { storage });
}

describe('asking that storage be kept', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('gives the browser’s word', async () => {
    answering({ persist: () => Promise.resolve(true) });
    expect(await askToPersist()).toBe('kept');
    answering({ persist: () => Promise.resolve(false) });
    expect(await askToPersist()).toBe('may-be-deleted');
  });

  it('says so where a browser cannot be asked', async () => {
    answering(undefined);
    expect(await askToPersist()).toBe('not-supported');
    answering({});
    expect(await askToPersist()).toBe('not-supported');
  });

  it('does not know it after a failure, or where nobody answers', async () => {
    answering({ persist: () => Promise.reject(new TypeError('opaque origin')) });
    expect(await askToPersist()).toBe('unknown');
    vi.useFakeTimers();
    answering({ persist: () => new Promise(() => undefined) });
    const asked = askToPersist();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(await asked).toBe('unknown');
  });
});
