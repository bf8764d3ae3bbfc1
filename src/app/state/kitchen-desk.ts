import { createSignal } from 'solid-js';
import type { Kitchen, KitchenProblem } from '../../core/kitchen/index.ts';
import type { HeatPicture, Plan, PourPicture } from '../../core/plan/index.ts';
import type { KitchenStore } from '../../host/kitchens/index.ts';
import { demoText } from '../kitchen/demos.ts';

/** The kitchen on the desk is kept under one name until a household has several. */
const DESK_ID = 'desk';

/** Worked out beside the plan, never stored with it. */
export type PlanPictures = {
  readonly heat: readonly HeatPicture[];
  readonly pours: readonly PourPicture[];
};

function beyondModels(error: unknown): KitchenProblem {
  const message = error instanceof Error ? error.message : String(error);
  const advice = 'Check the sizes and powers of this kitchen.';
  return { path: '', found: '', allowed: '', advice, message: `No plan can be made: ${message}` };
}

/** The kitchen being described, and the plan that follows from it. */
export function createKitchenDesk(store: KitchenStore, nowMs: () => number) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  const [plan, setPlan] = createSignal<Plan>();
  const [pictures, setPictures] = createSignal<PlanPictures>({ heat: [], pours: [] });
  const [problems, setProblems] = createSignal<readonly KitchenProblem[]>([]);
  const planner = import('./planner.ts');

  /** False when no plan can be made of it; then nothing changes but the list of problems. */
  const put = async (next: Kitchen): Promise<boolean> => {
    const { buildPlan, formatKitchen, heatPictures, pourPictures } = await planner;
    let planned: Plan;
    try {
      planned = buildPlan(next);
    } catch (error) {
      // A kitchen that reads well may still be beyond what the models answer for (a 100 m² counter).
      setProblems([beyondModels(error)]);
      return false;
    }
    setProblems([]);
    setKitchen(next);
    setPlan(planned);
    setPictures({ heat: heatPictures(planned), pours: pourPictures(planned) });
    await store
      .save({ id: DESK_ID, name: next.name, savedWallMs: nowMs(), text: formatKitchen(next) })
      .catch(() => undefined);
    return true;
  };
  /** Bad input changes nothing but the list of problems. */
  const openText = async (text: string): Promise<boolean> => {
    const { parseKitchen } = await planner;
    const outcome = parseKitchen(text);
    if ('problems' in outcome) {
      setProblems(outcome.problems);
      return false;
    }
    return put(outcome.kitchen);
  };
  return {
    kitchen,
    plan,
    pictures,
    problems,
    put,
    openText,
    async openDemo(id: string): Promise<boolean> {
      const text = await demoText(id);
      return text !== undefined && openText(text);
    },
    async openLast(): Promise<void> {
      const saved = await store.read(DESK_ID).catch(() => undefined);
      if (saved && !kitchen()) await openText(saved.text);
    },
    async fileText(): Promise<string> {
      const { formatKitchen } = await planner;
      const k = kitchen();
      return k ? formatKitchen(k) : '';
    },
  };
}

export type KitchenDesk = ReturnType<typeof createKitchenDesk>;
