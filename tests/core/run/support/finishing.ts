import { fold, type Fact } from '../../../../src/core/run/index.ts';
import { smallPlan } from './fixtures.ts';
import { Tablet } from './tablet.ts';

/** A perfect person finishes what stands on the tablet, answering every question with "went on". */
export function finishes(tablet: Tablet): void {
  for (let looks = 0; looks < 2000 && tablet.state.status !== 'closed'; looks += 1) {
    const { view } = tablet;
    for (const { id } of view.review)
      tablet.tries({ kind: 'answer-review', question: id, answer: 'went-on' });
    if (view.askClock) tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    for (const fault of view.faults)
      if (!fault.cleared) tablet.tries({ kind: 'clear-fault', faultId: fault.id });
    if (view.status !== 'running') tablet.tries({ kind: 'resume' });
    if (view.status === 'drafting') tablet.tries({ kind: 'start-run' });
    for (const clock of view.timers)
      if (clock.alerting) tablet.tries({ kind: 'acknowledge-timer', timer: clock.id });
    for (const { step } of view.hot) tablet.tries({ kind: 'confirm-safe', step });
    let did = false;
    // Looked at anew: what was just answered may let the work go on at once.
    for (const { step, canConfirm, stage, status, gates } of tablet.view.currentSteps) {
      if (
        canConfirm &&
        tablet.tries({ kind: 'confirm', step: step.id, stage: step.stages[stage]?.id ?? '' }) ===
          null
      )
        did = true;
      if (status === 'stalled')
        for (const need of step.needs)
          if (tablet.tries({ kind: 'repeat-step', step: need.step, reason: 'Cold.' }) === null)
            did = true;
      if (status !== 'ready') continue;
      for (const { gate, scopeKey, value } of gates)
        if (value !== 'yes')
          tablet.tries({ kind: 'answer-gate', gate: gate.id, scopeKey, answer: 'yes' });
      if (tablet.tries({ kind: 'start-step', step: step.id }) === null) did = true;
    }
    if (!did) tablet.passes(Math.max(1, (tablet.view.wakeInS ?? 60) + 0.01));
  }
}

export function outcomes(tablet: Tablet): unknown {
  return {
    closedAs: tablet.view.closedAs,
    steps: tablet.view.steps.map(({ step, attempt, outcome }) => [step.id, attempt, outcome]),
  };
}

/** A tablet that stands after these facts, at the time of the last of them. */
export function standing(facts: readonly Fact[], planUsed = smallPlan): Tablet {
  const tablet = new Tablet(planUsed);
  tablet.facts = [...facts];
  tablet.state = fold(facts);
  const last = facts.at(-1)?.at;
  const first = facts[0]?.at;
  tablet.trueS = ((last?.wallMs ?? 0) - (first?.wallMs ?? 0)) / 1000;
  return tablet;
}
