import { asWritten, message, type Message } from '../messages/index.ts';
import { ORDINARY_HAND, PRIORS, type Prior } from '../physics/index.ts';
import type { Plan, Stage, Step } from '../plan/index.ts';
import { apply, type Fact, type Readings, type RunState } from '../run/index.ts';

/** What is calibrated. */
export type MeasuredQuantity = 'boil' | 'glow' | 'heat-up' | 'cool' | 'pour' | 'reach';

/** One report of one run about one piece of hardware, against the estimate of physics and not against the plan. */
export type Measurement = {
  readonly what: MeasuredQuantity;
  /** Vessel, burner or oven; `hand` for the person's pour and reach. */
  readonly key: string;
  /** What the household calls it; of the hand nothing. */
  readonly name: Message;
  readonly prior: Prior;
  /** Measured over estimated; pour: L/min. */
  readonly value: number;
  /** Seconds that were planned; pour and reach: none. */
  readonly plannedS?: number;
  /** The same before any earlier calibration was used on it. */
  readonly estimatedS?: number;
};

type Measured = {
  readonly step: Step;
  readonly stage: Stage;
  readonly plannedS: number;
  readonly tookS: number;
  /** The step came into the plan or was changed while it ran. */
  readonly amended: boolean;
};

/** Seconds between two readings of one page; a gap between pages proves nothing about a boil. */
function secondsBetween(from: Readings, to: Readings): number | undefined {
  return from.session === to.session ? (to.monoMs - from.monoMs) / 1000 : undefined;
}

function planOf(facts: readonly Fact[]): Plan | undefined {
  const first = facts[0]?.body;
  return first?.kind === 'drafted' ? first.plan : undefined;
}

/** Every stage that had an estimate and was ended by a person's word, with how long it took. */
function measured(plan: Plan, facts: readonly Fact[]): readonly Measured[] {
  const planned = new Map(plan.steps.map((step) => [step.id, step]));
  const steps = new Map(planned);
  const begun = new Map<string, Readings>();
  const found: Measured[] = [];
  for (const { at, body } of facts) {
    if (body.kind === 'plan-amended') for (const step of body.steps) steps.set(step.id, step);
    if (body.kind === 'step-started' || body.kind === 'stage-restarted') begun.set(body.step, at);
    if (body.kind !== 'stage-ended') continue;
    const step = steps.get(body.step);
    const stage = step?.stages.find(({ id }) => id === body.stage);
    const from = begun.get(body.step);
    begun.set(body.step, at);
    const plannedS = stage?.timers.find(({ role }) => role === 'estimate')?.lengthS;
    if (!step || !stage || !from || plannedS === undefined || body.by !== 'person') continue;
    const tookS = secondsBetween(from, at);
    const amended = planned.get(step.id) !== step;
    if (tookS !== undefined && tookS > 0) found.push({ step, stage, plannedS, tookS, amended });
  }
  return found;
}

const HAND = { key: 'hand', name: asWritten('') } as const;

function burnerName({ kitchen }: Plan, id: string): Message {
  const burners = kitchen.fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []));
  const burner = burners.find((one) => one.id === id)?.name ?? id;
  return message('report.calibration.burner', { burner });
}

function fixtureName({ kitchen }: Plan, id: string): Message {
  return asWritten(kitchen.fixtures.find((one) => one.id === id)?.name ?? id);
}

function vesselName({ kitchen }: Plan, id: string): Message {
  return asWritten(kitchen.vessels.find((one) => one.id === id)?.name ?? id);
}

/** What a stage timed by a person teaches about; nothing for a pour, which has its own measure. */
function kindOf(
  plan: Plan,
  { kind, work, fixture }: Step,
): (Omit<Measurement, 'value'> & { readonly used: number }) | undefined {
  const { boil, glow, heatUp } = plan.calibration ?? {};
  if ((kind === 'boil' || kind === 'boil-over') && (work.on === 'kettle' || work.on === 'vessel')) {
    const key = work.vessel.id;
    const name = vesselName(plan, key);
    return { what: 'boil', key, name, prior: PRIORS.boilTimeFactor, used: boil?.[key]?.mean ?? 1 };
  }
  if (kind === 'glow' && work.on === 'burner') {
    const key = work.burner;
    const name = burnerName(plan, key);
    return { what: 'glow', key, name, prior: PRIORS.glowTimeFactor, used: glow?.[key]?.mean ?? 1 };
  }
  const isOven = plan.kitchen.fixtures.some((one) => one.id === fixture && one.kind === 'oven');
  if (kind === 'high-heat' && fixture !== undefined && isOven) {
    const used = heatUp?.[fixture]?.mean ?? 1;
    const name = fixtureName(plan, fixture);
    // An oven's heat-up scatters as a burner's does.
    return { what: 'heat-up', key: fixture, name, prior: PRIORS.glowTimeFactor, used };
  }
  return undefined;
}

type LanesPicture = Extract<NonNullable<Step['picture']>, { kind: 'lanes' }>;

function lanesOf(step: Step | undefined): LanesPicture | undefined {
  return step?.kind === 'pour' && step.picture?.kind === 'lanes' ? step.picture : undefined;
}

/** Litres and metres of the kettle that a picture shows. */
function ownOf({ stretches, kettle }: LanesPicture): { litres: number; lengthM: number } {
  const own = stretches.filter((one) => one.kettle === kettle);
  return {
    litres: own.reduce((sum, { litres }) => sum + litres, 0),
    lengthM: own.reduce((sum, { lengthM }) => sum + lengthM, 0),
  };
}

/** L/min of a pour, by what was in the kettle where that is known, else by what was planned. */
function flowOf(plan: Plan, { step, plannedS, tookS, amended }: Measured): number | undefined {
  const lanes = lanesOf(step);
  if (lanes) {
    const onSurfaceL = ownOf(lanes).litres * (1 - ORDINARY_HAND.lossShare);
    return onSurfaceL > 0 ? (60 * onSurfaceL) / tookS : undefined;
  }
  const plannedLMin = plan.calibration?.flowLMin?.mean ?? ORDINARY_HAND.flowLMin.typical;
  return amended ? undefined : (plannedLMin * plannedS) / tookS;
}

function timed(plan: Plan, facts: readonly Fact[]): readonly Measurement[] {
  return measured(plan, facts).flatMap((one): Measurement[] => {
    if (one.step.kind === 'pour') {
      const value = flowOf(plan, one);
      return value === undefined
        ? []
        : [{ what: 'pour', ...HAND, prior: PRIORS.pourFlowLMin, value }];
    }
    const kind = kindOf(plan, one.step);
    if (!kind) return [];
    const { used, ...rest } = kind;
    const estimatedS = one.plannedS / used;
    return [{ ...rest, value: one.tookS / estimatedS, plannedS: one.plannedS, estimatedS }];
  });
}

/**
 * How far a kettle reached over how far it was estimated to, on the fixtures
 * where one ran out early: a kettle poured to its end there counts as having
 * reached just so far. Where none ran out nothing is known but that it was enough.
 */
function reached(plan: Plan, facts: readonly Fact[]): readonly Measurement[] {
  const used = plan.calibration?.reach?.mean ?? 1;
  const steps = new Map(plan.steps.map((step) => [step.id, step]));
  /** Metres a litre covers, by fixture: as estimated, and as the last kettle that ran out showed. */
  const estimated = new Map<string, number>();
  const shown = new Map<string, number>();
  const perL = (lanes: LanesPicture): number => {
    const { litres, lengthM } = ownOf(lanes);
    return litres > 0 ? lengthM / litres : 0;
  };
  for (const step of plan.steps) {
    const lanes = lanesOf(step);
    if (lanes && step.fixture !== undefined && !estimated.has(step.fixture))
      estimated.set(step.fixture, perL(lanes) / used);
  }
  const values: { readonly fixture: string; readonly value: number }[] = [];
  for (const { body } of facts) {
    if (body.kind === 'plan-amended')
      for (const step of body.steps) {
        steps.set(step.id, step);
        const lanes = lanesOf(step);
        if (lanes && step.fixture !== undefined) shown.set(step.fixture, perL(lanes));
      }
    if (body.kind !== 'stage-ended' || body.by !== 'person') continue;
    const step = steps.get(body.step);
    const lanes = lanesOf(step);
    const first = step?.stages[0]?.id === body.stage;
    const fixture = step?.fixture ?? '';
    const asEstimated = estimated.get(fixture);
    if (!lanes || !first || !asEstimated) continue;
    values.push({ fixture, value: (shown.get(fixture) ?? perL(lanes)) / asEstimated });
  }
  return values
    .filter(({ fixture }) => shown.has(fixture))
    .map(({ value }) => ({
      what: 'reach',
      ...HAND,
      prior: PRIORS.pourAreaFactor,
      value,
    }));
}

type Lengthened = { readonly step: string; readonly byS: number };

/** What a person added, timer by timer. Which step a timer belongs to, the state of the run knows. */
function lengthened(facts: readonly Fact[]): readonly Lengthened[] {
  const byTimer = new Map<string, Lengthened>();
  if (!facts.some(({ body }) => body.kind === 'timer-extended')) return [];
  let state: RunState | null = null;
  for (const fact of facts) {
    const { body } = fact;
    if (body.kind === 'timer-extended') {
      const step = state?.timers[body.timer]?.step ?? '';
      byTimer.set(body.timer, { step, byS: (byTimer.get(body.timer)?.byS ?? 0) + body.byS });
    }
    state = apply(state, fact);
  }
  return [...byTimer.values()];
}

/** Cool-downs that a person lengthened because it was still hot. */
function cooled(plan: Plan, facts: readonly Fact[]): readonly Measurement[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]));
  return lengthened(facts).flatMap(({ step: id, byS }): Measurement[] => {
    const step = steps.get(id);
    const plannedS = step?.stages[0]?.timers.find(({ role }) => role === 'hold')?.lengthS;
    if (step?.kind !== 'cool' || !plannedS) return [];
    const burner = step.work.on === 'burner' ? step.work.burner : undefined;
    const key = burner ?? step.fixture ?? '';
    const name = burner === undefined ? fixtureName(plan, key) : burnerName(plan, burner);
    const estimatedS = plannedS / (plan.calibration?.cool?.[key]?.mean ?? 1);
    const value = (plannedS + byS) / estimatedS;
    return [{ what: 'cool', key, name, prior: PRIORS.glowTimeFactor, value, plannedS, estimatedS }];
  });
}

/** Everything that one run's facts report about hardware and hand, in the order it was said. */
export function measurementsOf(facts: readonly Fact[]): readonly Measurement[] {
  const plan = planOf(facts);
  if (!plan) return [];
  return [...timed(plan, facts), ...reached(plan, facts), ...cooled(plan, facts)];
}
