import type { Oven } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import {
  addBands,
  exactly,
  MINUTES_PER_HOUR,
  SECONDS_PER_HOUR,
  SECONDS_PER_MINUTE,
} from '../../units/index.ts';
import { BURNERS_LIT, circuitDemand, rangeResource } from '../context/demands.ts';
import { besideDemand } from '../context/places.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import {
  estimateTimer,
  offReminder,
  reminder,
  stage,
  stepDraft,
  unbrokenHold,
  type StepDraft,
} from '../context/step-draft.ts';
import { coolId, ovenId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import {
  calibratedOven,
  estimateHighHeat,
  estimateSelfClean,
  type OvenEstimate,
} from '../estimates/index.ts';
import type { Picture, Stage, TimerSpec } from '../model/index.ts';
import { coolStep } from './cool.ts';
import { inTheCycle, racksLine } from './parts.ts';

/** Look at a heated oven at least this often, s: owners' manuals want it attended. */
const LOOK_S = SECONDS_PER_HOUR;
/** Where neither the custom nor an answer says how long, min: the longer of the usual one to two hours. */
const LONGEST_HEAT_MIN = 2 * MINUTES_PER_HOUR;

function lookTimer(): TimerSpec {
  return reminder('look', LOOK_S, message('steps.oven.look'));
}

/** Its circuit; a gas oven gives the room what a lit burner does. */
function heatDemand(context: PlanContext, oven: Oven): Readonly<Record<string, number>> {
  return oven.heat === 'electric'
    ? circuitDemand(context.kitchen, oven.circuit, oven.ratedW)
    : { [BURNERS_LIT]: 1 };
}

/** A self-clean locks out the hob of the same range: all its burners are taken. */
function cleanDemand(context: PlanContext, oven: Oven): Readonly<Record<string, number>> {
  const top = context.kitchen.fixtures.find(({ id }) => id === oven.sharesRangeWith);
  return {
    ...heatDemand(context, oven),
    ...(top?.kind === 'cooktop' && { [rangeResource(top.id)]: Math.max(1, top.burners.length) }),
  };
}

function pictureOf(
  { heatS, coolS, hotC, openC }: OvenEstimate,
  holdS: number,
  cool: Message,
): Picture {
  return {
    kind: 'oven',
    stages: [
      { name: message('steps.oven.picture.heat'), lengthS: heatS.typical, tempC: hotC },
      { name: message('steps.oven.picture.hold'), lengthS: holdS, tempC: hotC },
      { name: cool, lengthS: coolS.typical, tempC: openC },
    ],
  };
}

function cleanStages(
  { name, racksStayInCycle, sharesRangeWith }: Oven,
  estimate: OvenEstimate,
  inCycle: readonly Message[],
): readonly Stage[] {
  return [
    stage('start', message('steps.oven.clean.start', { oven: name }), {
      detail: [
        message(racksStayInCycle ? 'steps.oven.clean.racks-in' : 'steps.oven.clean.racks-out'),
        ...inCycle,
        ...(sharesRangeWith === undefined ? [] : [message('steps.oven.clean.hob-cold')]),
        message('steps.oven.clean.locks'),
      ],
      say: message('steps.oven.clean.start-say'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: message('steps.oven.clean.start-ask'),
    }),
    stage('cycle', message('steps.oven.clean.cycle'), {
      detail: [message('steps.oven.clean.cycle-detail')],
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: message('steps.oven.clean.cycle-ask'),
      timers: [
        {
          id: 'cycle',
          role: 'hold',
          purpose: 'unbroken',
          lengthS: estimate.holdS,
          label: message('steps.oven.clean.cycle-timer'),
        },
        lookTimer(),
      ],
    }),
    stage('cool', message('steps.oven.clean.cool'), {
      detail: [message('steps.oven.clean.cool-detail')],
      hazards: ['oven'],
      timers: [
        {
          id: 'unlock',
          role: 'hold',
          purpose: 'at-least',
          // A timer to a lock that opens takes the slow end.
          lengthS: estimate.coolS.high,
          label: message('steps.oven.clean.cool-timer'),
        },
      ],
    }),
    stage('open', message('steps.oven.clean.open'), {
      detail: [message('steps.oven.clean.open-detail')],
      say: message('steps.oven.clean.open-say'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: message('steps.oven.clean.open-ask'),
      timers: [offReminder(message('steps.oven.clean.open-timer'))],
    }),
  ];
}

/** One full self-clean cycle, from the start to the open lock. */
function selfCleanStep(context: PlanContext, oven: Oven, estimate: OvenEstimate): StepDraft {
  const choice = choiceOf(context, oven.id);
  const guests = inTheCycle(context, oven);
  const hand = addBands(handworkS('light'), handworkS('open'));
  return stepDraft(
    {
      id: ovenId(oven.id),
      kind: 'self-clean',
      phase: 'purge',
      work: {
        on: 'fixture',
        method: 'self-clean',
        minutes: estimate.holdS / SECONDS_PER_MINUTE,
      },
      title: message('steps.oven.clean.title', { oven: oven.name }),
      reason: choice.method.reason,
      stages: cleanStages(oven, estimate, guests.lines),
      durationS: addBands(addBands(hand, exactly(estimate.holdS)), exactly(estimate.coolS.high)),
    },
    {
      fixture: oven.id,
      sources: [choice.method.source],
      needs: [{ step: readyId(context, oven.id) }, ...guests.needs],
      demands: { ...cleanDemand(context, oven), ...besideDemand(context, oven) },
      makeSafe: message('steps.oven.clean.safe'),
      picture: pictureOf(
        estimate,
        estimate.holdS - estimate.heatS.typical,
        message('steps.oven.picture.cool-locked'),
      ),
    },
    { fixture: oven, fuel: oven.heat },
  );
}

function heatStages(
  { name }: Oven,
  minutes: number,
  { heatS }: OvenEstimate,
  racks: Message,
): readonly Stage[] {
  return [
    stage('start', message('steps.oven.start', { oven: name }), {
      detail: [racks, message('steps.oven.start-detail')],
      say: message('steps.heat.say-on'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: message('steps.oven.start-ask'),
    }),
    stage('warm-up', message('steps.oven.warm-up'), {
      say: message('steps.oven.warm-up-say'),
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: message('steps.oven.warm-up-ask'),
      timers: [estimateTimer('expect', heatS.typical, message('steps.oven.expect'))],
    }),
    stage('hold', message('steps.oven.hold'), {
      detail: [message('steps.oven.hold-detail')],
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: message('steps.oven.hold-ask'),
      timers: [unbrokenHold(minutes, message('steps.oven.hold-timer')), lookTimer()],
    }),
    stage('off', message('steps.oven.off', { oven: name }), {
      say: message('steps.heat.say-off'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: message('steps.oven.off-ask'),
      timers: [offReminder(message('steps.oven.off-timer'))],
    }),
  ];
}

function highHeatStep(
  context: PlanContext,
  oven: Oven,
  minutes: number,
  estimate: OvenEstimate,
): StepDraft {
  const choice = choiceOf(context, oven.id);
  const hand = addBands(handworkS('light'), handworkS('off'));
  return stepDraft(
    {
      id: ovenId(oven.id),
      kind: 'high-heat',
      phase: 'purge',
      work: { on: 'fixture', method: choice.method.method, minutes },
      title: message('steps.oven.title', {
        oven: oven.name,
        lengthS: minutes * SECONDS_PER_MINUTE,
      }),
      reason: choice.method.reason,
      stages: heatStages(oven, minutes, estimate, racksLine(choice)),
      durationS: addBands(addBands(hand, estimate.heatS), exactly(estimate.holdS)),
    },
    {
      fixture: oven.id,
      sources: [choice.method.source],
      needs: [{ step: readyId(context, oven.id) }],
      demands: { ...heatDemand(context, oven), ...besideDemand(context, oven) },
      makeSafe: message('steps.oven.safe'),
      picture: pictureOf(estimate, estimate.holdS, message('steps.oven.picture.cool')),
    },
    { fixture: oven, fuel: oven.heat },
  );
}

function ovenCool(context: PlanContext, oven: Oven, lengthS: number): StepDraft {
  const method = choiceOf(context, oven.id).method.method;
  return coolStep(
    {
      id: coolId(oven.id),
      heated: ovenId(oven.id),
      fixture: oven,
      work: { on: 'fixture', method },
      name: asWritten(oven.name),
      timerName: asWritten(oven.name),
      lengthS,
      test: 'drop-in-oven',
      reason: message('steps.oven.cool-reason'),
      makeSafe: message('steps.oven.cool-safe', { oven: oven.name }),
      demands: besideDemand(context, oven),
    },
    { fixture: oven, fuel: oven.heat },
  );
}

/** The heat of an oven by its method, and its cool-down. */
export function ovenSteps(context: PlanContext, oven: Oven): readonly StepDraft[] {
  const chosen = choiceOf(context, oven.id).method;
  const { heatUp, cool } = context.calibration ?? {};
  if (chosen?.method === 'self-clean') {
    const estimate = estimateSelfClean(oven);
    return [
      selfCleanStep(context, oven, estimate),
      ovenCool(context, oven, estimate.touchS * (cool?.[oven.id]?.mean ?? 1)),
    ];
  }
  const minutes = chosen?.minutes ?? LONGEST_HEAT_MIN;
  const estimate = calibratedOven(estimateHighHeat(minutes), heatUp?.[oven.id], cool?.[oven.id]);
  return [
    highHeatStep(context, oven, minutes, estimate),
    ovenCool(context, oven, estimate.coolS.high),
  ];
}
