import type { Designation } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';

/**
 * What a place is now, by what was really done there:
 * - `heated`: purged by glow, the highest heat or a self-clean cycle;
 * - `poured`: purged by boiling water, poured, boiled inside or boiled over;
 * - `steamed`: purged by the steam of water boiled inside it;
 * - `covered`, `cleaned`: no purge was planned, and the cover or the cleaning was done;
 * - `closed-up`: kept out of use;
 * - `not-purged`: a purge is missing, whoever left it out; `not-done`: a cover or a cleaning is;
 * - `not-yet`: the run goes on; `untouched`: nothing was planned.
 */
export type PlaceState =
  | 'heated'
  | 'poured'
  | 'steamed'
  | 'covered'
  | 'cleaned'
  | 'closed-up'
  | 'not-purged'
  | 'not-done'
  | 'not-yet'
  | 'untouched';

export type PlaceNow = {
  readonly fixture: string;
  readonly name: string;
  /** In the picture and in the table, from 1, in the order of the kitchen file. */
  readonly number: number;
  readonly designation: Designation;
  readonly state: PlaceState;
  /** Purged, and covered as well. */
  readonly isCoveredToo: boolean;
  /** Single purges (burners, kettles, cycles), and how many of them stand. */
  readonly purges: { readonly planned: number; readonly done: number };
};

/** One place in one row; a cell without lines has nothing to tell. */
export type PlaceRow = {
  readonly place: PlaceNow;
  /** How it was done: the method, kettles, minutes of heat. */
  readonly how: readonly Message[];
  readonly when: readonly Message[];
  readonly rested: readonly Message[];
  /** By which source, and whose word replaced the row of the custom. */
  readonly source: readonly Message[];
  readonly note: readonly Message[];
};
