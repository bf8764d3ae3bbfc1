import type { CustomId, MethodId, PartId } from './words.ts';

/**
 * "Our rabbi said": what holds for a fixture in place of the custom. With
 * `row`, `burner` or `part` it speaks of that alone and leaves the rest as it is.
 */
export type Override = {
  readonly fixture: string;
  readonly method: MethodId;
  readonly minutes?: number;
  /** How many times it is poured over, 1 to 5; absent: once. */
  readonly times?: number;
  readonly cover?: boolean;
  /** Is there a rest before the heat? Absent: as the custom has it. */
  readonly rest?: boolean;
  /** Is a hot stone moved over it while it is poured? */
  readonly stone?: boolean;
  /** Is a sink poured from its floor upwards? Absent: from the spout down. */
  readonly upwards?: boolean;
  /** Row or rule of the custom whose question this answers. */
  readonly row?: string;
  /** Id of the burner it speaks of. */
  readonly burner?: string;
  readonly part?: PartId;
  readonly saidBy: string;
  /** ISO date, yyyy-mm-dd */
  readonly saidOn: string;
  readonly text?: string;
  readonly comment?: string;
};

/** One row of a built-in custom as this household has it. */
export type OwnRow = {
  /** Id of the row in the table of `basedOn`. */
  readonly row: string;
  readonly method: MethodId;
  /** min, 1 to 600; absent: those of the row where the method is the same. */
  readonly minutes?: number;
  /** Absent: those of the row where the method is the same, else what the method itself says. */
  readonly cover?: boolean;
  readonly why: string;
  readonly saidBy: string;
  /** ISO date, yyyy-mm-dd */
  readonly saidOn: string;
};

/**
 * A custom of one's own: a built-in one, copied by name, with the rows that
 * differ. It is followed while the household follows the custom it was copied
 * from, and kept, unused, while the household follows the other.
 */
export type OwnCustom = {
  readonly name: string;
  readonly basedOn: CustomId;
  readonly changedRows: readonly OwnRow[];
};
