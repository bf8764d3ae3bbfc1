import type { JournalStore } from '../../../core/journal/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import type { Readings, Refusal, RunView } from '../../../core/run/index.ts';
import type { Trouble } from './trouble.ts';

/** What the session needs of the device. */
export type SessionDeps = {
  readonly store: JournalStore;
  readonly readClocks: () => Readings;
  readonly newId: () => string;
  /** Build date of this app: no honest clock shows less. */
  readonly builtWallMs: number;
  /** Version of this app, for the record of a run that it begins. */
  readonly appVersion?: string;
};

export type SessionListener = {
  readonly onView: (view: RunView) => void;
  readonly onTrouble: (trouble: Trouble | undefined) => void;
  readonly onRefusal: (refusal: Refusal) => void;
};

/** What the runs on this tablet need of it, and of the page. */
export type RunControllerDeps = SessionDeps & {
  /** May this page write runs now? One page may. */
  readonly mayWrite: () => boolean;
  /** Says to the person what was refused. */
  readonly tell: (message: Message) => void;
};
