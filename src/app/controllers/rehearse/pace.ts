import type { Plan } from '../../../core/plan/index.ts';
import type { Request } from '../../../core/run/index.ts';

/** A whole run is shown in about this long at speed 1, ms. */
const WHOLE_MS = 180_000;
/** Waits between the presses of a plan take about this much of the time that its presses take. */
const WAITS_SHARE = 0.5;
/** A wait of a minute is a blink, one of a day as long as a few presses. */
const MINUTE_S = 60;
const PER_DOUBLING = 0.3;
/** Faster nobody sees what is pressed, ms: what has many presses is shown longer. */
const LEAST_PRESS_MS = 250;
/** The opening screen and the questions are read, not only seen. */
const OPENING_PRESSES = 6;
const GATE_PRESSES = 1.5;

type Pace = {
  /** How long it is shown what will be pressed before it is, real ms. */
  readonly pressMs: (request: Request) => number;
  /** How long the clock takes over so many seconds of the run, real ms. */
  readonly gapMs: (gapS: number) => number;
};

/** How fast a plan is shown: each press as long as any other, and long waits hardly longer than short ones. */
export function paceOf(plan: Plan): Pace {
  const sharedMs = WHOLE_MS / (1 + WAITS_SHARE) / pressesOf(plan);
  const pressMs = Math.max(LEAST_PRESS_MS, sharedMs);
  return {
    pressMs: ({ kind }) => {
      if (kind === 'start-run') return pressMs * OPENING_PRESSES;
      return kind === 'answer-gate' ? pressMs * GATE_PRESSES : pressMs;
    },
    gapMs: (gapS) => pressMs * PER_DOUBLING * Math.log2(1 + Math.max(0, gapS) / MINUTE_S),
  };
}

/** About how often something is pressed: each step begun, each stage ended, half of the clocks answered, each gate once. */
function pressesOf(plan: Plan): number {
  return plan.steps.reduce(
    (sum, { stages }) => {
      const clocks = stages.flatMap(({ timers }) => timers).length;
      return sum + 1 + stages.length + clocks / 2;
    },
    OPENING_PRESSES + plan.gates.length * GATE_PRESSES,
  );
}
