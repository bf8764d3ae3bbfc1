import type { Message } from '../messages/index.ts';

/**
 * Why a journal opens read-only. It is never reset or mended in place:
 * - `empty`: no whole entry;
 * - `corrupt`: an entry that is not the last cannot be read;
 * - `altered`: an entry is whole, but its content does not match its sum;
 * - `broken-chain`: an entry is missing, doubled, or does not follow the one before;
 * - `newer-version`, `unknown-fact`: a newer app wrote it;
 * - `does-not-fold`: every entry is good, but together they cannot have happened.
 */
export type JournalProblem = {
  readonly name:
    | 'empty'
    | 'corrupt'
    | 'altered'
    | 'broken-chain'
    | 'newer-version'
    | 'unknown-fact'
    | 'does-not-fold';
  /** Number of the entry, from 1. */
  readonly seq: number;
  readonly message: Message;
};
