import { createSignal } from 'solid-js';
import type { ChosenQuestion } from '../../../core/custom/index.ts';
import type { Kitchen, KitchenProblem } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type {
  AnswerChange,
  HeatChart,
  Plan,
  PlanOptions,
  PourChart,
} from '../../../core/plan/index.ts';
import type { KitchenStore, SettingsStore } from '../../../host/kitchens/index.ts';
import { reasonOf } from '../failures/reason.ts';
import { createKitchenLibrary } from './kitchen-library.ts';
import { latestWriter, type WriteState } from './latest-writer.ts';

/** Worked out beside the plan, never stored with it. */
export type PlanPictures = {
  readonly heat: readonly HeatChart[];
  readonly pours: readonly PourChart[];
  /** What each assumption does to the litres; takes as long as several plans, so it waits until it is looked at. */
  readonly pourMoves: () => readonly Message[];
  /** What each known answer to a question would make of the plan; as long as several plans, too. */
  readonly changes: (question: ChosenQuestion) => readonly AnswerChange[];
  /** What it was made with besides the kitchen. */
  readonly options: PlanOptions;
};

const NO_PICTURES: PlanPictures = {
  heat: [],
  pours: [],
  pourMoves: () => [],
  changes: () => [],
  options: {},
};

/**
 * Which kitchen is open: one kept on this tablet under its id, a demo as
 * it came, or one only just begun. The last two become kept kitchens with the
 * first change to them.
 */
export type OpenKitchen =
  | { readonly kind: 'kept'; readonly id: string }
  | { readonly kind: 'demo'; readonly id: string }
  | { readonly kind: 'begun' };

export type KitchenControllerPorts = {
  readonly store: KitchenStore;
  readonly settings: SettingsStore;
  readonly nowMs: () => number;
  readonly newId: () => string;
  /** Says to the person what could not be kept or read. */
  readonly tell: (message: Message) => void;
  /** What a plan is made with besides the kitchen; absent: nothing. */
  readonly optionsOf?: (kitchen: Kitchen) => Promise<PlanOptions>;
};

/** Name of the setting that says which kitchen was open last: "kept:…" or "demo:…". */
const LAST_OPEN = 'kitchen-on-desk';
/** The plan follows an edit after this rest, ms: a drag makes one plan, not thirty. */
const PLAN_REST_MS = 400;

function beyondModels(error: unknown): Message {
  return message('shell.plan.beyond-models', {
    why: error instanceof Error ? error.message : String(error),
  });
}

/** Which kitchen was open last; one only begun is not remembered. */
function readLastOpen(stored: unknown): Exclude<OpenKitchen, { kind: 'begun' }> | undefined {
  const [, kind, id] = /^(kept|demo):(.+)$/.exec(typeof stored === 'string' ? stored : '') ?? [];
  return (kind === 'kept' || kind === 'demo') && id ? { kind, id } : undefined;
}

const planner = () => import('./planner.ts');

/** The plan of the open kitchen, made anew when an edit has come to rest. */
function createPlanOf(
  kitchen: () => Kitchen | undefined,
  optionsOf: (kitchen: Kitchen) => Promise<PlanOptions>,
) {
  const [plan, setPlan] = createSignal<Plan>();
  const [pictures, setPictures] = createSignal<PlanPictures>(NO_PICTURES);
  const [trouble, setTrouble] = createSignal<Message>();
  let planned: Kitchen | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const settle = async (): Promise<boolean> => {
    clearTimeout(timer);
    const { buildPlan, heatCharts, moveMessage, pourCharts, pourMoves, whatItChanges } =
      await planner();
    const now = kitchen();
    if (now === planned) return plan() !== undefined;
    const options = now && (await optionsOf(now));
    // Another edit came meanwhile: its own turn plans it.
    if (now !== kitchen()) return settle();
    planned = now;
    try {
      const next = now && now.fixtures.length > 0 ? buildPlan(now, options) : undefined;
      setPictures(
        next
          ? {
              heat: heatCharts(next),
              pours: pourCharts(next),
              pourMoves: () => pourMoves(next).map(moveMessage),
              changes: (question) => whatItChanges(next.kitchen, question, options),
              options: options ?? {},
            }
          : NO_PICTURES,
      );
      setPlan(next);
      setTrouble(undefined);
      return next !== undefined;
    } catch (error) {
      // A kitchen that reads well may still be beyond what the models answer for (a 100 m² counter).
      setPlan(undefined);
      setTrouble(beyondModels(error));
      return false;
    }
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
  return { plan, pictures, trouble, settle, later, anew };
}

/** The kitchen being described, its place among the others, and the plan that follows from it. */
export function createKitchenController(ports: KitchenControllerPorts) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  const [opened, setOpened] = createSignal<OpenKitchen>();
  const [problems, setProblems] = createSignal<readonly KitchenProblem[]>([]);
  const [writing, setWriting] = createSignal<WriteState>('idle');
  const library = createKitchenLibrary(ports.store, ports.nowMs);
  const planOf = createPlanOf(kitchen, ports.optionsOf ?? (async () => ({})));
  const writer = latestWriter<{ id: string; kitchen: Kitchen }>(
    (value) => library.save(value.id, value.kitchen),
    setWriting,
    (error) => ports.tell(reasonOf(error)),
  );

  const show = (next: Kitchen | undefined, where: OpenKitchen | undefined): void => {
    setProblems([]);
    setOpened(where);
    setKitchen(next);
    if (!where || where.kind === 'begun') return;
    ports.settings
      .write(LAST_OPEN, `${where.kind}:${where.id}`)
      .catch((error: unknown) =>
        ports.tell(message('shell.choice-not-kept', { why: reasonOf(error) })),
      );
  };
  /** A new row among the kitchens, opened. */
  const keep = (next: Kitchen): Kitchen => {
    const id = ports.newId();
    show(next, { kind: 'kept', id });
    writer.put({ id, kitchen: next });
    return next;
  };
  /** One edit: shown at once, on disk right after, in the plan when the hand rests. Returns what is open now. */
  const edit = (next: Kitchen): Kitchen => {
    planOf.later();
    const where = opened();
    if (where?.kind !== 'kept') return keep({ ...next, name: library.freeName(next.name) });
    setKitchen(next);
    writer.put({ id: where.id, kitchen: next });
    return next;
  };
  return {
    kitchen,
    opened,
    library,
    problems,
    writing,
    plan: planOf.plan,
    pictures: planOf.pictures,
    planTrouble: planOf.trouble,
    settle: planOf.settle,
    planAnew: planOf.anew,
    written: writer.done,
    keepAgain: writer.again,
    edit,
    keep,
    show,
    setProblems,
    /** An edit after which the plan is wanted at once. */
    put(next: Kitchen): Promise<boolean> {
      edit(next);
      return planOf.settle();
    },
    lastOpen: async () => readLastOpen((await ports.settings.readAll())[LAST_OPEN]),
  };
}

export type KitchenControllerCore = ReturnType<typeof createKitchenController>;
