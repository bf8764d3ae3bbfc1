/**
 * The version before, loaded from its own folder. It is in the layout that is
 * pinned in `layout.ts`, or this file is written for the version that is.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Build, Played } from './build.ts';
import { disturbance } from './disturbance.ts';
import type { AmendmentOne, FactOne, PlanOne, RequestOne, RunTimerOne, SeenOne } from './layout.ts';
import { formatTime } from './scenes.ts';

type Kitchen = { readonly household: object; readonly place?: { readonly zone: string } };
type StateOne = {
  readonly plan: PlanOne;
  readonly timers: Readonly<
    Record<string, Omit<RunTimerOne, 'role' | 'purpose'> & { readonly spec: RunTimerOne }>
  >;
};

/** What is used of it, as it was. */
type Modules = {
  readonly parseKitchen: (text: string) => { kitchen: Kitchen } | { problems: unknown };
  readonly parseMoment: (name: string, text: string, zone?: string) => number;
  readonly buildPlan: (kitchen: Kitchen, options: { startWallMs?: number }) => PlanOne;
  readonly describePlan: (plan: PlanOne) => string;
  readonly ranOut: (
    plan: PlanOne,
    step: string,
    share: number,
    hasBegun: (id: string) => boolean,
  ) => AmendmentOne | undefined;
  readonly simulateRun: (
    plan: PlanOne,
    options: { script?: (seen: SeenOne) => readonly RequestOne[] },
  ) => { readonly facts: readonly FactOne[]; readonly state: StateOne };
  readonly apply: (state: StateOne | null, fact: FactOne) => StateOne;
  readonly recordOf: (facts: readonly FactOne[]) => unknown;
  readonly recordText: (record: unknown, formatTime: (wallMs: number) => string) => string;
};

async function modulesOf(root: string): Promise<Modules> {
  const folders = ['kitchen', 'calendar', 'plan', 'run', 'record'];
  const loaded: readonly object[] = await Promise.all(
    folders.map(
      (name) =>
        import(pathToFileURL(join(root, 'src/core', name, 'index.ts')).href) as Promise<object>,
    ),
  );
  return Object.assign({}, ...loaded) as Modules;
}

function played(modules: Modules, plan: PlanOne, disturbed: boolean): Played {
  const script = disturbance((step, hasBegun) => modules.ranOut(plan, step, 0.5, hasBegun));
  const { facts, state } = modules.simulateRun(plan, disturbed ? { script } : {});
  const timers = new Map<string, RunTimerOne>();
  let after: StateOne | null = null;
  for (const fact of facts) {
    after = modules.apply(after, fact);
    for (const { id, step, stage, spec } of Object.values(after.timers))
      timers.set(id, { id, step, stage, role: spec.role, purpose: spec.purpose });
  }
  const record = modules.recordText(modules.recordOf(facts), formatTime);
  return { facts, plan: state.plan, timers: [...timers.values()], record };
}

/** @param root folder of the version before, with its packages */
export async function buildBefore(root: string): Promise<Build> {
  const modules = await modulesOf(root);
  return {
    plan(kitchenText, { name, custom, start }) {
      const parsed = modules.parseKitchen(kitchenText);
      if ('problems' in parsed) throw new Error(`${name}: ${JSON.stringify(parsed.problems)}`);
      const kitchen = {
        ...parsed.kitchen,
        household: { ...parsed.kitchen.household, custom },
      };
      const plan = modules.buildPlan(kitchen, {
        ...(start !== undefined && {
          startWallMs: modules.parseMoment('start', start, kitchen.place?.zone),
        }),
      });
      return {
        plan,
        text: modules.describePlan(plan),
        run: (disturbed) => played(modules, plan, disturbed),
      };
    },
  };
}
