import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NoAnswerError, withTimeout } from '../../../src/host/timeout/index.ts';

const never = new Promise<never>(() => undefined);

describe('a promise within a limit', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('passes a value and an error on', async () => {
    await expect(withTimeout('it', 1000, Promise.resolve(7))).resolves.toBe(7);
    await expect(withTimeout('it', 1000, Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(vi.getTimerCount()).toBe(0);
  });

  it('names what gave no answer, and after how long', async () => {
    const asked = withTimeout('Opening the database', 5000, never);
    const failed = expect(asked).rejects.toThrow('Opening the database gave no answer within 5 s');
    await vi.advanceTimersByTimeAsync(4999);
    expect(vi.getTimerCount()).toBe(1);
    await vi.advanceTimersByTimeAsync(1);
    await failed;
    await expect(asked).rejects.toBeInstanceOf(NoAnswerError);
  });

  it('grants the limit once more when the timer itself slept, and only once', async () => {
    let outcome = 'pending';
    withTimeout('it', 1000, never).catch(() => (outcome = 'no answer'));
    // The device sleeps: wall time goes on, timers do not.
    vi.setSystemTime(Date.now() + 60_000);
    await vi.advanceTimersByTimeAsync(1000);
    expect(outcome).toBe('pending');
    vi.setSystemTime(Date.now() + 60_000);
    await vi.advanceTimersByTimeAsync(1000);
    expect(outcome).toBe('no answer');
  });

  it('takes an answer that comes in the time granted after a sleep', async () => {
    let answer: (value: string) => void = () => undefined;
    const asked = withTimeout('it', 1000, new Promise<string>((resolve) => (answer = resolve)));
    vi.setSystemTime(Date.now() + 60_000);
    await vi.advanceTimersByTimeAsync(1500);
    answer('late but well');
    await expect(asked).resolves.toBe('late but well');
  });

  it('drops a failure that comes after the limit', async () => {
    let fail: (error: Error) => void = () => undefined;
    const asked = withTimeout('it', 10, new Promise<never>((_, reject) => (fail = reject)));
    const first = expect(asked).rejects.toBeInstanceOf(NoAnswerError);
    await vi.advanceTimersByTimeAsync(10);
    await first;
    fail(new Error('much later'));
    await vi.advanceTimersByTimeAsync(10);
    await expect(asked).rejects.toBeInstanceOf(NoAnswerError);
  });
});
