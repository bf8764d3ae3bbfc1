import { batch, createSignal } from 'solid-js';
import type { ChosenQuestion } from '../../../core/custom/index.ts';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type {
  AnswerChange,
  HeatChart,
  Plan,
  PlanOptions,
  PourChart,
} from '../../../core/plan/index.ts';
import { latestOf } from '../planner/latest.ts';
import type { Ask } from '../planner/planner.ts';

/** Worked out beside the plan, never stored with it. */
export type PlanPictures = {
  readonly heat: readonly HeatChart[];
  readonly pours: readonly PourChart[];
  /** What each assumption does to the litres; takes as long as several plans, so it waits until it is looked at. */
  readonly pourMoves: () => Promise<readonly Message[]>;
  /** What each known answer to a question would make of the plan; as long as several plans, too. */
  readonly changes: (question: ChosenQuestion) => Promise<readonly AnswerChange[]>;
  /** What it was made with besides the kitchen. */
  readonly options: PlanOptions;
};

/** The plan follows an edit after this rest, ms: a drag makes one plan, not thirty. */
const PLAN_REST_MS = 400;

function beyondModels(error: unknown): Message {
  return message('shell.plan.beyond-models', {
    why: error instanceof Error ? error.message : String(error),
  });
}

const NO_PICTURES: PlanPictures = {
  heat: [],
  pours: [],
  pourMoves: async () => [],
  changes: async () => [],
  options: {},
};

/**
 * The plan of the open kitchen, made anew when an edit has come to rest. It is worked out while
 * the page goes on; what is edited meanwhile ends that, and its own turn plans it.
 */
export function createPlanOf(
  kitchen: () => Kitchen | undefined,
  ask: Ask,
  optionsOf: (kitchen: Kitchen) => Promise<PlanOptions>,
) {
  const [plan, setPlan] = createSignal<Plan>();
  const [pictures, setPictures] = createSignal<PlanPictures>(NO_PICTURES);
  const [trouble, setTrouble] = createSignal<Message>();
  const [isPlanning, setPlanning] = createSignal(false);
  const askPlan = latestOf(ask);
  let planned: { readonly kitchen: Kitchen | undefined } | undefined;
  let working: Promise<boolean> = Promise.resolve(false);
  let timer: ReturnType<typeof setTimeout> | undefined;

  const show = (next: Plan | undefined, drawn: PlanPictures, why: Message | undefined): boolean => {
    // One plan with its pictures: drawn once.
    batch(() => {
      setPictures(drawn);
      setPlan(next);
      setTrouble(why);
      setPlanning(false);
    });
    return next !== undefined;
  };
  const work = async (mine: NonNullable<typeof planned>): Promise<boolean> => {
    const now = mine.kitchen;
    if (!now || now.fixtures.length === 0) return show(undefined, NO_PICTURES, undefined);
    setPlanning(true);
    try {
      const options = await optionsOf(now);
      if (now !== kitchen()) return await settle();
      const { plan: next, heat, pours } = await askPlan('plan', { kitchen: now, options });
      const drawn: PlanPictures = {
        heat,
        pours,
        pourMoves: () => ask('pour-moves', next),
        changes: (question) => ask('answer-changes', { kitchen: next.kitchen, question, options }),
        options,
      };
      if (now !== kitchen()) return await settle();
      return planned === mine ? show(next, drawn, undefined) : await working;
    } catch (error) {
      if (planned !== mine) return working;
      // A kitchen that reads well may still be beyond what the models answer for (a 100 m² counter).
      return show(undefined, NO_PICTURES, beyondModels(error));
    }
  };
  const settle = (): Promise<boolean> => {
    clearTimeout(timer);
    if (planned?.kitchen === kitchen() && planned) return working;
    planned = { kitchen: kitchen() };
    working = work(planned);
    return working;
  };
  const later = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void settle(), PLAN_REST_MS);
  };
  /** The kitchen is the same, what it is planned with is not. */
  const anew = (): Promise<boolean> => {
    planned = undefined;
    return settle();
  };
  return { plan, pictures, trouble, isPlanning, settle, later, anew };
}
