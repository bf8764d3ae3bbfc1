import { JournalStoreError } from '../../../core/journal/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import { StorageError } from '../../../host/database/index.ts';

/** An error that says in a message what a person is to know. */
export class ToldError extends Error {
  readonly told: Message;
  constructor(told: Message) {
    super(told.key);
    this.name = 'ToldError';
    this.told = told;
  }
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** Why something failed, for a person: by the code of the store, or in the platform's own words. */
export function reasonOf(error: unknown): Message {
  if (error instanceof ToldError) return error.told;
  if (error instanceof StorageError || error instanceof JournalStoreError)
    return error.code === 'unknown'
      ? message('shell.storage.unknown', { why: error.message })
      : message(`shell.storage.${error.code}`);
  return message('shell.failed', { why: wordsOf(error) });
}
