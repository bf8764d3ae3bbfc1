import { NoAnswerError } from '../timeout/index.ts';

/**
 * - `full`: the device has no room left;
 * - `refused`: the browser denies storage to this page, or holds a newer database;
 * - `blocked`: another tab holds an older database open;
 * - `held`: another page stands still in the midst of writing, and bars all others;
 * - `timeout`: no answer within the limit; a write may or may not be on disk;
 * - `lost`: the connection was closed under us and could not be made again;
 * - `unknown`: anything else, with the platform's own words.
 */
export type StorageCode = 'full' | 'refused' | 'blocked' | 'held' | 'timeout' | 'lost' | 'unknown';

/** Every failure of the database, by name; the message is the platform's own, for developers. */
export class StorageError extends Error {
  readonly code: StorageCode;
  constructor(code: StorageCode, message: string) {
    super(message);
    this.name = 'StorageError';
    this.code = code;
  }
}

function nameOf(error: unknown): string {
  return typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
}

/** The connection cannot be used any more after one of these; a new one may do. */
export function isDeadConnection(error: unknown): boolean {
  return ['InvalidStateError', 'UnknownError', 'AbortError', 'NoAnswerError'].includes(
    nameOf(error),
  );
}

const CODES: Readonly<Record<string, StorageCode>> = {
  QuotaExceededError: 'full',
  SecurityError: 'refused',
  NotAllowedError: 'refused',
  VersionError: 'refused',
  InvalidStateError: 'lost',
  AbortError: 'lost',
};

/** Names a failure of the platform. What is named already, and errors of the program, stay as they are. */
export function toStorageError(error: unknown): unknown {
  if (error instanceof StorageError) return error;
  if (error instanceof NoAnswerError) {
    return new StorageError('timeout', error.message);
  }
  if (!(error instanceof DOMException)) return error;
  return new StorageError(CODES[error.name] ?? 'unknown', `${error.name}: ${error.message}`);
}
