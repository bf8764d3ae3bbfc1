import { message, type Message } from '../../../core/messages/index.ts';

/**
 * Why the run cannot be written by this page; shown, never swallowed.
 * - `read-only`: its journal is damaged, or of a newer app; it stays so until a person puts the run aside;
 * - `unreadable`: what is stored cannot be read just now; it is not taken for gone;
 * - `taken-over`: a newer writer has the run, and the store refuses this page;
 * - `failed`: a mistake of the app; what was asked did not happen.
 */
export type Trouble = {
  readonly kind: 'storage' | 'read-only' | 'unreadable' | 'taken-over' | 'failed';
  readonly message: Message;
};

/** Why a page that does not lead the run does nothing. */
export const ONLY_SHOWS = message('shell.other-lead.only-shows');
