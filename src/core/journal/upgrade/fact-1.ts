/** Facts as version 1 wrote them down. Frozen, like its plans. */
import type { Plan1 } from './plan-1.ts';
import type { FaultKind1, Step1 } from './step-1.ts';

type Readings1 = {
  readonly wallMs: number;
  readonly monoMs: number;
  readonly session: string;
};

export type Fact1 = {
  readonly seq: number;
  readonly id: string;
  readonly at: Readings1;
  readonly body: FactBody1;
};

type ClosedAs1 = 'completed' | 'failed' | 'stopped';
type Outcome1 = 'done' | 'skipped' | 'failed' | 'stopped' | 'not-run';

export type FactBody1 = RunFact1 | StepFact1 | TimerFact1 | GateFact1 | ClockFact1 | HostFact1;

type RunFact1 =
  | { readonly kind: 'drafted'; readonly plan: Plan1; readonly notBeforeWallMs: number }
  | { readonly kind: 'run-started' }
  | { readonly kind: 'paused' }
  | { readonly kind: 'resumed' }
  | {
      readonly kind: 'closing-begun' | 'run-closed';
      readonly as: ClosedAs1;
      readonly reason: string;
    }
  | {
      readonly kind: 'plan-amended';
      readonly steps: readonly Step1[];
      readonly startS: Readonly<Record<string, number>>;
      readonly reason: string;
    }
  | { readonly kind: 'noted'; readonly text: string }
  | { readonly kind: 'doubt-reported'; readonly fixture: string; readonly text: string };

type StepFact1 =
  | {
      readonly kind: 'step-started';
      readonly step: string;
      readonly attempt: number;
      readonly by: 'person' | 'chain';
    }
  | {
      readonly kind: 'stage-ended';
      readonly step: string;
      readonly attempt: number;
      readonly stage: string;
      readonly by: 'person' | 'timer';
    }
  | {
      readonly kind: 'stage-restarted';
      readonly step: string;
      readonly attempt: number;
      readonly stage: string;
      readonly reason: string;
    }
  | {
      readonly kind: 'step-unwinding' | 'step-settled';
      readonly step: string;
      readonly attempt: number;
      readonly outcome: Outcome1;
      readonly reason: string;
    }
  | { readonly kind: 'safe-confirmed'; readonly step: string; readonly attempt: number }
  | {
      readonly kind: 'step-repeated';
      readonly step: string;
      readonly attempt: number;
      readonly reason: string;
    };

type TimerFact1 =
  | {
      readonly kind: 'timer-due';
      readonly timer: string;
      readonly cause: number;
      readonly lateByS: number;
    }
  | { readonly kind: 'timer-acknowledged'; readonly timer: string; readonly cause: number }
  | { readonly kind: 'timer-extended'; readonly timer: string; readonly byS: number }
  | {
      readonly kind: 'time-corrected';
      readonly timer: string;
      readonly sinceWallMs: number;
      readonly reason: string;
    };

type GateFact1 =
  | {
      readonly kind: 'gate-answered';
      readonly gate: string;
      readonly scopeKey: string;
      readonly answer: 'yes' | 'no';
    }
  | {
      readonly kind: 'gate-overridden';
      readonly gate: string;
      readonly scopeKey: string;
      readonly reason: string;
    }
  | {
      readonly kind: 'fault-raised';
      readonly fault: string;
      readonly faultKind: FaultKind1;
      readonly step: string | null;
      readonly text: string;
      readonly timer: string | null;
      readonly cause: number;
    }
  | { readonly kind: 'fault-cleared'; readonly fault: string };

type ClockFact1 =
  | {
      readonly kind: 'clocks-disagree';
      readonly cause: 'slept' | 'back';
      readonly wallS: number;
      readonly monoS: number;
    }
  | {
      readonly kind: 'clock-answered';
      readonly right: boolean;
      readonly actualWallMs: number | null;
    }
  | {
      readonly kind: 'review-answered';
      readonly question: string;
      readonly answer: 'went-on' | 'broke-off' | 'unknown';
    };

type HostFact1 =
  | {
      readonly kind: 'session-opened';
      readonly lastHeartbeat: Readings1 | null;
      readonly tornRecords: number;
    }
  | { readonly kind: 'session-closed' }
  | { readonly kind: 'storage-failed'; readonly text: string }
  | { readonly kind: 'storage-mended' }
  | { readonly kind: 'alarm-handed'; readonly timer: string; readonly cause: number }
  | {
      readonly kind: 'alarm-failed';
      readonly timer: string;
      readonly cause: number;
      readonly text: string;
    };
