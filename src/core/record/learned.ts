import {
  learn,
  ORDINARY_HAND,
  PRIORS,
  startEstimate,
  type Estimate,
  type Prior,
} from '../physics/index.ts';
import type { Plan, Stage, Step } from '../plan/index.ts';
import type { Fact, Readings } from '../run/index.ts';

/** What a run taught about one piece of hardware, or about the person's hand. */
export type Learned = {
  readonly id: string;
  readonly what: 'boil' | 'glow' | 'pour';
  /** Kettle or burner; empty for the hand. */
  readonly name: string;
  /** Boil and glow: measured over planned time. Pour: litres a minute. */
  readonly estimate: Estimate;
  /** Seconds that were planned; pour: none. */
  readonly plannedS?: number;
};

type Measured = {
  readonly step: Step;
  readonly stage: Stage;
  readonly plannedS: number;
  readonly tookS: number;
};

/** Seconds between two readings of one page; a gap between pages proves nothing about a boil. */
function secondsBetween(from: Readings, to: Readings): number | undefined {
  return from.session === to.session ? (to.monoMs - from.monoMs) / 1000 : undefined;
}

/** Every stage that had an estimate and was ended by a person's word, with how long it took. */
function measured(plan: Plan, facts: readonly Fact[]): readonly Measured[] {
  const amended = facts.flatMap(({ body }) => (body.kind === 'plan-amended' ? body.steps : []));
  const steps = new Map([...plan.steps, ...amended].map((step) => [step.id, step]));
  const begun = new Map<string, Readings>();
  const found: Measured[] = [];
  for (const { at, body } of facts) {
    if (body.kind === 'step-started' || body.kind === 'stage-restarted') begun.set(body.step, at);
    if (body.kind !== 'stage-ended') continue;
    const step = steps.get(body.step);
    const stage = step?.stages.find(({ id }) => id === body.stage);
    const from = begun.get(body.step);
    begun.set(body.step, at);
    const plannedS = stage?.timers.find(({ role }) => role === 'estimate')?.lengthS;
    if (!step || !stage || !from || plannedS === undefined || body.by !== 'person') continue;
    const tookS = secondsBetween(from, at);
    if (tookS !== undefined && tookS > 0) found.push({ step, stage, plannedS, tookS });
  }
  return found;
}

type Kind = {
  readonly what: Learned['what'];
  readonly key: string;
  readonly name: string;
  readonly prior: Prior;
};

/** What a measured stage teaches about, or nothing. */
function kindOf(plan: Plan, { step }: Measured): Kind | undefined {
  const { picture, kind } = step;
  if (kind === 'boil' && picture?.kind === 'kettle') {
    const name = plan.kitchen.vessels.find(({ id }) => id === picture.vessel)?.name;
    const key = picture.vessel;
    return { what: 'boil', key, name: name ?? picture.vessel, prior: PRIORS.boilTimeFactor };
  }
  if (kind === 'glow' && picture?.kind === 'burner') {
    const burners = plan.kitchen.fixtures.flatMap((f) => (f.kind === 'cooktop' ? f.burners : []));
    const name = burners.find(({ id }) => id === picture.burner)?.name ?? picture.burner;
    return { what: 'glow', key: picture.burner, name, prior: PRIORS.glowTimeFactor };
  }
  if (kind === 'pour') return { what: 'pour', key: 'hand', name: '', prior: PRIORS.pourFlowLMin };
  return undefined;
}

/**
 * What the reports of a run teach: the time a kettle takes to boil and a burner
 * to glow against what was planned, and the flow of the person's pour. Far-off
 * reports (a word given late) are set apart, never swallowed. Pure; the same
 * facts teach the same.
 * @param leaveOut numbers of reports of an id to undo, from 0
 */
export function learnedFrom(
  facts: readonly Fact[],
  leaveOut: Readonly<Record<string, readonly number[]>> = {},
): readonly Learned[] {
  const first = facts[0]?.body;
  if (first?.kind !== 'drafted') return [];
  const { plan } = first;
  const groups = new Map<string, { kind: Kind; values: number[]; plannedS: number }>();
  for (const one of measured(plan, facts)) {
    const kind = kindOf(plan, one);
    if (!kind) continue;
    const value =
      kind.what === 'pour'
        ? (ORDINARY_HAND.flowLMin.typical * one.plannedS) / one.tookS
        : one.tookS / one.plannedS;
    const id = `${kind.what}-${kind.key}`;
    const group = groups.get(id) ?? { kind, values: [], plannedS: one.plannedS };
    group.values.push(value);
    groups.set(id, group);
  }
  return [...groups].map(([id, { kind, values, plannedS }]) => ({
    id,
    what: kind.what,
    name: kind.name,
    estimate: values
      .filter((_value, i) => !(leaveOut[id] ?? []).includes(i))
      .reduce(learn, startEstimate(kind.prior)),
    ...(kind.what === 'pour' ? {} : { plannedS }),
  }));
}
