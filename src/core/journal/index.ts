export { decodeJournal, openJournal, type DecodedJournal, type JournalProblem } from './decode.ts';
export { exportJournal, importJournal, type JournalFile } from './file.ts';
export { JournalStoreError } from './port.ts';
export type { JournalStore, JournalStoreCode, StoredRun, RunJournal } from './port.ts';
export { encodeEntry, encodeEntries, type JournalEntry } from './entry.ts';
