/** The last moment of a year of four digits, 9999-12-31T23:59:59.999Z, ms since 1970-01-01 UTC. */
export const LATEST_WALL_MS = 253_402_300_799_999;

/** Is it a moment that a clock of a tablet could have told: ms since 1970-01-01 UTC, up to the year 9999? */
export const isMoment = (value: unknown): value is number =>
  typeof value === 'number' && value >= 0 && value <= LATEST_WALL_MS;
