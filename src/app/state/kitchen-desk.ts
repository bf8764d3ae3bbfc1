import { createMemo, createSignal } from 'solid-js';
import {
  formatKitchen,
  parseKitchen,
  type Kitchen,
  type KitchenProblem,
} from '../../core/kitchen/index.ts';
import { buildPlan, type Plan } from '../../core/plan/index.ts';
import type { KitchenStore } from '../../host/kitchens/index.ts';
import { demoText } from '../kitchen/demos.ts';

/** The kitchen on the desk is kept under one name until a household has several. */
const DESK_ID = 'desk';

/** The kitchen being described, and the plan that follows from it. */
export function createKitchenDesk(store: KitchenStore, nowMs: () => number) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  const [problems, setProblems] = createSignal<readonly KitchenProblem[]>([]);
  const plan = createMemo<Plan | undefined>(() => {
    const k = kitchen();
    return k && buildPlan(k);
  });

  const put = (next: Kitchen) => {
    setProblems([]);
    setKitchen(next);
    void store
      .save({ id: DESK_ID, name: next.name, savedWallMs: nowMs(), text: formatKitchen(next) })
      .catch(() => undefined);
  };
  /** Bad input changes nothing but the list of problems. */
  const openText = (text: string): boolean => {
    const outcome = parseKitchen(text);
    if ('problems' in outcome) {
      setProblems(outcome.problems);
      return false;
    }
    put(outcome.kitchen);
    return true;
  };
  return {
    kitchen,
    problems,
    plan,
    put,
    openText,
    async openDemo(id: string): Promise<boolean> {
      const text = await demoText(id);
      return text !== undefined && openText(text);
    },
    async openLast(): Promise<void> {
      const saved = await store.read(DESK_ID).catch(() => undefined);
      if (saved && !kitchen()) openText(saved.text);
    },
    fileText: () => {
      const k = kitchen();
      return k ? formatKitchen(k) : '';
    },
  };
}

export type KitchenDesk = ReturnType<typeof createKitchenDesk>;
