import type { Plan, Step } from '../../src/core/plan/index.ts';
import type { FactBody } from '../../src/core/run/index.ts';

/** Where a step really stands. */
export type Place = {
  readonly stage: number;
  /** True time at which this stage was entered, s. */
  readonly sinceS: number;
  readonly attempt: number;
  /** What it does broke off since then; `told`: and a person has said so. */
  broken: boolean;
  told: boolean;
};

/** A kettle with water in it that boiled at `boiledS`, meant for the pour `forStep`. */
export type Boiled = { readonly boiledS: number; readonly boil: string };

/** What a word that something was used changes in the truth. */
type Kept = Readonly<Record<'touchedS' | 'doubtedS' | 'datedS', ReadonlyMap<string, number>>>;

/** A change that a clock went through since a person last said what is right. */
type Adrift = { moved: number; slept: number; died: number; movedUnseen: boolean };

/**
 * What is so, kept apart from the engine: it is built from what people did and
 * when, on the true clock, and never asks the engine's own reckoning.
 */
export class Truth {
  readonly steps: Map<string, Step>;
  /** True time at which a fixture (or a kettle, by its clean step) was last dirty, used hot or touched, s. */
  readonly touchedS = new Map<string, number>();
  readonly doubtedS = new Map<string, number>();
  readonly cleanings = new Map<string, number>();
  readonly places = new Map<string, Place>();
  readonly kettles = new Map<string, Boiled>();
  /** True time at which a purge step was truly done, s. */
  readonly purgedS = new Map<string, number>();
  /** True time at which a step that had begun was last settled, s. */
  readonly settledS = new Map<string, number>();
  /** Rests dated back by a true word: when it really was last hot, s. */
  readonly datedS = new Map<string, number>();
  /** A word about clocks that was untrue and has not been taken back. */
  stained = false;
  /** An untrue word was given and taken back. */
  tookBack = false;
  readonly startedWrong: boolean;
  private beforeDoubt: Kept | undefined;
  private adrift: Adrift = { moved: 0, slept: 0, died: 0, movedUnseen: false };
  /** True seconds that passed unseen, or clocks that moved, since the last word. */
  clockTroubles = 0;
  corrections = 0;

  constructor(plan: Plan, offsetS: number) {
    this.steps = new Map(plan.steps.map((step) => [step.id, step]));
    this.startedWrong = Math.abs(offsetS) > 60;
    if (this.startedWrong) this.adrift.movedUnseen = true;
  }

  step(id: string): Step {
    const found = this.steps.get(id);
    if (!found) throw new Error(`no step ${id}`);
    return found;
  }

  /** What is dirtied and rests together: the fixture, or the kettle that a step cleans. */
  static thing(step: Step): string {
    return step.fixture ?? step.id.replace(/^(clean|rest|boil-over)-/, '');
  }

  /**
   * Since when something has truly been left alone (a rest) or off (a
   * cool-down), s; a true word may date a rest back to the last hot use.
   * Undefined: it is no such wait.
   */
  leftAloneSinceS(step: Step): number | undefined {
    if (step.kind === 'cool')
      return Math.max(...step.needs.map((need) => this.settledS.get(need.step) ?? -Infinity));
    if (step.kind !== 'rest') return undefined;
    const thing = Truth.thing(step);
    const touchedS = this.datedS.get(thing) ?? this.touchedS.get(thing) ?? Infinity;
    return Math.max(touchedS, this.doubtedS.get(thing) ?? -Infinity);
  }

  slept(seconds: number): void {
    this.adrift.slept += seconds;
    if (seconds > 60) this.clockTroubles += 1;
  }

  clockMoved(byS: number): void {
    if (Math.abs(byS) < 1) return;
    this.adrift.moved += 1;
    this.clockTroubles += 1;
  }

  died(seconds: number, clockBy: number): void {
    this.adrift.died += seconds;
    if (clockBy !== 0) this.adrift.movedUnseen = true;
    if (clockBy !== 0) this.clockTroubles += 1;
  }

  /** The person has said, truly, what time it is. */
  clockTold(): void {
    this.adrift = { moved: 0, slept: 0, died: 0, movedUnseen: false };
  }

  /** Could anybody who saw all that the tablet saw know what time it really is? */
  get timeCouldBeKnown(): boolean {
    const { moved, slept, died, movedUnseen } = this.adrift;
    if (this.stained || movedUnseen) return false;
    return moved === 0 || (slept < 30 && died === 0);
  }

  /** A clock was moved back where no tablet could see it: its alarms may be too late. */
  get alarmsMayLag(): boolean {
    return this.stained || this.adrift.movedUnseen;
  }

  /** Did time really pass unseen, rather than a clock having been set? */
  get sleptOnly(): boolean {
    const { moved, movedUnseen } = this.adrift;
    return moved === 0 && !movedUnseen;
  }

  /** The heat or the water of a step stops by a fault or in an absence. */
  breaks(step: string, told: boolean): void {
    const place = this.places.get(step);
    if (!place) return;
    place.broken = true;
    place.told ||= told;
  }

  private enter(id: string, stage: number, attempt: number, nowS: number): void {
    this.places.set(id, { stage, sinceS: nowS, attempt, broken: false, told: false });
  }

  /** What a fact says that somebody has just done. */
  follow(body: FactBody, nowS: number): void {
    switch (body.kind) {
      case 'plan-amended':
        for (const step of body.steps) this.steps.set(step.id, step);
        return;
      case 'step-started':
        this.begun(this.step(body.step), body.attempt, nowS);
        return;
      case 'stage-restarted': {
        const step = this.step(body.step);
        const stage = Math.max(
          0,
          step.stages.findIndex(({ id }) => id === body.stage),
        );
        this.enter(body.step, stage, body.attempt, nowS);
        return;
      }
      case 'stage-ended':
        this.stageDone(this.step(body.step), body.stage, body.attempt, nowS);
        return;
      case 'step-settled': {
        const step = this.step(body.step);
        if (this.places.delete(body.step)) this.settledS.set(body.step, nowS);
        if (step.phase === 'purge' && body.outcome === 'done') this.purgedS.set(step.id, nowS);
        if (step.kind === 'clean') this.cleanings.delete(Truth.thing(step));
        return;
      }
      case 'step-repeated':
        this.purgedS.delete(body.step);
        for (const [vessel, { boil }] of this.kettles)
          if (boil === body.step) this.kettles.delete(vessel);
        return;
      case 'recheck-withdrawn':
        this.takenBack(body.fixture);
        return;
      case 'recheck-reported':
        this.beforeDoubt = this.kept();
        this.touchedS.set(body.fixture, nowS);
        this.doubtedS.set(body.fixture, nowS);
        this.datedS.delete(body.fixture);
        this.emptied(body.fixture);
        return;
      default:
        return;
    }
  }

  /** What a word that something was used changes here. */
  private kept(): Kept {
    return {
      touchedS: new Map(this.touchedS),
      doubtedS: new Map(this.doubtedS),
      datedS: new Map(this.datedS),
    };
  }

  /** It was the wrong one: nothing was used, whatever the engine made of it. */
  private takenBack(fixture: string): void {
    const before = this.beforeDoubt;
    if (!before) return;
    for (const name of ['touchedS', 'doubtedS', 'datedS'] as const) {
      const was = before[name].get(fixture);
      if (was === undefined) this[name].delete(fixture);
      else this[name].set(fixture, was);
    }
  }

  /**
   * What boiled in a kettle that is doubted serves no pour any more: a person
   * pours it away and boils anew. To fill that kettle again is no slip; to pour
   * from it as it stands would be one.
   */
  private emptied(doubted: string): void {
    for (const [vessel, { boil }] of this.kettles) {
      const { work } = this.step(boil);
      if (work.on === 'kettle' && (work.vessel.id === doubted || work.vessel.unit === doubted))
        this.kettles.delete(vessel);
    }
  }

  private begun(step: Step, attempt: number, nowS: number): void {
    this.enter(step.id, 0, attempt, nowS);
    if (step.kind === 'clean') this.cleanings.set(Truth.thing(step), nowS);
  }

  private stageDone(step: Step, stageId: string, attempt: number, nowS: number): void {
    const number = step.stages.findIndex(({ id }) => id === stageId);
    this.enter(step.id, number + 1, attempt, nowS);
    const last = number === step.stages.length - 1;
    if (step.kind === 'clean' && last) {
      this.touchedS.set(Truth.thing(step), nowS);
      this.datedS.delete(Truth.thing(step));
    }
    const vessel = vesselOf(step);
    if (step.kind === 'boil' && last && vessel !== null)
      this.kettles.set(vessel, { boiledS: nowS, boil: step.id });
    if (step.kind === 'pour' && number === 0 && vessel !== null) this.kettles.delete(vessel);
  }
}

/** The kettle a step uses, by its resource. */
export function vesselOf(step: Step): string | null {
  return (
    Object.keys(step.demands).find((id) => id === 'kettle' || id.startsWith('vessel-')) ?? null
  );
}
