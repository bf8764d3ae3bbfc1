export { decodeJournal, openJournal, type DecodedJournal, type JournalProblem } from './decode.ts';
export { exportJournal, importJournal, type JournalFile } from './file.ts';
export { JournalStoreError } from './port.ts';
export type { JournalStore, JournalStoreCode, RunEntry, RunJournal } from './port.ts';
export { encodeRecord, encodeRecords, type JournalRecord } from './record.ts';
