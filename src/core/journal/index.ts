export { decodeJournal, openJournal, type DecodedJournal } from './decode.ts';
export { encodeEntry, encodeEntries, type JournalEntry, type StoredEntry } from './entry.ts';
export { exportJournal, importJournal, type JournalFile } from './file.ts';
export { JournalStoreError } from './port.ts';
export type { JournalStore, JournalStoreCode, StoredRun, RunJournal } from './port.ts';
export type { JournalProblem } from './problem.ts';
