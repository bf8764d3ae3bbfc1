import { citation } from '../../custom/index.ts';
import { isGas } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { addBands, exactly } from '../../units/index.ts';
import { kettleDemand } from '../context/demands.ts';
import { boilBeside } from '../context/places.ts';
import { filledOf, type PlanContext } from '../context/plan-context.ts';
import {
  estimateTimer,
  stage,
  stepDraft,
  type About,
  type StepDraft,
} from '../context/step-draft.ts';
import { boilOverId, cleanId, coolId, glowId, restId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import type { Kettle } from '../estimates/index.ts';
import type { Hazard, Need, Picture, Stage, VesselUnit } from '../model/index.ts';
import { restCounts } from '../context/last-hot.ts';
import { coldOnly, restStep } from './clean.ts';
import { lastPreparation } from './prepare.ts';

export function vesselUnit({ id, name, vessel }: Kettle): VesselUnit {
  return { id: vessel.id, unit: id, name };
}

export function aboutKettle(context: PlanContext, kettle: Kettle): About {
  const fuel = kettle.burner && context.boils.get(kettle.id)?.fuel;
  return { vessel: kettle.vessel.kind, ...(fuel && { fuel }) };
}

/** A kettle on the stove stands on a burner that has been purged. */
export function burnerNeed(context: PlanContext, kettle: Kettle): readonly Need[] {
  const { burner } = kettle;
  const planned = burner && context.burners.get(burner.id);
  if (!planned || (planned.method !== 'glow' && planned.method !== 'light-heat')) return [];
  // Nobody lifts a kettle onto a burner that the plan leaves to cool untouched.
  return [{ step: planned.estimate ? coolId(planned.burner.id) : glowId(planned.burner.id) }];
}

/** What can hurt while it boils. */
function hazardsOf({ burner }: Kettle): readonly Hazard[] {
  if (!burner) return ['boiling-water'];
  return ['boiling-water', isGas(burner.type) ? 'flame' : 'element'];
}

/** Fill it and put it on. */
export function fillStage(
  context: PlanContext,
  kettle: Kettle,
  detail: readonly Message[] = [],
  litres = filledOf(context, kettle),
): Stage {
  const { name: vessel, burner } = kettle;
  const title = burner
    ? message('steps.vessel.fill-on-burner', { vessel, litres, burner: burner.name })
    : message('steps.vessel.fill-plugged', { vessel, litres });
  return stage('fill', title, {
    detail: [...detail, ...plugLines(context, kettle)],
    say: message('steps.heat.say-on'),
  });
}

/** Which socket an electric kettle goes into; none for one on the stove. */
function plugLines(context: PlanContext, { vessel, burner }: Kettle): readonly Message[] {
  if (burner) return [];
  const circuit = context.kitchen.circuits.find(({ id }) => id === vessel.circuit);
  return [
    circuit
      ? message('steps.vessel.plug-into', { circuit: circuit.name })
      : message('steps.vessel.plug-anywhere'),
  ];
}

/** What makes it safe at any moment. */
export function kettleSafe({ name: vessel, burner }: Kettle): Message {
  return burner
    ? message('steps.vessel.safe-on-burner', { burner: burner.name, vessel })
    : message('steps.vessel.safe-plugged', { vessel });
}

/** Boiling, watched: the estimate is a look, the person says when it boils. */
export function boilStage(
  context: PlanContext,
  kettle: Kettle,
  title: Message,
  detail: readonly Message[] = [],
): Stage {
  const boil = context.boils.get(kettle.id);
  return stage('boil', title, {
    detail,
    say: message('steps.boil.say'),
    hazards: hazardsOf(kettle),
    resumption: 'ask',
    reviewAsk: message('steps.boil.ask'),
    timers: boil ? [estimateTimer('boil', boil.timeS.typical, message('steps.boil.expect'))] : [],
  });
}

/** A pot is not carried full: it runs over where it stands. */
export function potOverflow(burner: string): Stage {
  return stage('overflow', message('utensils.step.overflow', { burner }), {
    detail: [message('steps.boil-over.steel'), message('utensils.step.overflow-hob')],
    say: message('steps.boil-over.overflow-say'),
    hazards: ['boiling-water', 'hot-surface'],
    resumption: 'ask',
    reviewAsk: message('steps.boil-over.overflow-ask'),
  });
}

/** Over the rim by what is lowered into it, after Orach Chaim 452:6: a spout cannot wet its rim, and a turned kettle scalds. */
function overflowStage(kettle: Kettle): Stage {
  if (kettle.vessel.kind === 'pot') return potOverflow(kettle.burner?.name ?? '');
  const { burner } = kettle;
  const title = burner
    ? message('steps.boil-over.overflow-on-burner', { burner: burner.name })
    : message('steps.boil-over.overflow-plugged');
  return stage('overflow', title, {
    detail: [
      message('steps.boil-over.steel'),
      ...(burner ? [] : [message('steps.boil-over.base')]),
      message('steps.boil-over.spout'),
    ],
    say: message('steps.boil-over.overflow-say'),
    hazards: hazardsOf(kettle),
    resumption: 'ask',
    reviewAsk: message('steps.boil-over.overflow-ask'),
  });
}

function cleanKettle(context: PlanContext, kettle: Kettle): StepDraft {
  const title = message('steps.clean.title-vessel', { name: kettle.name });
  return stepDraft(
    {
      id: cleanId(kettle.id),
      kind: 'clean',
      phase: 'clean',
      work: { on: 'vessel', vessel: vesselUnit(kettle) },
      title,
      reason: message('steps.clean.reason-vessel'),
      stages: [
        stage('clean', title, {
          detail: [
            ...coldOnly(restCounts(context, kettle.vessel.id)),
            message('steps.clean.rinse-vessel'),
            message('steps.rest.label'),
          ],
          say: message('steps.clean.say'),
        }),
      ],
      durationS: handworkS('kettle-clean'),
    },
    { sources: [citation('trade-practice')], needs: [{ step: lastPreparation(context) }] },
    { vessel: kettle.vessel.kind, rests: true },
  );
}

/** A pot is emptied where it stands, little by little. */
function emptied({ vessel }: Kettle): readonly Message[] {
  return vessel.kind === 'pot' ? [message('utensils.step.empty')] : [];
}

/** Filled, boiled over its rim, rinsed. */
function boilOverStages(context: PlanContext, kettle: Kettle): readonly Stage[] {
  return [
    fillStage(context, kettle),
    boilStage(context, kettle, message('steps.boil.wait')),
    overflowStage(kettle),
    stage('cold', message('steps.boil-over.cold'), {
      detail: emptied(kettle),
      say: message('steps.cold.say-rinsed'),
    }),
  ];
}

/**
 * One vessel boiled over its rim.
 * @param after what must be over before
 */
export function boilOverStep(
  context: PlanContext,
  kettle: Kettle,
  id: string,
  after: readonly string[],
): StepDraft {
  const boilS = context.boils.get(kettle.id)?.timeS ?? exactly(0);
  const handling = addBands(handworkS('carry'), handworkS('cold'));
  return stepDraft(
    {
      id,
      kind: 'boil-over',
      phase: 'purge',
      work: { on: 'vessel', vessel: vesselUnit(kettle), litres: filledOf(context, kettle) },
      title: message('steps.boil-over.title', { vessel: kettle.name }),
      reason: message('steps.boil-over.reason'),
      stages: boilOverStages(context, kettle),
      durationS: addBands(boilS, handling),
    },
    {
      sources: [citation(context.custom.kettleSource)],
      needs: [...after.map((step) => ({ step })), ...burnerNeed(context, kettle)],
      demands: {
        hands: 1,
        ...kettleDemand(context, kettle),
        ...boilBeside(context, kettle.burner?.id),
      },
      makeSafe: kettleSafe(kettle),
      picture: kettlePicture(context, kettle),
    },
    aboutKettle(context, kettle),
  );
}

/** Clean, rest and boil-over of one kettle; none for a new one, or one that was purged. */
export function kettleSteps(context: PlanContext, kettle: Kettle): readonly StepDraft[] {
  if (kettle.toBuy || kettle.purged || !context.boils.has(kettle.id)) return [];
  return [
    cleanKettle(context, kettle),
    restStep(context, {
      id: kettle.id,
      toldAs: kettle.vessel.id,
      name: kettle.name,
      work: { on: 'vessel', vessel: vesselUnit(kettle) },
    }),
    boilOverStep(context, kettle, boilOverId(kettle.id), [restId(kettle.id)]),
  ];
}

export function kettlePicture(context: PlanContext, kettle: Kettle): Picture {
  const { id, maxFillL } = kettle.vessel;
  return { kind: 'kettle', vessel: id, litres: filledOf(context, kettle), maxFillL };
}
