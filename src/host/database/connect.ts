import { NoAnswerError, withTimeout } from '../timeout/index.ts';
import { StorageError } from './storage-error.ts';
import { DATABASE_VERSION, upgrade } from './tables.ts';

/** Longest wait for opening, ms. Common practice, no published source: a cold disk answers within 1 s. */
const OPEN_LIMIT_MS = 8000;
/** Longest wait for one that gave no answer before, ms: whoever asks next is not kept waiting as long again. Common practice, no published source. */
const AGAIN_LIMIT_MS = 1500;

/** Told of a connection that was closed from outside. */
export type OnGone = (connection: IDBDatabase) => void;

function request(factory: IDBFactory, name: string, onGone: OnGone): Promise<IDBDatabase> {
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
        onGone(database);
      });
      database.addEventListener('close', () => onGone(database));
      resolve(database);
    });
  });
}

function factoryOf(): IDBFactory {
  // Reading the global itself throws in pages without storage.
  let factory: IDBFactory | undefined;
  try {
    factory = globalThis.indexedDB;
  } catch (error) {
    throw new StorageError('refused', `The browser denies its database (${String(error)}).`);
  }
  if (!factory) throw new StorageError('refused', 'This browser has no database.');
  return factory;
}

/**
 * Opens connections, one at a time. `onGone` is called when one was closed
 * from outside. An opening that gives no answer in time is waited for again
 * by the next that asks, shortly: its late answer is used.
 * Rejects with StorageError `refused` or `blocked`; DOMException and
 * NoAnswerError, to be named by the caller.
 */
export function connector(name: string, onGone: OnGone): () => Promise<IDBDatabase> {
  let late: Promise<IDBDatabase> | undefined;
  return async () => {
    const limitMs = late ? AGAIN_LIMIT_MS : OPEN_LIMIT_MS;
    const asked = late ?? request(factoryOf(), name, onGone);
    late = undefined;
    try {
      return await withTimeout('opening-database', limitMs, asked);
    } catch (error) {
      if (error instanceof NoAnswerError) late = asked;
      // Private windows of some engines refuse with InvalidStateError, which later means a closed connection.
      if (error instanceof DOMException && error.name === 'InvalidStateError') {
        throw new StorageError('refused', `The browser refuses its database (${error.message}).`);
      }
      throw error;
    }
  };
}
