/** A timer may fire a little early; aiming behind the second keeps it from firing twice for one second, ms. */
const BEHIND_SECOND_MS = 5;

/** Two turns are never closer than this, ms, whatever is due. Common practice, no published source. */
const SHORTEST_MS = 50;

const SECOND_MS = 1000;

/**
 * Longest wait of a hidden page, ms. One that was hidden for minutes has its
 * timers run at whole minutes only: a whole minute asked for just behind such
 * a mark would run at the next but one. Source: "Heavy throttling of chained
 * JS timers beginning in Chrome 88", Chrome for Developers.
 */
const HIDDEN_MS = 55 * SECOND_MS;

/**
 * Delay to the next turn, ms: the next whole second of the wall clock while
 * the page is seen, or the next moment something can come due, whichever is
 * sooner. Hidden pages turn only for what is due, at least once a minute.
 */
export function nextTurnMs(wallMs: number, wakeInS: number | null, visible: boolean): number {
  const toSecondMs = SECOND_MS - (((wallMs % SECOND_MS) + SECOND_MS) % SECOND_MS);
  const beatMs = visible ? toSecondMs + BEHIND_SECOND_MS : HIDDEN_MS;
  const dueMs = wakeInS === null ? Infinity : wakeInS * SECOND_MS + BEHIND_SECOND_MS;
  return Math.max(SHORTEST_MS, Math.min(beatMs, dueMs));
}
