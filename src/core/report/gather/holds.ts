import { view, type TimerView, type Fact, type RunState } from '../../run/index.ts';
import type { HoldReport } from '../model/report.ts';

type Timer = RunState['timers'][string];

/** What people said about the timers of a run, by timer. */
export type Said = Map<string, { wordS: number; corrections: string[] }>;

/** Only these facts move proved time without a clock. */
const BY_WORD: ReadonlySet<string> = new Set([
  'clock-answered',
  'clock-answer-withdrawn',
  'review-answered',
  'review-answer-withdrawn',
  'time-corrected',
]);

/** Writes down how much proved time this fact gave by a person's word. */
export function noteWord(said: Said, before: RunState, after: RunState, { at, body }: Fact): void {
  if (!BY_WORD.has(body.kind)) return;
  const provedS = new Map(view(before, at).timers.map(({ id, atLeastS }) => [id, atLeastS]));
  for (const { id, atLeastS } of view(after, at).timers) {
    const wasS = provedS.get(id);
    if (wasS !== undefined && wasS !== atLeastS) saidOf(said, id).wordS += atLeastS - wasS;
  }
  if (body.kind === 'time-corrected') saidOf(said, body.timer).corrections.push(body.reason);
}

function saidOf(said: Said, timer: string): { wordS: number; corrections: string[] } {
  const known = said.get(timer) ?? { wordS: 0, corrections: [] };
  said.set(timer, known);
  return known;
}

/** The minimum times running in a stage, as they stand in `state` at the moment of `fact`. */
export function holdsOf(
  state: RunState,
  step: string,
  attempt: number,
  stage: string,
  at: Fact['at'],
  ended: boolean,
  said: Said,
): readonly HoldReport[] {
  const timers = Object.values(state.timers).filter(
    (timer) =>
      timer.mode === 'running' &&
      timer.spec.role === 'hold' &&
      timer.step === step &&
      timer.attempt === attempt &&
      timer.stage === stage,
  );
  if (timers.length === 0) return [];
  const views = new Map(view(state, at).timers.map((one) => [one.id, one]));
  return timers.map((timer) => holdOf(timer, views.get(timer.id), at, ended, said));
}

function holdOf(
  timer: Timer,
  timerView: TimerView | undefined,
  at: Fact['at'],
  ended: boolean,
  said: Said,
): HoldReport {
  const word = said.get(timer.id);
  const provedS = timerView?.atLeastS ?? 0;
  return {
    timer: timer.id,
    step: timer.step,
    label: timer.spec.label,
    purpose: timer.spec.purpose,
    fromWallMs: timer.startedWallMs - timer.correctedS * 1000,
    toWallMs: ended ? at.wallMs : null,
    neededS: timer.lengthS,
    addedS: timer.lengthS - timer.spec.lengthS,
    provedS,
    onWordS: Math.min(provedS, Math.max(0, word?.wordS ?? 0)),
    corrections: [...(word?.corrections ?? [])],
    unproved: timer.unproved || timer.gapOpen,
  };
}
