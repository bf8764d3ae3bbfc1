import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import type { Oven } from '../../kitchen/index.ts';
import { addBands, exactly } from '../../units/index.ts';
import { BURNERS_LIT, circuitDemand, rangeResource } from '../context/demands.ts';
import {
  stepDraft,
  offReminder,
  stage,
  type StepDraft,
  type PlanContext,
} from '../context/step-draft.ts';
import {
  calibratedOven,
  estimateHighHeat,
  estimateSelfClean,
  type OvenEstimate,
} from '../estimates/index.ts';
import type { Picture, Stage } from '../model/types.ts';
import { handworkS } from '../context/work-times.ts';
import { restId } from './clean.ts';
import { coolId } from './glow.ts';

const S_MIN = 60;
/** Look at a heated oven at least this often, s: owners' manuals want it attended. */
const LOOK_S = 60 * S_MIN;
/** Where neither the custom nor an answer says how long, min: the longer of the usual one to two hours. */
const LONGEST_HEAT_MIN = 120;

export function ovenId(oven: string): string {
  return `heat-${oven}`;
}

const LOOK = {
  id: 'look',
  role: 'reminder',
  purpose: 'at-most',
  lengthS: LOOK_S,
  label: unkeyed('Is everything well with the oven?'),
  repeats: true,
} as const;

/** Its circuit; a gas oven gives the room what a lit burner does. */
function heatDemand(site: PlanContext, oven: Oven): Readonly<Record<string, number>> {
  return oven.heat === 'electric'
    ? circuitDemand(site.kitchen, oven.circuit, oven.ratedW)
    : { [BURNERS_LIT]: 1 };
}

/** A self-clean locks out the hob of the same range: all its burners are taken. */
function cleanDemand(site: PlanContext, oven: Oven): Readonly<Record<string, number>> {
  const top = site.kitchen.fixtures.find(({ id }) => id === oven.sharesRangeWith);
  return {
    ...heatDemand(site, oven),
    ...(top?.kind === 'cooktop' && { [rangeResource(top.id)]: Math.max(1, top.burners.length) }),
  };
}

function pictureOf(
  stages: readonly (readonly [name: string, lengthS: number, tempC: number])[],
): Picture {
  return {
    kind: 'oven',
    stages: stages.map(([name, lengthS, tempC]) => ({ name: unkeyed(name), lengthS, tempC })),
  };
}

function cleanStages(oven: Oven, reckoned: OvenEstimate): readonly Stage[] {
  const racks = oven.racksStayInCycle
    ? 'The racks stay in, as its manual allows.'
    : 'The racks are out.';
  return [
    stage('start', `Close the door and start the full self-clean cycle of ${oven.name}.`, {
      detail: [unkeyed(racks), unkeyed('The door locks by itself when it is hot.')],
      say: unkeyed('It runs'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: unkeyed('Does the cycle run now?'),
    }),
    stage('cycle', 'Let the cycle run to its end.', {
      detail: [unkeyed('Stay home and awake. If the power fails, the cycle begins again.')],
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: unkeyed('Did the cycle run on without a break?'),
      timers: [
        {
          id: 'cycle',
          role: 'hold',
          purpose: 'unbroken',
          lengthS: reckoned.holdS,
          label: unkeyed('Self-clean cycle'),
        },
        LOOK,
      ],
    }),
    stage('cool', 'Leave the door shut until the lock opens.', {
      detail: [unkeyed('Do not force it.')],
      hazards: ['oven'],
      timers: [
        {
          id: 'unlock',
          role: 'hold',
          purpose: 'at-least',
          lengthS: reckoned.coolS.typical,
          label: unkeyed('The lock opens'),
        },
      ],
    }),
    stage('open', 'See that the cycle has ended and the lock is open, then switch it off.', {
      detail: [unkeyed('It is still hot inside: leave it shut and dry.')],
      say: unkeyed('It is off and unlocked'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: unkeyed('Is the oven off and unlocked?'),
      timers: [offReminder('See that the oven is off')],
    }),
  ];
}

/** One full self-clean cycle, from the start to the open lock. */
function selfCleanStep(site: PlanContext, oven: Oven): StepDraft {
  const choice = site.choices.get(oven.id);
  const reckoned = estimateSelfClean(oven);
  const hand = addBands(handworkS('light'), handworkS('open'));
  return stepDraft(
    {
      id: ovenId(oven.id),
      kind: 'self-clean',
      phase: 'purge',
      title: unkeyed(`Run one full self-clean cycle: ${oven.name}.`),
      reason: unkeyed(choice?.method.reason ?? ''),
      stages: cleanStages(oven, reckoned),
      durationS: addBands(addBands(hand, exactly(reckoned.holdS)), reckoned.coolS),
    },
    {
      fixture: oven.id,
      sources: choice ? [choice.method.source] : [],
      needs: [{ step: restId(oven.id) }],
      demands: cleanDemand(site, oven),
      makeSafe: unkeyed('Keep the door shut and turn the oven off at its control or its breaker.'),
      picture: pictureOf([
        ['Heat', reckoned.heatS.typical, reckoned.hotC],
        ['Hold', reckoned.holdS - reckoned.heatS.typical, reckoned.hotC],
        ['Cool, locked', reckoned.coolS.typical, reckoned.openC],
      ]),
    },
    { fixture: oven, fuel: oven.heat },
  );
}

function heatStages(oven: Oven, reckoned: OvenEstimate): readonly Stage[] {
  return [
    stage('start', `Turn ${oven.name} to its highest setting, door shut.`, {
      detail: [
        unkeyed('Racks in, clean and dry. If it has a broiler, use it for the last minutes.'),
      ],
      say: unkeyed('It is on'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: unkeyed('Is the oven on now?'),
    }),
    stage('heat-up', 'Wait until it has reached its highest heat.', {
      say: unkeyed('It is at its highest'),
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: unkeyed('Did the oven stay on?'),
      timers: [
        {
          id: 'expect',
          role: 'estimate',
          purpose: 'at-least',
          lengthS: reckoned.heatS.typical,
          label: unkeyed('At its highest about now'),
        },
      ],
    }),
    stage('hold', 'Keep it at its highest without a break.', {
      detail: [unkeyed('If the power or the flame fails, the time begins again.')],
      hazards: ['oven'],
      resumption: 'restart',
      reviewAsk: unkeyed('Did the oven stay on without a break?'),
      timers: [
        {
          id: 'hold',
          role: 'hold',
          purpose: 'unbroken',
          lengthS: reckoned.holdS,
          label: unkeyed('Highest heat'),
        },
        LOOK,
      ],
    }),
    stage('off', `Turn ${oven.name} off and leave the door shut.`, {
      say: unkeyed('It is off'),
      hazards: ['oven'],
      resumption: 'ask',
      reviewAsk: unkeyed('Is the oven off?'),
      timers: [offReminder('Turn the oven off')],
    }),
  ];
}

function highHeatSteps(site: PlanContext, oven: Oven): readonly StepDraft[] {
  const choice = site.choices.get(oven.id);
  const minutes = choice?.method.minutes ?? LONGEST_HEAT_MIN;
  const { heatUp, cool } = site.calibration ?? {};
  const reckoned = calibratedOven(estimateHighHeat(minutes), heatUp?.[oven.id], cool?.[oven.id]);
  const hand = addBands(handworkS('light'), handworkS('off'));
  const cooling = `Let it cool untouched: ${oven.name}.`;
  return [
    stepDraft(
      {
        id: ovenId(oven.id),
        kind: 'high-heat',
        phase: 'purge',
        title: unkeyed(`Heat at the highest setting for ${minutes} min: ${oven.name}.`),
        reason: unkeyed(choice?.method.reason ?? ''),
        stages: heatStages(oven, reckoned),
        durationS: addBands(addBands(hand, reckoned.heatS), exactly(reckoned.holdS)),
      },
      {
        fixture: oven.id,
        sources: choice ? [choice.method.source] : [],
        needs: [{ step: restId(oven.id) }],
        demands: heatDemand(site, oven),
        makeSafe: unkeyed('Turn the oven off and keep its door shut.'),
        picture: pictureOf([
          ['Heat', reckoned.heatS.typical, reckoned.hotC],
          ['Hold', reckoned.holdS, reckoned.hotC],
          ['Cool', reckoned.coolS.typical, reckoned.openC],
        ]),
      },
      { fixture: oven, fuel: oven.heat },
    ),
    ovenCool(oven, cooling, reckoned.coolS.high),
  ];
}

function ovenCool(oven: Oven, title: string, lengthS: number): StepDraft {
  return stepDraft(
    {
      id: coolId(oven.id),
      kind: 'cool',
      phase: 'cool',
      title: unkeyed(title),
      reason: unkeyed('It burns the hand long after it is off.'),
      stages: [
        stage('cool', title, {
          hazards: ['hot-surface'],
          timers: [
            {
              id: 'cool',
              role: 'hold',
              purpose: 'at-least',
              lengthS,
              label: unkeyed(`Safe to touch: ${oven.name}`),
            },
          ],
        }),
      ],
      durationS: exactly(lengthS),
    },
    {
      fixture: oven.id,
      sources: [citation('iso-13732-1-touch')],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: ovenId(oven.id) }],
      makeSafe: unkeyed(`Keep the door shut and children away until it has cooled: ${oven.name}.`),
    },
    { fixture: oven, fuel: oven.heat },
  );
}

/** The heat of an oven by its method, and its cool-down. */
export function ovenSteps(site: PlanContext, oven: Oven): readonly StepDraft[] {
  const method = site.choices.get(oven.id)?.method.method;
  if (method !== 'self-clean') return highHeatSteps(site, oven);
  const touchS = estimateSelfClean(oven).touchS * (site.calibration?.cool?.[oven.id]?.mean ?? 1);
  return [
    selfCleanStep(site, oven),
    ovenCool(oven, `Let it cool untouched: ${oven.name}.`, touchS),
  ];
}
