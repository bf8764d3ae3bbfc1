export { createJournalStore } from './journal-store.ts';
