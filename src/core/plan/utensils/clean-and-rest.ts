import { citation } from '../../custom/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { mapBand } from '../../units/index.ts';
import { restCounts } from '../context/last-hot.ts';
import { stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { cleanId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { UTENSILS, type UtensilItem } from '../model/index.ts';
import { coldOnly, restStep } from '../steps/clean.ts';
import { lastPreparation } from '../steps/prepare.ts';
import { itemsBy, ownRims, withoutPot, type UtensilWork } from './utensil-work.ts';

/** What all utensils are called at once. */
const ALL = message('utensils.all');

export function pieces(items: readonly UtensilItem[]): number {
  return items.reduce((sum, { count }) => sum + count, 0);
}

/** "24 × Cutlery (Meat)" for each. */
export function counted(items: readonly UtensilItem[]): readonly Message[] {
  return items.map(({ count, name }) => message('utensils.count', { count, name }));
}

/** Everything that has a step, or is only washed. */
function washed(work: UtensilWork): readonly UtensilItem[] {
  const { plan } = work.utensils;
  const dipped = new Set(plan.batches.flatMap(({ items }) => items).map(({ utensil }) => utensil));
  const own = new Set(ownRims(work).map(({ utensil }) => utensil));
  const immersed = itemsBy(work, 'immerse').filter(
    ({ utensil }) => dipped.has(utensil) || own.has(utensil),
  );
  return [...immersed, ...itemsBy(work, 'heat', 'light-heat', 'soak', 'clean')];
}

function told(
  key: 'utensils.step.soak-first' | 'utensils.step.put-away',
  items: readonly UtensilItem[],
) {
  return items.length > 0 ? [message(key, { items: counted(items) })] : [];
}

/**
 * Washed all at once: what is not clean is not purged.
 * @param rests some of them rest after it; else they are only soaked
 */
export function cleanUtensils(work: UtensilWork, rests: boolean): StepDraft {
  const { context } = work;
  const items = washed(work);
  const title = message('utensils.step.clean');
  const outside = withoutPot(context);
  return stepDraft(
    {
      id: cleanId(UTENSILS),
      kind: 'clean',
      phase: 'clean',
      work: { on: 'utensils', items, ...(!rests && { method: 'soak' }) },
      title,
      reason: message('utensils.rule.rest'),
      stages: [
        stage('clean', title, {
          detail: [
            ...coldOnly(rests && restCounts(context, UTENSILS)),
            message('utensils.step.clean-these', { items: counted(items) }),
            message('utensils.step.joints'),
            ...told('utensils.step.soak-first', itemsBy(work, 'soak')),
            ...told('utensils.step.put-away', [...itemsBy(work, 'put-away'), ...outside]),
            ...(rests ? [message('steps.rest.label')] : []),
          ],
          say: message('steps.clean.say'),
        }),
      ],
      durationS: mapBand(handworkS('utensil-clean'), (s) => s * pieces(items)),
    },
    { sources: [citation('oc-452-2')], needs: [{ step: lastPreparation(context) }] },
    { rests },
  );
}

/** Nothing hot for as long as fixtures rest. */
export function restUtensils(work: UtensilWork): StepDraft {
  const items = washed(work).filter(
    ({ utensil }) => !itemsBy(work, 'soak', 'clean').some((one) => one.utensil === utensil),
  );
  return restStep(work.context, {
    id: UTENSILS,
    toldAs: UTENSILS,
    name: ALL,
    work: { on: 'utensils', items },
  });
}
