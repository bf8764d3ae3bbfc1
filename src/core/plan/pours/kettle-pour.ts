import type { Picture } from '../model/types.ts';

/** What one kettle pours. */
export type KettlePour = {
  readonly kettle: number;
  readonly litres: number;
  /** Names of the parts, for a sink. */
  readonly parts: readonly string[];
  readonly picture?: Picture;
};
