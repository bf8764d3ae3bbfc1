import { citation } from '../../custom/index.ts';
import { message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { prepareId } from '../context/step-ids.ts';
import { PREPARING, preparingLines, preparingS } from '../context/work-times.ts';

/** What is done before anything is cleaned. Questions first: their answers may change the plan. */
export function prepareSteps(context: PlanContext): readonly StepDraft[] {
  const asks = [...context.choices.values()].some(({ questions }) => questions.length > 0);
  const rows = PREPARING.filter(({ id }) => id !== 'ask' || asks);
  return rows.map((row, at) => {
    const before = rows[at - 1];
    const title = message(`steps.prepare.${row.id}.title`);
    return stepDraft(
      {
        id: prepareId(row.id),
        kind: 'prepare',
        phase: 'prepare',
        work: { on: 'kitchen' },
        title,
        reason: message(`steps.prepare.${row.id}.reason`),
        stages: [
          stage('do', title, {
            detail: preparingLines(row, context.kitchen),
            say: message('steps.prepare.say'),
          }),
        ],
        durationS: preparingS(row),
      },
      { sources: [citation(row.source)] },
      {},
      before ? [prepareId(before.id)] : [],
    );
  });
}

/** The last preparation: cleaning begins after it. */
export function lastPreparation(context: PlanContext): string {
  return prepareSteps(context).at(-1)?.step.id ?? '';
}
