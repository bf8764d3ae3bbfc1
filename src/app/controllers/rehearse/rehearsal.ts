import { createSignal } from 'solid-js';
import type { Plan } from '../../../core/plan/index.ts';
import { createPerson, type Request, type RunView } from '../../../core/run/index.ts';
import { createPacedClock } from './paced-clock.ts';
import { paceOf } from './pace.ts';
import { createRehearsedRun } from './rehearsed-run.ts';

/**
 * What comes next of itself:
 * - `press`: the person presses this, of this step, and it is shown before;
 * - `wait`: nothing is to be done until a wall time, ms;
 * - `still`: nothing will happen until somebody at the screen presses something;
 * - `over`: the run is closed.
 */
export type Ahead =
  | { readonly kind: 'press'; readonly request: Request; readonly step: string | undefined }
  | { readonly kind: 'wait'; readonly untilWallMs: number }
  | { readonly kind: 'still' }
  | { readonly kind: 'over' };

/** What a rehearsal needs of the page; nothing of it keeps anything. */
type RehearsalPorts = {
  /** Real time, ms, of any monotonic clock. */
  readonly readMs: () => number;
  /** Wall time at which a plan begins that names none, ms. */
  readonly nowWallMs: () => number;
  /** Nothing is to move: the clock leaps from moment to moment. */
  readonly isStill: () => boolean;
};

/** A hair past the moment, ms: rounding must not leave a clock short of it. */
const HAIR_MS = 1;

/** The step a request is about, to be shown while it is announced. */
function stepOf(request: Request, seen: RunView): string | undefined {
  if ('step' in request) return request.step;
  if ('timer' in request) return seen.timers.find(({ id }) => id === request.timer)?.step;
  if (request.kind !== 'answer-gate') return undefined;
  const asks = ({ gate, scopeKey }: RunView['steps'][number]['gates'][number]): boolean =>
    gate.id === request.gate && scopeKey === request.scopeKey;
  return seen.currentSteps.find(({ gates }) => gates.some(asks))?.step.id;
}

/** One after the other: a press of a button never meets a turn of the clock halfway. */
function createQueue() {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return {
    isBusy: () => waiting > 0,
    async add(what: () => Promise<unknown>): Promise<void> {
      waiting += 1;
      const done = last.then(what).finally(() => (waiting -= 1));
      last = done.catch(() => undefined);
      await done;
    },
  };
}

/**
 * A run of a plan with nobody in the kitchen: the queue, the engine and the
 * view of a real one over a journal that is kept nowhere and clocks that are
 * sent from one thing that happens to the next, with a person who presses what
 * the plan asks for. Whoever sits at the screen may press, too.
 */
export function createRehearsal(plan: Plan, ports: RehearsalPorts) {
  const startWallMs = plan.days?.startWallMs ?? ports.nowWallMs();
  const clock = createPacedClock(startWallMs, ports.readMs, ports.isStill);
  const run = createRehearsedRun(plan, clock.readClocks);
  const [person, pace, turns] = [createPerson(), paceOf(plan), createQueue()];
  const [ahead, setAhead] = createSignal<Ahead>({ kind: 'still' });
  const [playing, setPlaying] = createSignal(true);

  /** Finds what comes next, and sends the clock there. */
  const look = (): void => {
    const seen = run.view();
    if (!seen) return;
    if (seen.status === 'closed') return void setAhead({ kind: 'over' });
    const atS = clock.atS();
    person.look(seen, atS);
    const request = person.wishes(seen, atS).find(run.isTaken);
    if (request) {
      clock.runTo(clock.readClocks().wallMs, pace.pressMs(request));
      return void setAhead({ kind: 'press', request, step: stepOf(request, seen) });
    }
    const nextS = person.nextLookS(seen, atS);
    if (nextS === null) return void setAhead({ kind: 'still' });
    const untilWallMs = startWallMs + nextS * 1000 + HAIR_MS;
    clock.runTo(untilWallMs, pace.gapMs(nextS - atS));
    setAhead({ kind: 'wait', untilWallMs });
  };
  /** One thing happens: what was announced is pressed, or the time that was waited for is here. */
  const turn = async (): Promise<void> => {
    const now = ahead();
    clock.finish();
    await run.send(now.kind === 'press' ? now.request : { kind: 'tick' });
    look();
  };
  const play = (on: boolean): void => {
    clock.setPlaying(on);
    setPlaying(on);
  };
  const goesOn = (): boolean => ahead().kind === 'press' || ahead().kind === 'wait';

  return {
    view: run.view,
    nowMs: run.nowMs,
    refusal: run.refusal,
    ahead,
    playing,
    play,
    setSpeed: clock.setSpeed,
    /** Opens the run; it stands on its first screen, and the first press is announced. */
    open: () => turns.add(() => run.drafted.then(look)),
    /** A few times a second: shows the clocks, and lets happen what is due. */
    async beat(): Promise<void> {
      if (turns.isBusy() || !playing() || !goesOn()) return;
      if (clock.isThere()) await turns.add(turn);
      else if (ahead().kind === 'wait' && !ports.isStill())
        await turns.add(() => run.send({ kind: 'tick' }));
    },
    /** The next thing happens at once, and then it stands. */
    async step(): Promise<void> {
      play(false);
      await turns.add(async () => goesOn() && turn());
    },
    /** Somebody at the screen presses something. */
    async send(request: Request): Promise<boolean> {
      // Who tells of a fault is not hurried on: a clock over a burn stands rather than runs.
      if (request.kind === 'report-fault') play(false);
      const done = await run.send(request);
      if (done) look();
      return done;
    },
  };
}

export type Rehearsal = ReturnType<typeof createRehearsal>;
