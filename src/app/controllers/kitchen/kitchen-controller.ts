import { createSignal } from 'solid-js';
import type { Kitchen, KitchenProblem } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type { PlanOptions } from '../../../core/plan/index.ts';
import type { KitchenStore, SettingsStore } from '../../../host/kitchens/index.ts';
import { reasonOf } from '../failures/reason.ts';
import type { Ask } from '../planner/planner.ts';
import { createKitchenLibrary } from './kitchen-library.ts';
import { createEditWriter } from './edit-writer.ts';
import type { WriteState } from './latest-writer.ts';
import { createPlanOf } from './plan-of.ts';

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
  /** Has the plan worked out. */
  readonly ask: Ask;
  /** What a plan is made with besides the kitchen; absent: nothing. */
  readonly optionsOf?: (kitchen: Kitchen, keptId?: string) => Promise<PlanOptions>;
};

/** Name of the setting that says which kitchen was open last: "kept:…" or "demo:…". */
const LAST_OPEN = 'kitchen-on-desk';
type LastOpen = Exclude<OpenKitchen, { kind: 'begun' }>;

/** Which kitchen was open last; one only begun is not remembered. */
function readLastOpen(stored: unknown): LastOpen | undefined {
  const [, kind, id] = /^(kept|demo):(.+)$/.exec(typeof stored === 'string' ? stored : '') ?? [];
  return (kind === 'kept' || kind === 'demo') && id ? { kind, id } : undefined;
}

/** Of a kitchen that is kept on this tablet. */
function idIfKept(where: OpenKitchen | undefined): string | undefined {
  return where?.kind === 'kept' ? where.id : undefined;
}

function remember({ settings, tell }: KitchenControllerPorts, where: LastOpen): void {
  settings
    .write(LAST_OPEN, `${where.kind}:${where.id}`)
    .catch((error: unknown) => tell(message('shell.choice-not-kept', { why: reasonOf(error) })));
}

/** The kitchen being described, its place among the others, and the plan that follows from it. */
export function createKitchenController(ports: KitchenControllerPorts) {
  const [kitchen, setKitchen] = createSignal<Kitchen>();
  const [opened, setOpened] = createSignal<OpenKitchen>();
  const [problems, setProblems] = createSignal<readonly KitchenProblem[]>([]);
  const [writing, setWriting] = createSignal<WriteState>('idle');
  const library = createKitchenLibrary(ports.store, ports.nowMs);
  const keptId = () => idIfKept(opened());
  const planOf = createPlanOf(
    kitchen,
    ports.ask,
    async (now) => ports.optionsOf?.(now, keptId()) ?? {},
  );
  const writer = createEditWriter(ports, library, {
    part: (id, copy) => {
      const now = kitchen();
      if (!now || keptId() !== id) return;
      show({ ...now, name: copy.name }, { kind: 'kept', id: copy.id });
      planOf.later();
    },
    onState: setWriting,
  });

  const show = (next: Kitchen | undefined, where: OpenKitchen | undefined): void => {
    if (where?.kind === 'kept') writer.opened(where.id);
    setProblems([]);
    setOpened(where);
    setKitchen(next);
    if (where && where.kind !== 'begun') remember(ports, where);
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
    keptId,
    library,
    problems,
    writing,
    plan: planOf.plan,
    pictures: planOf.pictures,
    planTrouble: planOf.trouble,
    isPlanning: planOf.isPlanning,
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
