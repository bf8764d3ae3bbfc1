/** What may be written: least and most, both allowed. */
export type Range = { least: number; most: number };
