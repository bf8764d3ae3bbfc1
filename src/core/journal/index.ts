export type { JournalRecord } from './record.ts';
export { JournalStoreError } from './port.ts';
export type { JournalStore, JournalStoreCode, RunEntry, RunJournal } from './port.ts';
