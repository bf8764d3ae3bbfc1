import { message } from '../core/messages/index.ts';
import type { Kitchen } from '../core/kitchen/index.ts';
import type { RunView, StepView } from '../core/run/index.ts';
import { downloadText, pickTextFile } from '../host/files/index.ts';
import type { AppContext } from './app-context.ts';
import { say } from './context/language.ts';
import { reasonOf } from './controllers/reason.ts';

/** A kitchen file may have a megabyte, a three-day run is well below twenty. */
const LARGEST_KITCHEN_BYTES = 1_000_000;
const LARGEST_RUN_BYTES = 20_000_000;

/** "Grandma's flat" → "grandma-s-flat": safe on every file system. */
function fileWord(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}

export async function exportRun(context: AppContext, id: string): Promise<void> {
  try {
    const text = await context.runs.exportText(id);
    downloadText({ name: 'run.glowpour.json', text, type: 'application/json' });
  } catch (error) {
    context.tell(reasonOf(error));
  }
}

/** The text of a file that a person chooses; undefined when there is none, and then it is said why. */
async function pickedText(context: AppContext, mostBytes: number): Promise<string | undefined> {
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

export async function importRun(context: AppContext): Promise<void> {
  const text = await pickedText(context, LARGEST_RUN_BYTES);
  if (text !== undefined) await context.runs.importText(text);
}

export async function openFile(context: AppContext): Promise<void> {
  const text = await pickedText(context, LARGEST_KITCHEN_BYTES);
  if (text !== undefined && (await context.kitchens.openText(text))) context.go({ page: 'plan' });
}

export async function saveKitchen({ kitchens }: AppContext): Promise<void> {
  const name = `${fileWord(kitchens.kitchen()?.name ?? '') || 'kitchen'}.kitchen.json`;
  downloadText({ name, text: await kitchens.fileText(), type: 'application/json' });
}

/** The plan of the last edit; a kitchen that has none goes back to what stands in its way. */
export async function showPlan({ kitchens, go }: AppContext): Promise<void> {
  const planned = await kitchens.settle();
  if (!planned && kitchens.kitchen()) go({ page: 'kitchen' });
}

export async function openDemo({ kitchens, go }: AppContext, id: string): Promise<void> {
  if (await kitchens.openDemo(id)) go({ page: 'plan' });
}

/** What is left of a pour is shared out anew, then the pour ends where the water did. */
export async function ranOut(
  { runs }: AppContext,
  view: RunView,
  step: StepView,
  share: number,
): Promise<void> {
  const planner = await import('./controllers/kitchen/planner.ts');
  const unbegun = ['waiting', 'ready', 'stalled'];
  const hasBegun = (id: string): boolean =>
    view.steps.some((one) => one.step.id === id && !unbegun.includes(one.status));
  const amendment = planner.ranOut(view.plan, step.step.id, share, hasBegun);
  if (!amendment) return;
  const stage = step.step.stages[step.stage];
  // Only what was shared out anew may be left: a refused amendment ends nothing.
  if (
    stage &&
    (await runs.send({ kind: 'amend-plan', ...amendment, reason: say(amendment.reason) }))
  )
    await runs.send({ kind: 'confirm', step: step.step.id, stage: stage.id });
}

export async function startRun({ runs, planning, kitchens, go }: AppContext): Promise<void> {
  if (!runs.isOpen()) {
    // Whenever it was planned for, it begins now.
    planning.beginAt(null);
    await kitchens.planAnew();
    const plan = kitchens.plan();
    if (plan) await runs.start(plan);
  }
  go({ page: 'run' });
}

export function beginAt({ planning, kitchens }: AppContext, startWallMs: number): void {
  planning.beginAt(startWallMs);
  void kitchens.planAnew();
}

/** A small run for what a recheck touches; one at a time. */
export async function recheckAfterwards(
  { runs, planning, tell, go }: AppContext,
  kitchen: Kitchen,
  fixtureIds: readonly string[],
  what: string,
): Promise<void> {
  if (runs.isOpen()) return tell(message('shell.recheck.run-open'));
  const planner = await import('./controllers/kitchen/planner.ts');
  const options = await planning.optionsOf(kitchen);
  await runs.start(planner.planForRecheck(kitchen, fixtureIds, what, options));
  go({ page: 'run' });
}
