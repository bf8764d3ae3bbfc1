import type { RunView, StepView } from '../core/run/index.ts';
import { downloadText } from '../host/files/index.ts';
import type { AppContext } from './app-context.ts';
import { reasonOf } from './controllers/failures/reason.ts';

const ENDING = '.run.json';

export async function exportRun(context: AppContext, id: string): Promise<void> {
  try {
    const text = await context.runs.exportText(id);
    const run = context.runs.runs().find((one) => one.id === id);
    const of = { called: run?.name, atWallMs: run?.openedWallMs ?? Date.now(), ending: ENDING };
    // A run is saved under any name, also where nothing more can be loaded.
    const name = await import('./parts/file-name.ts').then(
      ({ fileName }) => fileName(of),
      () => `glowpour${ENDING}`,
    );
    downloadText({ name, text, type: 'application/json' });
  } catch (error) {
    context.tell(reasonOf(error));
  }
}

/** What is left of a pour is shared out anew, then the pour ends where the water did. */
export async function ranOut(
  { runs }: { readonly runs: Pick<AppContext['runs'], 'send'> },
  view: RunView,
  step: StepView,
  share: number,
): Promise<void> {
  const { planner } = await import('./controllers/planner/planner.ts');
  const unbegun = ['waiting', 'ready', 'stalled'];
  const begun = view.steps
    .filter(({ status }) => !unbegun.includes(status))
    .map((one) => one.step.id);
  const { plan } = view;
  const amendment = await planner.ask('ran-out', { plan, step: step.step.id, share, begun });
  if (!amendment) return;
  const stage = step.step.stages[step.stage];
  // Only what was shared out anew may be left: a refused amendment ends nothing.
  if (stage && (await runs.send({ kind: 'amend-plan', ...amendment })))
    await runs.send({ kind: 'confirm', step: step.step.id, stage: stage.id });
}
