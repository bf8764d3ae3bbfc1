import { message } from '../../../core/messages/index.ts';
import type { Device } from '../../context/device.ts';
import { reasonOf } from '../failures/reason.ts';
import {
  createKitchenController,
  type KitchenControllerCore,
  type KitchenControllerPorts,
} from './kitchen-controller.ts';
import { planner } from '../planner/planner.ts';
import type { Planning } from './planning.ts';

const kitchenFiles = () => import('./kitchen-files.ts');

/** The text of a demo kitchen's file; undefined for an unknown id. */
export type DemoText = (id: string) => Promise<string | undefined>;

/** What comes late from a slow store opens nothing over a later wish. */
function createWishes({ opened }: KitchenControllerCore) {
  let made = 0;
  return {
    wishes: () => made,
    /** Asked once what was wished for is there: whether it still is, and no demo became a person's own meanwhile. */
    wish(): () => boolean {
      made += 1;
      const mine = made;
      const where = opened();
      return () => mine === made && opened() === where;
    },
  };
}

/** Opening a kitchen that must be read first. */
function createOpening(
  controller: KitchenControllerCore,
  demoText: DemoText,
  tell: KitchenControllerPorts['tell'],
) {
  const notRead = (error: unknown): undefined => {
    tell(message('shell.kitchens-not-read', { why: reasonOf(error) }));
    return undefined;
  };
  const { wish, wishes } = createWishes(controller);
  /** Bad input changes nothing but the list of problems. */
  const openText = async (text: string): Promise<boolean> => {
    const { parseKitchen, problemMessage } = await kitchenFiles();
    const outcome = parseKitchen(text);
    if ('problems' in outcome) {
      controller.setProblems(outcome.problems);
      return false;
    }
    await controller.library.refresh().catch(notRead);
    controller.keep({
      ...outcome.kitchen,
      name: controller.library.freeName(outcome.kitchen.name),
    });
    const [cleaned] = outcome.cleaned;
    if (cleaned) tell(problemMessage(cleaned));
    return controller.settle();
  };
  const openDemo = async (id: string): Promise<boolean> => {
    const isStillWished = wish();
    const text = await demoText(id);
    if (text === undefined) return false;
    await controller.library.refresh().catch(notRead);
    const outcome = (await kitchenFiles()).parseKitchen(text);
    if (!isStillWished()) return false;
    if ('problems' in outcome) {
      controller.setProblems(outcome.problems);
      return false;
    }
    controller.show(outcome.kitchen, { kind: 'demo', id });
    return controller.settle();
  };
  const open = async (id: string): Promise<boolean> => {
    const isStillWished = wish();
    await controller.written();
    const kept = await controller.library.read(id).catch(notRead);
    if (!isStillWished()) return false;
    if (kept && 'problems' in kept) controller.setProblems(kept.problems);
    if (!kept || 'problems' in kept) return false;
    controller.show(kept.kitchen, { kind: 'kept', id });
    await controller.settle();
    return true;
  };
  const openLast = async (): Promise<void> => {
    const before = wishes();
    await controller.library.refresh().catch(notRead);
    const last = await controller.lastOpen().catch(notRead);
    if (controller.kitchen() || wishes() !== before) return;
    if (last?.kind === 'demo') {
      await openDemo(last.id);
      return;
    }
    // An app of before kept one kitchen only, and did not say which was open: the latest is it.
    const kept = controller.library.kept().map((row) => row.id);
    const id = last?.kind === 'kept' && kept.includes(last.id) ? last.id : kept[0];
    if (id !== undefined) await open(id);
  };
  return { openText, openDemo, open, openLast };
}

type Opening = ReturnType<typeof createOpening>;

/** Naming, copying and putting away the kitchens of the library. */
function createKeeping(controller: KitchenControllerCore, opening: Opening) {
  const isOpen = (id: string): boolean => {
    const where = controller.opened();
    return where?.kind === 'kept' && where.id === id;
  };
  const read = async (id: string) => {
    await controller.written();
    const kept = await controller.library.read(id);
    return kept && !('problems' in kept) ? kept.kitchen : undefined;
  };
  return {
    async rename(id: string, name: string): Promise<boolean> {
      const kitchen = await read(id);
      if (!kitchen || name.trim() === '') return false;
      const next = { ...kitchen, name: name.trim() };
      if (isOpen(id)) controller.edit(next);
      else await controller.library.save(id, next);
      return true;
    },
    /** The copy is opened. */
    async duplicate(id: string): Promise<boolean> {
      const kitchen = await read(id);
      if (!kitchen) return false;
      controller.keep({ ...kitchen, name: controller.library.freeName(kitchen.name) });
      await controller.settle();
      return true;
    },
    async remove(id: string): Promise<void> {
      await controller.written();
      await controller.library.remove(id);
      if (!isOpen(id)) return;
      const next = controller.library.kept()[0];
      if (!next || !(await opening.open(next.id))) controller.show(undefined, undefined);
      await controller.settle();
    },
    async fileText(): Promise<string> {
      const { formatKitchen } = await kitchenFiles();
      const kitchen = controller.kitchen();
      return kitchen ? formatKitchen(kitchen) : '';
    },
  };
}

/** The controller with everything a person does with kitchens by name. */
export function withOpening(
  controller: KitchenControllerCore,
  demoText: DemoText,
  tell: KitchenControllerPorts['tell'],
) {
  const opening = createOpening(controller, demoText, tell);
  return { ...controller, ...opening, ...createKeeping(controller, opening) };
}

export type KitchenController = ReturnType<typeof withOpening>;

/** What the kitchen controller is made with besides the device. */
export type KitchenControllerDeps = {
  readonly planning: Planning;
  readonly demoText: DemoText;
  readonly tell: KitchenControllerPorts['tell'];
};

export function kitchenControllerOf(
  device: Device,
  { planning, demoText, tell }: KitchenControllerDeps,
): KitchenController {
  return withOpening(
    createKitchenController({
      store: device.kitchens,
      settings: device.settings,
      nowMs: () => device.readClocks().wallMs,
      newId: device.newId,
      tell,
      ask: planner.ask,
      optionsOf: planning.optionsOf,
    }),
    demoText,
    tell,
  );
}
