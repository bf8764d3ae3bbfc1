import type { Plan } from '../../plan/index.ts';
import type { Fact } from '../model/facts.ts';
import { createRun, perform } from './perform.ts';
import { createPerson, type Person } from './person.ts';
import type { RunState } from '../model/state.ts';
import type { Readings, Request, RunView } from '../model/types.ts';
import { view } from '../view/index.ts';

export type SimulateOptions = {
  /** What the person does besides working: asked before every look at the run, with the seconds since the start. */
  readonly script?: (seen: RunView, atS: number) => readonly Request[];
  /** Wall time at the start, ms. Default: when the plan's days begin. */
  readonly startWallMs?: number;
  /** Work as soon as it can be done, not before the timetable says (default: keep to the timetable). */
  readonly eager?: boolean;
  /** Stop looking after this long, s. Default 14 days. */
  readonly untilS?: number;
};

export type Simulated = {
  readonly facts: readonly Fact[];
  readonly state: RunState;
  readonly view: RunView;
  /** When the run closed, or where it stood still, s after the start. */
  readonly finishS: number;
};

const UNTIL_S = 14 * 24 * 3600;
const SESSION = 'simulated';
/** Rounding of seconds to milliseconds must not leave a timer a hair short. */
const HAIR_S = 0.001;

type Stand = {
  state: RunState;
  facts: Fact[];
  atS: number;
  readonly person: Person;
};

/** Plays a plan through the engine with a simulated clock and a person who does what it asks. */
export function simulateRun(plan: Plan, options: SimulateOptions = {}): Simulated {
  const startWallMs = options.startWallMs ?? plan.days?.startWallMs ?? 0;
  const readings = (atS: number): Readings => ({
    wallMs: startWallMs + atS * 1000,
    monoMs: atS * 1000,
    session: SESSION,
  });
  const begun = createRun(plan, readings(0));
  const person = createPerson(options.eager);
  const stand: Stand = { state: begun.state, facts: [...begun.facts], atS: 0, person };
  const untilS = options.untilS ?? UNTIL_S;
  while (stand.state.status !== 'closed' && stand.atS < untilS) {
    const now = readings(stand.atS);
    const seen = work(stand, now, options);
    if (seen === null) break;
    const nextS = person.nextLookS(seen, stand.atS);
    if (nextS === null) break;
    stand.atS = Math.min(untilS, nextS + HAIR_S);
    ask(stand, { kind: 'tick' }, readings(stand.atS));
  }
  const last = view(stand.state, readings(stand.atS));
  return { facts: stand.facts, state: stand.state, view: last, finishS: stand.atS };
}

function ask(stand: Stand, asked: Request | { kind: 'tick' }, now: Readings): boolean {
  const done = perform(stand.state, asked, now);
  if ('refusal' in done) return false;
  stand.state = done.state;
  stand.facts.push(...done.facts);
  return true;
}

/** Does everything that can be done at this moment, one thing after the other; gives the last look at it, null once the run closed. */
function work(stand: Stand, now: Readings, options: SimulateOptions): RunView | null {
  const extra = options.script?.(view(stand.state, now), stand.atS) ?? [];
  for (const asked of extra) ask(stand, asked, now);
  for (;;) {
    const seen = view(stand.state, now);
    stand.person.look(seen, stand.atS);
    const wanted = stand.person.wishes(seen, stand.atS);
    // What another of them has overtaken is refused, and harmless.
    const did = wanted.filter((asked) => ask(stand, asked, now));
    if (stand.state.status === 'closed') return null;
    if (did.length === 0) return seen;
  }
}
