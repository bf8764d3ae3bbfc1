import type { Section } from '../../../model/message.ts';

/** What is wrong with a journal, in the browser or in a file: said after the page has come. */
export const damagedJournal = {
  'engine.journal.empty': 'The journal has no whole entry.',
  'engine.journal.corrupt': ({ seq }: { seq: number }) =>
    `Entry ${seq} cannot be read, and others follow it. Export the journal; it opens to be read only.`,
  'engine.journal.altered': ({ seq }: { seq: number }) =>
    `Entry ${seq} was changed after it was written: its sum does not match. It opens to be read only.`,
  'engine.journal.broken-chain': ({ found, seq }: { found: number; seq: number }) =>
    `Entry ${found} stands where ${seq} should follow the one before. One is missing or doubled.`,
  'engine.journal.newer-version': ({
    seq,
    version,
    newest,
  }: {
    seq: number;
    version: number;
    newest: number;
  }) =>
    `Entry ${seq} has version ${version}; this app reads up to ${newest}. Open it with the newer app.`,
  'engine.journal.unknown-fact': ({ seq, kind }: { seq: number; kind: string }) =>
    `Entry ${seq} tells “${kind}”, which this app does not know. Open it with the newer app.`,
  'engine.journal.does-not-fold': ({ why }: { why: string }) =>
    `Every entry is good, but together they cannot have happened: ${why}`,
  'engine.journal.file.long': ({ found, most }: { found: number; most: number }) =>
    `The file has ${found} characters; allowed: up to ${most}. Choose a journal file.`,
  'engine.journal.file.not-json': ({ why }: { why: string }) =>
    `The file is not JSON (${why}). Choose a journal file.`,
  'engine.journal.file.format': ({ found, allowed }: { found: string; allowed: string }) =>
    `format is ${found}; allowed: "${allowed}". Choose a journal file.`,
  'engine.journal.file.version': ({ found }: { found: string }) =>
    `version is ${found}; allowed: 1 or 2. Open it with the app that wrote it.`,
  'engine.journal.file.entries': ({ field }: { field: string }) =>
    `${field} is not a list; allowed: a list of entries. Choose a journal file.`,
} satisfies Section;
