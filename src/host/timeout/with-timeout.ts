/** A promise of the platform that did not settle in time. */
export class NoAnswerError extends Error {
  readonly what: string;
  readonly afterMs: number;
  constructor(what: string, afterMs: number) {
    super(`${what} gave no answer within ${afterMs / 1000} s. Try again, or reload the page.`);
    this.name = 'NoAnswerError';
    this.what = what;
    this.afterMs = afterMs;
  }
}

/** A timer that fires this much later than asked fired after a sleep, ms. Common practice, no published source. */
const SLEPT_MS = 1000;

/**
 * The promise, or `NoAnswerError` after `limitMs`. When the timer itself was
 * late, the page slept and so did the platform's answer: it then gets the
 * limit once more. A late answer after the error is dropped without a trace.
 */
export function withTimeout<T>(what: string, limitMs: number, promise: PromiseLike<T>): Promise<T> {
  return new Promise<T>((resolve, reject) => {
    let timer: ReturnType<typeof setTimeout>;
    let sleptOnce = false;
    const arm = (): void => {
      const askedAtMs = Date.now();
      timer = setTimeout(() => {
        const overMs = Date.now() - askedAtMs - limitMs;
        if (overMs > SLEPT_MS && !sleptOnce) {
          sleptOnce = true;
          arm();
        } else {
          reject(new NoAnswerError(what, limitMs));
        }
      }, limitMs);
    };
    arm();
    promise.then(
      (value) => {
        clearTimeout(timer);
        resolve(value);
      },
      (error: unknown) => {
        clearTimeout(timer);
        reject(error);
      },
    );
  });
}
