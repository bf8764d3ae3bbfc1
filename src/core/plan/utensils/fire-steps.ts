import { citation } from '../../custom/index.ts';
import { isGas, type Burner } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import { mapBand, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { burnerDemand } from '../context/demands.ts';
import { boilBeside } from '../context/places.ts';
import type { PlanContext } from '../context/plan-context.ts';
import { offReminder, reminder, stage, stepDraft, type StepDraft } from '../context/step-draft.ts';
import { coolId, glowId, restId, utensilPurgeId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { UTENSILS, type Stage } from '../model/index.ts';
import { counted, pieces } from './clean-and-rest.ts';
import { itemsBy, type UtensilWork } from './utensil-work.ts';

/** Look at what is heated at least this often, s: common practice, no published source. */
const LOOK_S = 10 * SECONDS_PER_MINUTE;

/** The strongest burner that has been purged by its own glow: what food stood on is not held over another. */
function fireOf({ burners }: PlanContext): Burner | undefined {
  const glowed = [...burners.values()]
    .filter(({ method }) => method === 'glow')
    .map(({ burner }) => burner);
  return glowed.toSorted((a, b) => b.ratedW - a.ratedW)[0];
}

function hobOf({ kitchen }: PlanContext, { id }: Burner): string {
  const hob = kitchen.fixtures.find(
    (one) => one.kind === 'cooktop' && one.burners.some((burner) => burner.id === id),
  );
  return hob?.id ?? '';
}

/** Judged by its sign and by no clock: it glows, or straw scorches on the far side. */
function fireStages(isLight: boolean, burner: Burner, things: Stage['detail']): readonly Stage[] {
  const hazard = isGas(burner.type) ? 'flame' : 'element';
  return [
    stage(
      'warm-up',
      message(isLight ? 'utensils.step.light-heat' : 'utensils.step.glow', {
        burner: burner.name,
      }),
      {
        detail: [
          ...things,
          ...(isLight ? [message('utensils.rule.light-heat-test')] : []),
          message('utensils.step.fire-tongs'),
        ],
        say: message(isLight ? 'utensils.step.scorched' : 'utensils.step.glowed'),
        hazards: [hazard, 'hot-surface'],
        resumption: 'restart',
        reviewAsk: message('steps.by-hand.heat-ask'),
        timers: [reminder('look', LOOK_S, message('steps.by-hand.look'))],
      },
    ),
    stage('off', message('steps.by-hand.off'), {
      hazards: ['hot-surface'],
      say: message('steps.by-hand.off-say'),
      resumption: 'ask',
      reviewAsk: message('steps.by-hand.off-ask'),
      timers: [offReminder(message('steps.by-hand.off-timer'))],
    }),
  ];
}

function fireDraft(
  work: UtensilWork,
  method: 'heat' | 'light-heat',
  burner: Burner,
): readonly StepDraft[] {
  const { context, utensils } = work;
  const items = itemsBy(work, method);
  if (items.length === 0) return [];
  const isLight = method === 'light-heat';
  const cools = context.burners.get(burner.id)?.estimate !== undefined;
  const chosen = utensils.plan.choices.find((one) => one.method === method);
  return [
    stepDraft(
      {
        id: utensilPurgeId(method),
        kind: 'high-heat',
        phase: 'purge',
        work: { on: 'utensils', items, method },
        title: message(isLight ? 'utensils.step.light-title' : 'utensils.step.glow-title'),
        reason: chosen?.reason ?? message('utensils.rule.rest'),
        stages: fireStages(isLight, burner, counted(items)),
        durationS: mapBand(handworkS('utensil-fire'), (s) => s * pieces(items)),
      },
      {
        sources: [citation(isLight ? 'oc-451-4-gloss' : 'oc-451-4')],
        needs: [restId(UTENSILS), cools ? coolId(burner.id) : glowId(burner.id)].map((step) => ({
          step,
        })),
        demands: { ...burnerDemand(context, burner), ...boilBeside(context, burner.id) },
        makeSafe: message('steps.by-hand.safe'),
        picture: { kind: 'burner', cooktop: hobOf(context, burner), burner: burner.id },
      },
      { burner, fuel: isGas(burner.type) ? 'gas' : 'electric' },
    ),
  ];
}

/** Things that are heated, one after the other over a burner that glowed itself; none where none does. */
export function fireSteps(work: UtensilWork): readonly StepDraft[] {
  const burner = fireOf(work.context);
  if (!burner) return [];
  return [...fireDraft(work, 'heat', burner), ...fireDraft(work, 'light-heat', burner)];
}
