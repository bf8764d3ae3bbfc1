import { NoAnswerError } from '../timeout/index.ts';

/**
 * - `full`: the device has no room left;
 * - `refused`: the browser denies storage to this page, or holds a newer database;
 * - `timeout`: no answer within the limit; a write may or may not be on disk;
 * - `lost`: the connection was closed under us and could not be made again;
 * - `unknown`: anything else, with the platform's own words.
 */
export type StorageCode = 'full' | 'refused' | 'timeout' | 'lost' | 'unknown';

/** Every failure of the database, by name. */
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

const ADVICE: Readonly<Record<StorageCode, string>> = {
  full: 'The device has no room left: free some, or save the run as a file.',
  refused: 'The browser does not let this page keep anything: leave private mode, or update.',
  timeout: 'The device did not answer in time: try again, or reload the page.',
  lost: 'The database was closed from outside: try again, or reload the page.',
  unknown: 'The device could not write or read its storage: try again, or save the run as a file.',
};

/** Names a failure of the platform. What is named already, and errors of the program, stay as they are. */
export function toStorageError(error: unknown): unknown {
  if (error instanceof StorageError) return error;
  if (error instanceof NoAnswerError) {
    return new StorageError('timeout', `${ADVICE.timeout} (${error.message})`);
  }
  if (!(error instanceof DOMException)) return error;
  const code = CODES[error.name] ?? 'unknown';
  // A known code says it all in plain words; the platform's own only help where nothing else does.
  const own = code === 'unknown' ? ` (${error.name}: ${error.message})` : '';
  return new StorageError(code, ADVICE[code] + own);
}
