import { createSignal } from 'solid-js';
import type { Kitchen, KitchenProblem } from '../../core/kitchen/index.ts';
import type { HeatPicture, Plan } from '../../core/plan/index.ts';
import type { KitchenStore } from '../../host/kitchens/index.ts';
import { demoText } from '../kitchen/demos.ts';

/** The kitchen on the desk is kept under one name until a household has several. */
const DESK_ID = 'desk';

/** The kitchen being described, and the plan that follows from it. */
export function createKitchenDesk(store: KitchenStore, nowMs: () => number) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  const [plan, setPlan] = createSignal<Plan>();
  const [pictures, setPictures] = createSignal<readonly HeatPicture[]>([]);
  const [problems, setProblems] = createSignal<readonly KitchenProblem[]>([]);
  const planner = import('./planner.ts');

  const put = async (next: Kitchen): Promise<void> => {
    const { buildPlan, formatKitchen, heatPictures } = await planner;
    const planned = buildPlan(next);
    setProblems([]);
    setKitchen(next);
    setPlan(planned);
    setPictures(heatPictures(planned));
    await store
      .save({ id: DESK_ID, name: next.name, savedWallMs: nowMs(), text: formatKitchen(next) })
      .catch(() => undefined);
  };
  /** Bad input changes nothing but the list of problems. */
  const openText = async (text: string): Promise<boolean> => {
    const { parseKitchen } = await planner;
    const outcome = parseKitchen(text);
    if ('problems' in outcome) {
      setProblems(outcome.problems);
      return false;
    }
    void put(outcome.kitchen);
    return true;
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
