import { createSignal } from 'solid-js';
import type { Plan } from '../../../core/plan/index.ts';
import type { Outlook, RunView, StepView } from '../../../core/run/index.ts';
import { MS_PER_MINUTE, MS_PER_SECOND } from '../../../core/units/index.ts';
import { JobStopped } from '../planner/job-stopped.ts';
import { latestOf } from '../planner/latest.ts';
import type { Ask } from '../planner/planner.ts';

/** A clock whose end moved by less goes on as before, ms. */
const SAME_END_MS = MS_PER_MINUTE;
/** Also where nothing is done: what should be over by now moves the end, ms. */
const AGAIN_MS = 10 * MS_PER_MINUTE;

/** What of a run an outlook rests on. */
type Seen = {
  readonly plan: Plan;
  /** Which steps are begun, done, or to be done again. */
  readonly deeds: string;
  /** When each wait is over, wall ms. */
  readonly endsMs: ReadonlyMap<string, number>;
  readonly atMs: number;
};

function deed({ status, again, attempt, stage }: StepView): string {
  const isToCome = status === 'waiting' || status === 'ready';
  return isToCome ? '' : `${attempt}.${stage}${status === 'settled'}${again}`;
}

function seenOf({ plan, steps, timers }: RunView, nowMs: number): Seen {
  const holds = timers.filter(({ role, leftS }) => role === 'hold' && Number.isFinite(leftS));
  return {
    plan,
    deeds: steps.map(deed).join(),
    endsMs: new Map(holds.map(({ id, leftS }) => [id, nowMs + leftS * MS_PER_SECOND])),
    atMs: nowMs,
  };
}

/** Did anything happen that moves the end? */
function isOther(now: Seen, before: Seen): boolean {
  return (
    now.plan !== before.plan ||
    now.deeds !== before.deeds ||
    Math.abs(now.atMs - before.atMs) >= AGAIN_MS ||
    [...now.endsMs].some(
      ([id, endMs]) =>
        endMs > now.atMs && !(Math.abs(endMs - (before.endsMs.get(id) ?? 0)) < SAME_END_MS),
    )
  );
}

/**
 * When the run that is open is expected to end, worked out anew when something is done, answered
 * or moved, not with every second. Undefined where nothing is in progress, or not known yet.
 */
export function createOutlook(ask: Ask) {
  const [outlook, setOutlook] = createSignal<Outlook>();
  const askLatest = latestOf(ask);
  let before: Seen | undefined;
  const work = async (view: RunView, seen: Seen): Promise<void> => {
    try {
      const found = await askLatest('outlook', { view, nowMs: seen.atMs });
      // The run may be held up, or over, by now.
      if (before === seen) setOutlook(found);
    } catch (error) {
      if (error instanceof JobStopped) return;
      setOutlook(undefined);
      throw error;
    }
  };
  /** Looks at the run as it is now, as often as it changes. */
  const look = (view: RunView | undefined, nowMs: number): void => {
    if (!view || (view.status !== 'running' && view.status !== 'held')) {
      before = undefined;
      setOutlook(undefined);
      return;
    }
    const now = seenOf(view, nowMs);
    if (before && !isOther(now, before)) return;
    before = now;
    void work(view, now);
  };
  return { outlook, look };
}
