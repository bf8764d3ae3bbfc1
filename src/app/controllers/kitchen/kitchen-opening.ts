import { demoText } from '../../pages/kitchen/demos.ts';
import type { Device } from '../../context/device.ts';
import { createKitchenController, type KitchenControllerCore } from './kitchen-controller.ts';
import type { Planning } from './planning.ts';

const planner = () => import('./planner.ts');

/** Laying a kitchen on the desk that must be read first. */
function createOpening(desk: KitchenControllerCore) {
  /** Bad input changes nothing but the list of problems. */
  const openText = async (text: string): Promise<boolean> => {
    const { parseKitchen } = await planner();
    const outcome = parseKitchen(text);
    if ('problems' in outcome) {
      desk.say(outcome.problems);
      return false;
    }
    await desk.shelf.refresh().catch(() => undefined);
    desk.keep({ ...outcome.kitchen, name: desk.shelf.freeName(outcome.kitchen.name) });
    return desk.settle();
  };
  const openDemo = async (id: string): Promise<boolean> => {
    const text = await demoText(id);
    if (text === undefined) return false;
    await desk.shelf.refresh().catch(() => undefined);
    const outcome = (await planner()).parseKitchen(text);
    if ('problems' in outcome) {
      desk.say(outcome.problems);
      return false;
    }
    desk.lay(outcome.kitchen, { kind: 'demo', id });
    return desk.settle();
  };
  const open = async (id: string): Promise<boolean> => {
    await desk.written();
    const kept = await desk.shelf.read(id).catch(() => undefined);
    if (kept && 'problems' in kept) desk.say(kept.problems);
    if (!kept || 'problems' in kept) return false;
    desk.lay(kept.kitchen, { kind: 'kept', id });
    await desk.settle();
    return true;
  };
  const openLast = async (): Promise<void> => {
    await desk.shelf.refresh().catch(() => undefined);
    const last = await desk.lastOnDesk().catch(() => undefined);
    if (desk.kitchen()) return;
    if (last?.kind === 'demo') {
      await openDemo(last.id);
      return;
    }
    // An app of before kept one kitchen only, and did not say what lay on the desk: the latest is it.
    const kept = desk.shelf.kept().map((row) => row.id);
    const id = last?.kind === 'kept' && kept.includes(last.id) ? last.id : kept[0];
    if (id !== undefined) await open(id);
  };
  return { openText, openDemo, open, openLast };
}

type Opening = ReturnType<typeof createOpening>;

/** Naming, copying and putting away the kitchens of the shelf. */
function createKeeping(desk: KitchenControllerCore, opening: Opening) {
  const isOnDesk = (id: string): boolean => {
    const where = desk.onDesk();
    return where?.kind === 'kept' && where.id === id;
  };
  const read = async (id: string) => {
    await desk.written();
    const kept = await desk.shelf.read(id);
    return kept && !('problems' in kept) ? kept.kitchen : undefined;
  };
  return {
    async rename(id: string, name: string): Promise<boolean> {
      const kitchen = await read(id);
      if (!kitchen || name.trim() === '') return false;
      const next = { ...kitchen, name: name.trim() };
      if (isOnDesk(id)) desk.edit(next);
      else await desk.shelf.save(id, next);
      return true;
    },
    /** The copy is laid on the desk. */
    async duplicate(id: string): Promise<boolean> {
      const kitchen = await read(id);
      if (!kitchen) return false;
      desk.keep({ ...kitchen, name: desk.shelf.freeName(kitchen.name) });
      await desk.settle();
      return true;
    },
    async remove(id: string): Promise<void> {
      await desk.written();
      await desk.shelf.remove(id);
      if (!isOnDesk(id)) return;
      const next = desk.shelf.kept()[0];
      if (!next || !(await opening.open(next.id))) desk.lay(undefined, undefined);
      await desk.settle();
    },
    async fileText(): Promise<string> {
      const { formatKitchen } = await planner();
      const kitchen = desk.kitchen();
      return kitchen ? formatKitchen(kitchen) : '';
    },
  };
}

/** The desk with everything a person does with kitchens by name. */
export function withOpening(desk: KitchenControllerCore) {
  const opening = createOpening(desk);
  return { ...desk, ...opening, ...createKeeping(desk, opening) };
}

export type KitchenController = ReturnType<typeof withOpening>;

export function kitchenControllerOf(device: Device, planning: Planning): KitchenController {
  return withOpening(
    createKitchenController({
      store: device.kitchens,
      settings: device.settings,
      nowMs: () => device.readClocks().wallMs,
      newId: device.newId,
      optionsOf: planning.optionsOf,
    }),
  );
}
