export const BACKUP_FORMAT = 'glowpour-backup';
export const BACKUP_VERSION = 1;

/** A kitchen as its own file's text. */
export type KitchenInBackup = {
  readonly name: string;
  /** ms since 1970-01-01 UTC. */
  readonly savedWallMs: number;
  readonly text: string;
};

/** A run as it is saved to a file of its own, as data. */
export type RunInBackup = {
  /** Its id where it was saved, by which choices name it; absent: an older app saved it. */
  readonly id?: string;
  readonly name: string;
  /** ms since 1970-01-01 UTC. */
  readonly openedWallMs: number;
  /** Unchecked: whoever brings it in reads it as a run's file. */
  readonly journal: unknown;
};

/** Everything that a tablet keeps. */
export type Backup = {
  readonly kitchens: readonly KitchenInBackup[];
  readonly runs: readonly RunInBackup[];
  /** Choices and ticks, by the names under which they are kept. */
  readonly settings: Readonly<Record<string, string | number | boolean>>;
};

/** Everything as the text of one file; it ends in a line end. */
export function formatBackup({ kitchens, runs, settings }: Backup): string {
  const file = { format: BACKUP_FORMAT, version: BACKUP_VERSION, kitchens, runs, settings };
  return `${JSON.stringify(file)}\n`;
}
