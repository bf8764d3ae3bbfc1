import type { Plan, Step, Work } from '../model/index.ts';

export type KettleWork = Extract<Work, { readonly on: 'kettle' }>;

/** Boil and pour of one kettle. */
export type Pair = { readonly boil: Step; readonly pour: Step };

/** What a fixture is boiled and poured with, by the number of the kettle. */
type Kettles = ReadonlyMap<number, Pair>;

export function kettleOf({ work }: Step): KettleWork | undefined {
  return work.on === 'kettle' ? work : undefined;
}

export function kettlesOf(plan: Plan, fixture: string): Kettles {
  const of = (kind: Step['kind']): ReadonlyMap<number | undefined, Step> =>
    new Map(
      plan.steps
        .filter((step) => step.kind === kind && step.fixture === fixture)
        .map((step) => [kettleOf(step)?.kettle, step]),
    );
  const boils = of('boil');
  return new Map(
    [...of('pour')].flatMap(([kettle, pour]) => {
      const boil = boils.get(kettle);
      return kettle !== undefined && boil ? [[kettle, { boil, pour }] as const] : [];
    }),
  );
}

/** The kettles after this one that are planned, without a gap in their numbers. */
export function laterThan(kettles: Kettles, kettle: number): readonly Pair[] {
  const later: Pair[] = [];
  for (let next = kettles.get(kettle + 1); next; next = kettles.get(kettle + 1 + later.length))
    later.push(next);
  return later;
}
