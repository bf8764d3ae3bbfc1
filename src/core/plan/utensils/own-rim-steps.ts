import { citation } from '../../custom/index.ts';
import { message } from '../../messages/index.ts';
import { addBands } from '../../units/index.ts';
import { burnerDemand, HANDS } from '../context/demands.ts';
import { boilBeside } from '../context/places.ts';
import { estimateTimer, stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { restId, utensilPurgeId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { UTENSILS, type UtensilItem } from '../model/index.ts';
import { burnerNeed, potOverflow } from '../steps/kettles.ts';
import { boilsHere } from '../steps/pour.ts';
import { ownRims, type UtensilWork } from './utensil-work.ts';
import { isGas, type Burner } from '../../kitchen/index.ts';

function ownRimDraft(
  { context, pot, sinkReady }: UtensilWork & Required<Pick<UtensilWork, 'pot'>>,
  item: UtensilItem,
  piece: number,
  burner: Burner,
): StepDraft {
  const { name, count: of } = item;
  const hazards = ['boiling-water', isGas(burner.type) ? 'flame' : 'element'] as const;
  const title = message('utensils.step.own-rim', { name, piece, of });
  return stepDraft(
    {
      id: utensilPurgeId(item.utensil, piece),
      kind: 'boil-over',
      phase: 'purge',
      work: { on: 'utensils', items: [{ ...item, count: 1 }], method: 'immerse' },
      title,
      reason: message('utensils.rule.boil-over'),
      stages: [
        stage('fill', message('utensils.step.own-rim-fill', { burner: burner.name }), {
          say: message('steps.heat.say-on'),
        }),
        stage('boil', boilsHere(context), {
          say: message('steps.boil.say'),
          hazards,
          resumption: 'ask',
          reviewAsk: message('utensils.step.boil-ask'),
          timers: [
            // About as large as the pot of the batches, on the same burner.
            estimateTimer('boil', pot.boil.timeS.typical, message('steps.boil.expect')),
          ],
        }),
        potOverflow(burner.name),
        stage('cold', message('steps.boil-over.cold'), {
          detail: [message('utensils.step.empty'), message('utensils.step.outside')],
          say: message('steps.cold.say-rinsed'),
        }),
      ],
      durationS: addBands(pot.boil.timeS, addBands(handworkS('carry'), handworkS('cold'))),
    },
    {
      sources: [citation('oc-452-6')],
      needs: [restId(UTENSILS), ...sinkReady]
        .map((step) => ({ step }))
        .concat(burnerNeed(context, pot.kettle)),
      demands: {
        [HANDS]: 1,
        ...burnerDemand(context, burner),
        ...boilBeside(context, burner.id),
      },
      makeSafe: message('utensils.step.own-rim-safe', { burner: burner.name }),
      picture: {
        kind: 'burner',
        cooktop:
          context.kitchen.fixtures.find(
            (one) => one.kind === 'cooktop' && one.burners.some(({ id }) => id === burner.id),
          )?.id ?? '',
        burner: burner.id,
      },
    },
    { burner, fuel: isGas(burner.type) ? 'gas' : 'electric' },
  );
}

/** Pots too large for the pot of the batches: one after the other on its burner. */
export function ownRimSteps(work: UtensilWork): readonly StepDraft[] {
  const { pot } = work;
  const burner = pot?.kettle.burner;
  if (!pot || !burner) return [];
  return ownRims(work).flatMap((item) =>
    Array.from({ length: item.count }, (_, at) =>
      ownRimDraft({ ...work, pot }, item, at + 1, burner),
    ),
  );
}
