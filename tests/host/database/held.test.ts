import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openDatabase } from '../../../src/host/database/index.ts';

/**
 * As much of a browser's database as one transaction needs: requests on tables
 * that another page holds are never answered, all others at once.
 */
class FakeDatabase extends EventTarget {
  held = new Set<string>();
  isDead = false;
  aborted: string[] = [];
  objectStoreNames = { contains: () => true };

  transaction(tables: readonly string[]): EventTarget {
    const transaction = Object.assign(new EventTarget(), {
      error: null,
      objectStore: () => ({ get: () => answering(), count: () => answering() }),
      abort: () => {
        this.aborted.push(tables.join());
        transaction.dispatchEvent(new Event('abort'));
      },
    });
    const waits = this.isDead || tables.some((table) => this.held.has(table));
    const answering = () => {
      const request = Object.assign(new EventTarget(), { result: 7, oncomplete: null });
      if (waits) return request;
      setTimeout(() => {
        request.dispatchEvent(new Event('success'));
        (request as { onsuccess?: () => void }).onsuccess?.();
        setTimeout(() => transaction.dispatchEvent(new Event('complete')), 1);
      }, 1);
      return request;
    };
    return transaction;
  }
  close(): void {}
}

let fake: FakeDatabase;

beforeEach(() => {
  vi.useFakeTimers();
  fake = new FakeDatabase();
  vi.stubGlobal('indexedDB', {
    open: () => {
      const asked = Object.assign(new EventTarget(), { result: fake });
      setTimeout(() => asked.dispatchEvent(new Event('success')), 1);
      return asked;
    },
  });
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** What a read of the records comes to within these seconds: its value, the name of its failure, or nothing yet. */
async function within(seconds: number): Promise<unknown> {
  let became: unknown = 'nothing yet';
  openDatabase('test')
    .transact(
      ['records'],
      'readonly',
      (tables) =>
        new Promise((resolve) => {
          const asked = tables('records').get('one');
          asked.addEventListener('success', () => resolve(asked.result));
        }),
    )
    .then(
      (value) => (became = value),
      (error: unknown) => (became = (error as { code: string }).code),
    );
  await vi.advanceTimersByTimeAsync(seconds * 1000);
  return became;
}

describe('a page that stands still in the midst of writing', () => {
  it('bars what it writes, and others are told by name within seconds', async () => {
    // Verifies: I-27
    fake.held = new Set(['epochs', 'records', 'heartbeats', 'runs']);
    expect(await within(8)).toBe('held');
    // What waited in vain is given up: it must not write later, unseen.
    expect(fake.aborted).toContain('records');
  });

  it('is not taken for a device that answers nothing at all', async () => {
    fake.isDead = true;
    expect(await within(8)).toBe('timeout');
  });

  it('bars nothing else', async () => {
    fake.held.add('epochs');
    expect(await within(1)).toBe(7);
  });
});
