import { withTimeout } from '../timeout/index.ts';

/**
 * - `kept`: only the person deletes what is stored;
 * - `may-be-deleted`: the browser may make room, or forget a site not used for
 *   some days, unless the app is installed to the home screen;
 * - `unknown`: no answer.
 */
export type Persistence = 'kept' | 'may-be-deleted' | 'not-supported' | 'unknown';

/** Some engines ask the person; longest wait, ms. */
const ANSWER_LIMIT_MS = 30_000;

/** Asks once that storage be kept, at the first run. Never rejects. */
export async function askToPersist(): Promise<Persistence> {
  const storage = 'storage' in navigator ? navigator.storage : undefined;
  if (!storage || typeof storage.persist !== 'function') return 'not-supported';
  try {
    const kept = await withTimeout('keeping-storage', ANSWER_LIMIT_MS, storage.persist());
    return kept ? 'kept' : 'may-be-deleted';
  } catch {
    return 'unknown';
  }
}
