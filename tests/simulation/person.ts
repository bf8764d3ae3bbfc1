import type { RunView, StepView } from '../../src/core/run/index.ts';
import type { Dice } from './dice.ts';
import { tellsTime } from './words.ts';
import type { Asked, World } from './world.ts';

/** A person at the tablet: works, answers truly, and now and then presses what cannot be. */
export class Person {
  /** True time at which the work of a stage will be done, s. */
  private readonly workEndsS = new Map<string, number>();

  constructor(
    readonly world: World,
    readonly dice: Dice,
    /** Looks at the clock before the run is begun. */
    readonly attentive: boolean,
  ) {}

  /** Does what is to be done at this moment; false: there was nothing to do. */
  works(): boolean {
    const { world, dice } = this;
    const { view } = world;
    switch (view.status) {
      case 'closed':
      case 'closing':
        return this.makesSafe(view);
      case 'drafting':
        return this.begins();
      case 'reviewing':
        return this.reviews(view);
      case 'suspended':
      case 'held':
        if (dice.chance(0.3) && this.confirms(view)) return true;
        return this.putsRight(view);
      case 'running':
        if (view.askClock && dice.chance(0.5) && tellsTime(world, dice)) return true;
        if (this.makesSafe(view)) return true;
        if (dice.chance(0.8) && this.answersAlarms(view)) return true;
        return this.confirms(view) || this.goesOn(view);
    }
  }

  /** Seconds until something can be done. */
  waitS(): number {
    const { view, trueS } = this.world;
    const ends = [...this.workEndsS.values()]
      .filter((atS) => atS > trueS)
      .map((atS) => atS - trueS);
    return Math.min(6 * 3600, view.wakeInS ?? 3600, ...ends) + 0.01;
  }

  private asks(asked: Asked): boolean {
    // The battery falls out between two facts, once in a while.
    const dies = this.dice.chance(0.008) ? this.dice.whole(0, 2) : Infinity;
    return this.world.asks(asked, dies).refusal === null;
  }

  private begins(): boolean {
    const { world, dice } = this;
    const wrong = Math.abs(world.offsetS) > 60;
    if (wrong && this.attentive) world.setsClock(0, 'before it begins, the clock is put right');
    const clockRight = this.attentive || !wrong;
    if (
      this.asks(
        clockRight ? ({ kind: 'start-run', clockRight: true } as Asked) : { kind: 'start-run' },
      )
    )
      return true;
    if (wrong && dice.chance(0.5)) world.setsClock(0, 'the clock is put right');
    return false;
  }

  private makesSafe(view: RunView): boolean {
    let did = this.cools(view);
    for (const { step, confirmed } of view.hot) {
      const unwinding = view.steps.some(
        (one) => one.step.id === step && one.status === 'unwinding',
      );
      if (!confirmed && unwinding && this.asks({ kind: 'confirm-safe', step })) did = true;
    }
    return did;
  }

  /** Keeps the water running for the 20 minutes, mostly. */
  private cools(view: RunView): boolean {
    const { dice } = this;
    let did = false;
    for (const { id, fault, over, alerting } of view.coolings) {
      if (alerting && dice.chance(0.5) && this.asks({ kind: 'acknowledge-timer', timer: id }))
        did = true;
      const early = dice.chance(0.05);
      const as = over ? 'cooled' : dice.chance(0.5) ? 'taken-over' : 'mistake';
      if ((over || early) && this.asks({ kind: 'end-cooling', faultId: fault, as })) did = true;
    }
    return did;
  }

  private answersAlarms(view: RunView): boolean {
    let did = false;
    for (const clock of view.timers)
      if (clock.alerting && this.asks({ kind: 'acknowledge-timer', timer: clock.id })) did = true;
    return did;
  }

  private reviews(view: RunView): boolean {
    const { truth } = this.world;
    for (const { id, step } of view.review) {
      const place = truth.places.get(step);
      const kind = truth.step(step).kind;
      const brokeOff = place?.broken === true || kind === 'pour' || kind === 'boil-over';
      if (brokeOff && place) place.told = true;
      return this.asks({
        kind: 'answer-review',
        question: id,
        answer: brokeOff ? 'broke-off' : 'went-on',
      });
    }
    if (view.askClock && tellsTime(this.world, this.dice)) return true;
    return this.asks({ kind: 'resume' });
  }

  private putsRight(view: RunView): boolean {
    if (this.makesSafe(view)) return true;
    for (const { id, cleared } of view.faults)
      if (!cleared && this.asks({ kind: 'clear-fault', faultId: id })) return true;
    if (view.storageDown) return this.asks({ kind: 'storage-mended' });
    if (view.askClock && tellsTime(this.world, this.dice)) return true;
    for (const step of view.steps)
      for (const { gate, scopeKey, value } of step.gates)
        if (
          value === 'no' &&
          this.asks({ kind: 'answer-gate', gate: gate.id, scopeKey, answer: 'yes' })
        )
          return true;
    return this.asks({ kind: 'resume' });
  }

  private key(step: StepView): string {
    return `${step.step.id}#${step.attempt}/${step.stage}`;
  }

  private confirms(view: RunView): boolean {
    const { world, dice } = this;
    for (const step of view.steps) {
      if (step.status !== 'active' && step.status !== 'checking') continue;
      const stage = step.step.stages[step.stage];
      if (!stage?.say) continue;
      const key = this.key(step);
      const estimate = stage.timers.find(({ role }) => role === 'estimate')?.lengthS;
      const workS =
        estimate ?? Math.min(900, step.step.durationS.typical / step.step.stages.length);
      if (!this.workEndsS.has(key))
        this.workEndsS.set(key, world.trueS + workS * dice.between(0.5, 1.3));
      if ((this.workEndsS.get(key) ?? 0) > world.trueS && !dice.chance(0.03)) continue;
      if (step.canConfirm && this.asks({ kind: 'confirm', step: step.step.id, stage: stage.id }))
        return true;
    }
    return false;
  }

  /** Begins one of the things that can be begun, in an order of its own. */
  private goesOn(view: RunView): boolean {
    const { dice } = this;
    const stopped = view.steps.filter(
      ({ step, status, outcome }) =>
        status === 'settled' &&
        step.phase === 'purge' &&
        (outcome === 'stopped' || outcome === 'failed'),
    );
    for (const { step } of stopped)
      if (this.asks({ kind: 'repeat-step', step: step.id, reason: 'To be done again.' }))
        return true;
    for (const { status, step } of view.steps) {
      if (status !== 'stalled') continue;
      for (const need of step.needs)
        if (
          need.withinS !== undefined &&
          this.asks({ kind: 'repeat-step', step: need.step, reason: 'It cooled.' })
        )
          return true;
    }
    const ready = view.steps.filter(({ status }) => status === 'ready');
    const cleanFirst = ready.filter(
      ({ step }) => step.phase === 'clean' || step.phase === 'prepare',
    );
    const next = dice.pick(cleanFirst.length > 0 && dice.chance(0.8) ? cleanFirst : ready);
    return next === undefined ? this.leavesOut(view) : this.starts(next);
  }

  /** Past the hour of leaven what is not purged is left out. */
  private leavesOut(view: RunView): boolean {
    const { deadline } = view.plan.days ?? {};
    if (!deadline || this.world.trueMs < deadline.atWallMs) return false;
    const left = view.steps.find(
      ({ step, status, outcome }) =>
        step.phase === 'purge' &&
        (status === 'waiting' || outcome === 'stopped' || outcome === 'failed'),
    );
    return (
      left !== undefined &&
      this.asks({ kind: 'skip-step', step: left.step.id, reason: 'The hour has passed.' })
    );
  }

  private starts(one: StepView): boolean {
    for (const { gate, scopeKey, value } of one.gates)
      if (value !== 'yes')
        this.asks({ kind: 'answer-gate', gate: gate.id, scopeKey, answer: 'yes' });
    return this.asks({ kind: 'start-step', step: one.step.id });
  }
}
