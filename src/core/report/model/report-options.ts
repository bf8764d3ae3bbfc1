import type { FilledIn } from '../../kitchen/index.ts';

/** What the record cannot find in the facts. */
export type ReportOptions = {
  /** Fields that the kitchen file left out, as the parser filled them. */
  readonly filled?: readonly FilledIn[];
};
