import { NoAnswerError, withTimeout } from '../timeout/index.ts';
import { connector } from './connect.ts';
import { othersAnswer } from './held.ts';
import { isDeadConnection, StorageError, toStorageError } from './storage-error.ts';
import type { TableName } from './tables.ts';

/** The tables of one transaction. */
export type Tables = (name: TableName) => IDBObjectStore;

/** Durability asked for; the default of some engines is relaxed, so it is always said. */
export type Durability = 'strict' | 'relaxed';

export type Database = {
  /**
   * Runs `work` in one transaction, and resolves with its result only when the
   * transaction is complete: on disk, with `strict`. When `work` throws or
   * rejects, everything is undone and the error passes through.
   * `work` may wait for requests of this transaction and for nothing else.
   * @throws StorageError for every failure of the platform
   */
  transact<T>(
    tables: readonly TableName[],
    mode: 'readonly' | 'readwrite',
    work: (tables: Tables) => T | PromiseLike<T>,
    durability?: Durability,
  ): Promise<T>;
  close(): void;
};

/** Longest wait for a transaction, ms. Common practice, no published source: a strict write takes 5 to 100 ms. */
const TRANSACTION_LIMIT_MS = 5000;

/** Resolves when the transaction is complete, rejects with why it was undone. */
function completion(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.addEventListener('complete', () => resolve());
    transaction.addEventListener('abort', () =>
      reject(
        // A quota failure arrives here: the request had succeeded.
        transaction.error ?? new DOMException('The transaction was undone.', 'AbortError'),
      ),
    );
  });
}

/** Undoes what is not on disk yet. False: too late, or undone already. */
function undo(transaction: IDBTransaction): boolean {
  try {
    transaction.abort();
    return true;
  } catch {
    return false;
  }
}

async function runOnce<T>(
  connection: IDBDatabase,
  tables: readonly TableName[],
  mode: 'readonly' | 'readwrite',
  work: (tables: Tables) => T | PromiseLike<T>,
  durability: Durability,
): Promise<T> {
  const transaction = connection.transaction([...tables], mode, { durability });
  const complete = completion(transaction);
  complete.catch(() => undefined);
  let workFault: { readonly error: unknown } | undefined;
  const done = (async () => {
    try {
      return await work((name) => transaction.objectStore(name));
    } catch (error) {
      workFault = { error };
      undo(transaction);
      throw error;
    }
  })();
  try {
    const [result] = await withTimeout(
      'database',
      TRANSACTION_LIMIT_MS,
      Promise.all([done, complete]),
    );
    return result;
  } catch (error) {
    const ownFault = workFault;
    undo(transaction);
    if (error instanceof NoAnswerError && (await othersAnswer(connection, tables)))
      throw new StorageError('held', `${error.message} Another page holds ${tables.join(', ')}.`);
    // Why the transaction was undone says more than the request that noticed it.
    if (error instanceof DOMException) throw transaction.error ?? error;
    throw ownFault ? ownFault.error : error;
  }
}

/** A database that connects when it is first used, and again after its connection is lost. */
export function openDatabase(name: string): Database {
  let connecting: Promise<IDBDatabase> | undefined;
  let open: IDBDatabase | undefined;
  const connect = connector(name, (gone) => {
    if (gone === open) connecting = undefined;
  });
  const drop = (): void => {
    const dropped = connecting;
    connecting = undefined;
    dropped?.then(
      (connection) => connection.close(),
      () => undefined,
    );
  };
  const connection = (): Promise<IDBDatabase> => {
    if (!connecting) {
      const own = connect();
      own.then(
        (connection) => (open = connection),
        () => {
          if (connecting === own) connecting = undefined;
        },
      );
      connecting = own;
    }
    return connecting;
  };
  return {
    async transact(tables, mode, work, durability = 'strict') {
      for (let attempt = 1; ; attempt += 1) {
        let begun = false;
        try {
          return await runOnce(
            await connection(),
            tables,
            mode,
            (of) => {
              begun = true;
              return work(of);
            },
            durability,
          );
        } catch (error) {
          if (isDeadConnection(error)) drop();
          // A connection found closed before anything was asked of it costs one more try.
          const named = error instanceof StorageError || error instanceof NoAnswerError;
          const mayRetry = !begun && attempt === 1 && !named && isDeadConnection(error);
          if (!mayRetry) throw toStorageError(error);
        }
      }
    },
    close: drop,
  };
}
