import { describe, expect, it } from 'vitest';
import { StorageError } from '../../../src/host/database/index.ts';
import { isDeadConnection, toStorageError } from '../../../src/host/database/storage-error.ts';
import { NoAnswerError } from '../../../src/host/timeout/index.ts';

describe('failures of the database by name', () => {
  it.each([
    ['QuotaExceededError', 'full', false],
    ['SecurityError', 'refused', false],
    ['VersionError', 'refused', false],
    ['InvalidStateError', 'lost', true],
    ['AbortError', 'lost', true],
    ['UnknownError', 'unknown', true],
    ['DataCloneError', 'unknown', false],
  ])('%s is %s; connection dead: %s', (name, code, dead) => {
    const error = new DOMException('words of the platform', name);
    const named = toStorageError(error);
    expect(named).toBeInstanceOf(StorageError);
    expect(named).toMatchObject({ code });
    expect((named as StorageError).message).toContain('words of the platform');
    expect(isDeadConnection(error)).toBe(dead);
  });

  it('names no answer', () => {
    const error = new NoAnswerError('The database', 5000);
    expect(toStorageError(error)).toMatchObject({ code: 'timeout' });
    expect(isDeadConnection(error)).toBe(true);
  });

  it('leaves a mistake of the program and what is named already as they are', () => {
    const mistake = new TypeError('x is undefined');
    const named = new StorageError('full', 'no room');
    expect(toStorageError(mistake)).toBe(mistake);
    expect(toStorageError(named)).toBe(named);
    expect(isDeadConnection(mistake)).toBe(false);
  });
});
