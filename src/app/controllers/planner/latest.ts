import type { Ask } from './planner.ts';

/** Asks one thing at a time: whatever is asked next stops what was asked before, which rejects with JobStopped. */
export function latestOf(ask: Ask): Ask {
  let before: AbortController | undefined;
  return (name, input, options) => {
    before?.abort();
    before = new AbortController();
    return ask(name, input, { ...options, signal: before.signal });
  };
}
