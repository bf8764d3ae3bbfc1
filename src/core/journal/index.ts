export { crc32 } from './crc32.ts';
export { decodeJournal, openJournal } from './decode.ts';
export {
  encodeEntry,
  encodeEntries,
  followProblem,
  type JournalEntry,
  type StoredEntry,
} from './entry.ts';
export { exportJournal, importJournal } from './file.ts';
export { JournalReader } from './reader.ts';
export { isSameKitchen, type KitchenOfRun } from './same-kitchen.ts';
export { JournalStoreError } from './port.ts';
export type { JournalStore, StoredRun, RunJournal } from './port.ts';
