import { isSaid, NO_REASON } from '../model/reason.ts';
import { message } from '../../messages/index.ts';
import type { FaultKind, FaultPolicy, Plan } from '../../plan/index.ts';
import { stepOf } from '../model/plan-index.ts';
import type { FaultState, RunState } from '../model/state.ts';

/** Faults after which something that must be unbroken, is not. */
const INTERRUPTING: ReadonlySet<FaultKind> = new Set<FaultKind>([
  'no-glow',
  'flame-out',
  'power-cut',
  'kettle-failed',
  'oven-lock',
  'breaker-tripped',
  'undefined',
]);

/** As in shared/fault-policies.json, which older plans do not have; a test holds the two together. */
const BURNED: FaultPolicy = {
  kind: 'burned',
  policy: 'suspend',
  name: message('cautions.fault.burned.name'),
  doThis: ([1, 2, 3, 4, 5] as const).map((line) => message(`cautions.fault.burned.line-${line}`)),
};

/**
 * The plan's policy for a kind of fault; a kind it does not know is suspended
 * on. A burn halts every run, whatever its plan says or was made before.
 */
export function policyOf(plan: Plan, kind: FaultKind): FaultPolicy {
  if (kind === 'burned') return BURNED;
  return (
    plan.faults.find((one) => one.kind === kind) ?? {
      kind,
      name: message('engine.fault.undefined'),
      policy: 'suspend',
      doThis: [
        message('engine.fault.undefined.off'),
        message('engine.fault.undefined.write'),
        message('engine.fault.undefined.go-on'),
      ],
    }
  );
}

/** Is this open fault about that active step? */
function concerns(state: RunState, fault: FaultState, step: string): boolean {
  return (
    !fault.cleared &&
    fault.policy === 'suspend' &&
    state.steps[step]?.status === 'active' &&
    (fault.step === null ? INTERRUPTING.has(fault.kind) : fault.step === step)
  );
}

/** Does it break the stage in progress, so that it must begin again when the fault is cleared? */
export function breaksStep(state: RunState, fault: FaultState, step: string): boolean {
  if (!concerns(state, fault, step) || !INTERRUPTING.has(fault.kind)) return false;
  const stage = stepOf(state.plan, step).stages[state.steps[step]?.stage ?? 0];
  return stage?.resumption === 'restart';
}

/** Is something open about this step, so that what it broke cannot begin again yet? */
export function isBroken(state: RunState, step: string): boolean {
  return state.faults.some((fault) => breaksStep(state, fault, step));
}

/** Is the minimum clock of this step stopped: broken, and not begun again yet? What broke never comes due (I-25). */
export function isFrozen(state: RunState, step: string): boolean {
  return isBroken(state, step) || isSaid(state.steps[step]?.restart ?? NO_REASON);
}

/** Faults that keep a person from going on. */
export function openFaults(state: RunState): readonly FaultState[] {
  return state.faults.filter((fault) => !fault.cleared && fault.policy === 'suspend');
}

/** Open faults about one active step. */
export function faultsOf(state: RunState, step: string): readonly FaultState[] {
  return state.faults.filter((fault) => concerns(state, fault, step));
}
