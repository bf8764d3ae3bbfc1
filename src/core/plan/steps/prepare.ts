import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import { stepDraft, stage, type StepDraft, type PlanContext } from '../context/step-draft.ts';
import { PREPARING, preparingS } from '../context/work-times.ts';

export function prepareId(id: string): string {
  return `prepare-${id}`;
}

/** What is done before anything is cleaned. Questions first: their answers may change the plan. */
export function prepareSteps(site: PlanContext): readonly StepDraft[] {
  const asks = [...site.choices.values()].some(({ questions }) => questions.length > 0);
  const rows = PREPARING.filter(({ id }) => id !== 'ask' || asks);
  return rows.map((row, at) => {
    const before = rows[at - 1];
    return stepDraft(
      {
        id: prepareId(row.id),
        kind: 'prepare',
        phase: 'prepare',
        title: unkeyed(row.title),
        reason: unkeyed(row.reason),
        stages: [stage('do', row.title, { detail: row.detail.map(unkeyed), say: unkeyed('Done') })],
        durationS: preparingS(row),
      },
      { sources: [citation(row.source)] },
      {},
      before ? [prepareId(before.id)] : [],
    );
  });
}

/** The last preparation: cleaning begins after it. */
export function lastPreparation(site: PlanContext): string {
  return prepareSteps(site).at(-1)?.step.id ?? '';
}
