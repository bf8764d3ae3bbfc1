import { createEffect, createSignal, on } from 'solid-js';
import { message, type Message } from '../../../core/messages/index.ts';
import type { Plan } from '../../../core/plan/index.ts';

/** What is known of the real runs on this tablet. */
type RealRuns = {
  /** The list of runs was read. */
  readonly isRead: () => boolean;
  readonly openRun: () => unknown;
  readonly isOpen: () => boolean;
  /** What is stored cannot be read or written just now. */
  readonly trouble: () => unknown;
};

/**
 * Which plan is rehearsed. A real run comes first: nothing is rehearsed while
 * one is open, or while it is not known whether one is, and a rehearsal ends
 * as soon as one opens, here or in another page. So the alarms of a run never
 * have a rehearsal over them. Going to another page ends it, too.
 */
export function createRehearsing(deps: {
  readonly runs: RealRuns;
  readonly route: () => unknown;
  readonly tell: (message: Message) => void;
}) {
  const { runs, route, tell } = deps;
  const [plan, setPlan] = createSignal<Plan>();
  const isBarred = (): boolean =>
    !runs.isRead() || runs.openRun() !== undefined || runs.isOpen() || runs.trouble() !== undefined;
  const leave = (): void => void setPlan(undefined);
  // Not there at once; and it does not come back by itself.
  createEffect(() => isBarred() && leave());
  createEffect(on(route, leave, { defer: true }));
  return {
    plan: () => (isBarred() ? undefined : plan()),
    leave,
    /** Rehearses a plan, or says why not now. */
    begin: (next: Plan): void => {
      if (isBarred()) tell(message('plan-page.rehearse.run-open'));
      else setPlan(() => next);
    },
  };
}
