import type { Kitchen } from '../core/kitchen/index.ts';
import { message } from '../core/messages/index.ts';
import { downloadText, pickTextFile } from '../host/files/index.ts';
import type { AppContext } from './app-context.ts';
import type { KitchenController } from './controllers/kitchen/kitchen-opening.ts';
import type { Planning } from './controllers/kitchen/planning.ts';
import { ONLY_SHOWS } from './controllers/run/trouble.ts';
import { reasonOf } from './controllers/failures/reason.ts';
import { planner } from './controllers/planner/planner.ts';
import { fileName } from './parts/file-name.ts';

/** The app with what only the pages beside the run need. */
export type PagesContext = AppContext & {
  readonly planning: Planning;
  readonly kitchens: KitchenController;
  /** The kitchen that was open last, or that the address asks for, is still being read. */
  readonly isOpening: () => boolean;
};

/** A kitchen file may have a megabyte, a three-day run is well below twenty. */
const LARGEST_KITCHEN_BYTES = 1_000_000;
const LARGEST_RUN_BYTES = 20_000_000;
const LARGEST_BACKUP_BYTES = 200_000_000;

/** The text of a file that a person chooses; undefined when there is none, and then it is said why. */
async function pickedText(context: PagesContext, mostBytes: number): Promise<string | undefined> {
  const picked = await pickTextFile('.json', mostBytes);
  if (picked.kind === 'picked') return picked.text;
  if (picked.kind === 'too-large') {
    const { name, bytes } = picked;
    context.tell(message('shell.file.too-large', { name, bytes, mostBytes }));
  } else if (picked.kind === 'unreadable') {
    const { name, why } = picked;
    context.tell(message('shell.file.unreadable', { name, why }));
  }
  return undefined;
}

export async function importRun(context: PagesContext): Promise<void> {
  const text = await pickedText(context, LARGEST_RUN_BYTES);
  if (text !== undefined) await context.runs.importText(text);
}

function keptBy({ device, runs }: PagesContext) {
  const { kitchens, journals, settings } = device;
  return { kitchens, journals, settings, exportText: runs.exportText };
}

export async function saveEverything(context: PagesContext): Promise<void> {
  try {
    const { everythingAsText } = await import('./controllers/backup/everything.ts');
    const text = await everythingAsText(keptBy(context));
    const name = fileName({ atWallMs: Date.now(), ending: '.everything.json' });
    downloadText({ name, text, type: 'application/json' });
  } catch (error) {
    context.tell(reasonOf(error));
  }
}

/** Undefined: no file was chosen, or it is told why it could not be read or kept. */
export async function bringEverythingBack(context: PagesContext) {
  const { device, runs, kitchens, mayWrite, tell } = context;
  if (!mayWrite()) {
    tell(ONLY_SHOWS);
    return undefined;
  }
  const text = await pickedText(context, LARGEST_BACKUP_BYTES);
  if (text === undefined) return undefined;
  try {
    const { bringBack } = await import('./controllers/backup/bring-back.ts');
    const { newId, readClocks } = device;
    return await bringBack({ ...keptBy(context), newId, readClocks }, text);
  } catch (error) {
    tell(reasonOf(error));
    return undefined;
  } finally {
    await runs.refresh();
    await kitchens.library.refresh().catch((error: unknown) => tell(reasonOf(error)));
  }
}

export async function openFile(context: PagesContext): Promise<void> {
  const text = await pickedText(context, LARGEST_KITCHEN_BYTES);
  if (text !== undefined && (await context.kitchens.openText(text))) context.go({ page: 'plan' });
}

export async function saveKitchen({ kitchens }: PagesContext): Promise<void> {
  const called = kitchens.kitchen()?.name;
  const name = fileName({ called, atWallMs: Date.now(), ending: '.kitchen.json' });
  downloadText({ name, text: await kitchens.fileText(), type: 'application/json' });
}

/** The plan of the last edit; a kitchen that has none goes back to what stands in its way. */
export async function showPlan({ kitchens, go }: PagesContext): Promise<void> {
  const planned = await kitchens.settle();
  if (!planned && kitchens.kitchen()) go({ page: 'kitchen' });
}

export async function openDemo({ kitchens, go }: PagesContext, id: string): Promise<void> {
  if (await kitchens.openDemo(id)) go({ page: 'plan' });
}

export async function startRun(context: PagesContext): Promise<void> {
  const { runs, planning, kitchens, updates, tell, go } = context;
  if (!runs.isOpen()) {
    // A run begun on pieces of the version before would miss some of them in its middle.
    if (updates.isReplaced()) return takeUpdate({ updates, tell });
    // Whenever it was planned for, it begins now.
    planning.beginAt(null);
    await kitchens.planAnew();
    const plan = kitchens.plan();
    if (plan) await runs.start(plan, kitchens.keptId());
  }
  go({ page: 'run' });
}

/** Another page, or a run that cannot be shown, may bar what is offered here: then it says so. */
export async function takeUpdate({
  updates,
  tell,
}: Pick<PagesContext, 'updates' | 'tell'>): Promise<void> {
  try {
    if ((await updates.take()) === 'run-open') tell(message('shell.update.run-open'));
  } catch (error) {
    tell(reasonOf(error));
  }
}

export function beginAt({ planning, kitchens }: PagesContext, startWallMs: number): void {
  planning.beginAt(startWallMs);
  void kitchens.planAnew();
}

/** A small run for what a recheck touches; one at a time. */
export async function recheckAfterwards(
  { runs, planning, updates, tell, go }: PagesContext,
  kitchen: Kitchen,
  fixtureIds: readonly string[],
  what: string,
  keptId: string | undefined,
): Promise<void> {
  if (runs.isOpen()) return tell(message('shell.recheck.run-open'));
  if (updates.isReplaced()) return takeUpdate({ updates, tell });
  const options = await planning.optionsOf(kitchen, keptId);
  const plan = await planner.ask('recheck', { kitchen, fixtures: fixtureIds, what, options });
  await runs.start(plan, keptId);
  go({ page: 'run' });
}
