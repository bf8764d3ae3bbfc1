import { createSignal } from 'solid-js';
import type { StoredEntry } from '../../../core/journal/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import {
  apply,
  perform,
  type Fact,
  type Observation,
  type Readings,
  type Request,
  type RunState,
  type RunView,
} from '../../../core/run/index.ts';
import { RunSession } from '../run/run-session.ts';
import { createMemoryJournal } from './memory-journal.ts';

/** A run as a page leads it, over a journal that is kept nowhere. */
export function createRehearsedRun(plan: Plan, readClocks: () => Readings) {
  const [view, setView] = createSignal<RunView>();
  const [nowMs, setNowMs] = createSignal(readClocks().wallMs);
  const [refusal, setRefusal] = createSignal<Message>();
  let state: RunState | null = null;
  const follow = (entries: readonly StoredEntry[]): void => {
    // Written a moment ago, by this version.
    for (const { fact } of entries) state = apply(state, fact as Fact);
  };
  const deps = {
    store: createMemoryJournal(follow),
    readClocks,
    newId: () => 'rehearsal',
    builtWallMs: 0,
  };
  const session = RunSession.draft(plan, deps, {
    onView: (next) => {
      setNowMs(readClocks().wallMs);
      setView(() => next);
    },
    // Its journal takes everything: what is told here is a mistake of the app.
    onTrouble: (trouble) => setRefusal(trouble?.message),
    onRefusal: (refused) => setRefusal(refused.message),
  });
  return {
    view,
    nowMs,
    /** Why the last press was not taken. */
    refusal,
    drafted: session.then(() => undefined),
    /** Would the run take it, and would anything come of it? */
    isTaken(request: Request): boolean {
      if (!state) return false;
      const done = perform(state, request, readClocks());
      return 'facts' in done && done.facts.length > 0;
    },
    async send(input: Request | Observation): Promise<boolean> {
      if (input.kind !== 'tick') setRefusal(undefined);
      return (await session).send(input);
    },
  };
}
