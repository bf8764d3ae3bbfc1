import { withTimeout } from '../timeout/index.ts';
import { StorageError } from './storage-error.ts';
import { DATABASE_VERSION, upgrade } from './tables.ts';

/** Longest wait for opening, ms. Common practice, no published source: a cold disk answers within 1 s. */
const OPEN_LIMIT_MS = 8000;

function request(factory: IDBFactory, name: string, onGone: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = factory.open(name, DATABASE_VERSION);
    let abandoned = false;
    asked.addEventListener('upgradeneeded', () => upgrade(asked.result));
    asked.addEventListener('blocked', () => {
      abandoned = true;
      reject(new StorageError('blocked', 'Another tab holds an older database open.'));
    });
    asked.addEventListener('error', () => reject(asked.error ?? new Error('open failed')));
    asked.addEventListener('success', () => {
      const database = asked.result;
      if (abandoned) {
        database.close();
        return;
      }
      // An upgrade or a deletion from outside must not wait for this page.
      database.addEventListener('versionchange', () => {
        database.close();
        onGone();
      });
      database.addEventListener('close', onGone);
      resolve(database);
    });
  });
}

/**
 * Opens a connection. `onGone` is called when it was closed from outside.
 * @throws StorageError `refused` or `blocked`; DOMException and NoAnswerError, to be named by the caller
 */
export async function connect(name: string, onGone: () => void): Promise<IDBDatabase> {
  // Reading the global itself throws in pages without storage.
  let factory: IDBFactory | undefined;
  try {
    factory = globalThis.indexedDB;
  } catch (error) {
    throw new StorageError('refused', `The browser denies its database (${String(error)}).`);
  }
  if (!factory) throw new StorageError('refused', 'This browser has no database.');
  try {
    return await withTimeout('opening-database', OPEN_LIMIT_MS, request(factory, name, onGone));
  } catch (error) {
    // Private windows of some engines refuse with InvalidStateError, which later means a closed connection.
    if (error instanceof DOMException && error.name === 'InvalidStateError') {
      throw new StorageError('refused', `The browser refuses its database (${error.message}).`);
    }
    throw error;
  }
}
