import { citation, type ChosenPart } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { exactly, mapBand, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { circuitDemand } from '../context/demands.ts';
import { standDemand } from '../context/places.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import { fuelOf } from '../context/purging.ts';
import {
  offReminder,
  reminder,
  stage,
  stepDraft,
  unbrokenHold,
  type StepDraft,
} from '../context/step-draft.ts';
import { byHandId, partId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import type { Stage } from '../model/index.ts';

/** The longer of the usual 10 to 20 minutes, where nothing says how long. */
const LONGEST_STEAM_MIN = 20;
const LONGEST_HEAT_MIN = 30;
/** Look at what is heated at least this often, s: common practice, no published source. */
const LOOK_S = 10 * SECONDS_PER_MINUTE;

function powerOf(context: PlanContext, fixture: Fixture): Readonly<Record<string, number>> {
  if (!('ratedW' in fixture) || fixture.ratedW === undefined) return {};
  return circuitDemand(context.kitchen, fixture.circuit, fixture.ratedW);
}

/** A half cup boils away in about a quarter of an hour: common practice, no published source. */
const TOP_UP_S = 8 * SECONDS_PER_MINUTE;

function steamStages(minutes: number): readonly Stage[] {
  return [
    stage('start', message('steps.steam.start'), {
      detail: [message('steps.steam.cup-on'), message('steps.steam.start-detail')],
      say: message('steps.heat.say-on'),
      hazards: ['boiling-water'],
      resumption: 'ask',
      reviewAsk: message('steps.steam.start-ask'),
    }),
    stage('hold', message('steps.steam.hold'), {
      detail: [message('steps.steam.hold-detail')],
      hazards: ['boiling-water'],
      resumption: 'restart',
      reviewAsk: message('steps.steam.hold-ask'),
      timers: [
        unbrokenHold(minutes, message('steps.steam.timer')),
        reminder('look', TOP_UP_S, message('steps.steam.top-up')),
      ],
    }),
    stage('open', message('steps.steam.open'), {
      detail: [message('steps.steam.open-detail')],
      say: message('steps.steam.open-say'),
      hazards: ['boiling-water'],
      resumption: 'ask',
      reviewAsk: message('steps.steam.open-ask'),
      timers: [offReminder(message('steps.steam.off-timer'))],
    }),
  ];
}

/** Water boiled inside until everything is full of steam. */
export function steamStep(context: PlanContext, fixture: Fixture): StepDraft {
  const choice = choiceOf(context, fixture.id);
  const minutes = choice.method.minutes ?? LONGEST_STEAM_MIN;
  const lengthS = minutes * SECONDS_PER_MINUTE;
  return stepDraft(
    {
      id: byHandId(fixture.id),
      kind: 'steam',
      phase: 'purge',
      work: { on: 'fixture', method: 'steam', minutes },
      title: message('steps.steam.title', { fixture: fixture.name, lengthS }),
      reason: choice.method.reason,
      stages: steamStages(minutes),
      durationS: mapBand(handworkS('open'), (s) => s + lengthS),
    },
    {
      fixture: fixture.id,
      sources: [choice.method.source],
      needs: [{ step: readyId(context, fixture.id) }],
      demands: { ...powerOf(context, fixture), ...standDemand(context, fixture) },
      makeSafe: message('steps.steam.safe'),
    },
    { fixture, fuel: fuelOf(fixture) ?? 'electric' },
  );
}

function wetStages(title: Message, poured: boolean): readonly Stage[] {
  return [
    stage(poured ? 'pour' : 'immerse', title, {
      ...(poured
        ? {
            detail: [message('steps.by-hand.pour-kettle'), message('steps.by-hand.pour-stream')],
            say: message('steps.by-hand.pour-say'),
            reviewAsk: message('steps.by-hand.pour-ask'),
          }
        : {
            detail: [
              message('steps.by-hand.immerse-boils'),
              message('steps.by-hand.immerse-under'),
            ],
            say: message('steps.by-hand.immerse-say'),
            reviewAsk: message('steps.by-hand.immerse-ask'),
          }),
      hazards: ['boiling-water'],
      resumption: 'ask',
    }),
    stage('cold', message('steps.by-hand.cold'), { say: message('steps.cold.say-rinsed') }),
  ];
}

function heatStages(title: Message, minutes: number): readonly Stage[] {
  return [
    stage('hold', title, {
      hazards: ['hot-surface'],
      say: message('steps.by-hand.heat-say'),
      resumption: 'restart',
      reviewAsk: message('steps.by-hand.heat-ask'),
      timers: [
        unbrokenHold(minutes, message('steps.by-hand.heat-timer')),
        reminder('look', LOOK_S, message('steps.by-hand.look')),
      ],
    }),
    stage('off', message('steps.by-hand.off'), {
      hazards: ['hot-surface'],
      say: message('steps.by-hand.off-say'),
      resumption: 'ask',
      reviewAsk: message('steps.by-hand.off-ask'),
      timers: [offReminder(message('steps.by-hand.off-timer'))],
    }),
  ];
}

function titleOf({ kind, name: fixture }: Fixture, poured: boolean, wet: boolean, lengthS: number) {
  if (poured) return message('steps.by-hand.pour', { fixture });
  return wet
    ? message('steps.by-hand.immerse', { fixture })
    : message(kind === 'dishwasher' ? 'steps.by-hand.run-empty' : 'steps.by-hand.heat', {
        fixture,
        lengthS,
      });
}

/** A part of a fixture that is purged by itself: by fire, or by boiling water. */
export function partByHand(
  context: PlanContext,
  fixture: Fixture,
  { part, method, minutes = LONGEST_HEAT_MIN, reason, source }: ChosenPart,
  name: Message,
): StepDraft {
  const poured = method === 'pour';
  const wet = poured || method === 'immerse' || method === 'boil-over';
  const lengthS = minutes * SECONDS_PER_MINUTE;
  const named = { part: name, fixture: fixture.name };
  const title = wet
    ? message('steps.parts.boiling', named)
    : message(method === 'light-heat' ? 'steps.parts.heat' : 'steps.parts.fire', {
        ...named,
        lengthS,
      });
  return stepDraft(
    {
      id: partId(fixture.id, part),
      kind: wet ? 'boil-over' : 'high-heat',
      phase: 'purge',
      work: { on: 'fixture', method, ...(!wet && { minutes }) },
      title,
      reason,
      stages: wet ? wetStages(title, poured) : heatStages(title, minutes),
      durationS: wet ? handworkS('by-hand') : exactly(lengthS + handworkS('by-hand').typical),
    },
    {
      fixture: fixture.id,
      sources: [source],
      needs: [{ step: readyId(context, fixture.id) }],
      makeSafe: message('steps.by-hand.safe'),
    },
    { fixture, fuel: fuelOf(fixture) ?? 'electric' },
  );
}

/** What a household's answer asks for that no other builder knows: heat or immersion by hand. */
export function byHandStep(context: PlanContext, fixture: Fixture): StepDraft {
  const choice = choiceOf(context, fixture.id);
  const method = choice.method.method;
  const poured = method === 'pour';
  const wet = poured || method === 'immerse' || method === 'boil-over';
  const minutes = choice.method.minutes ?? LONGEST_HEAT_MIN;
  const lengthS = minutes * SECONDS_PER_MINUTE;
  const title = titleOf(fixture, poured, wet, lengthS);
  return stepDraft(
    {
      id: byHandId(fixture.id),
      kind: wet ? 'boil-over' : 'high-heat',
      phase: 'purge',
      work: { on: 'fixture', method, ...(!wet && { minutes }) },
      title,
      reason: choice.method.reason,
      stages: wet ? wetStages(title, poured) : heatStages(title, minutes),
      durationS: wet ? handworkS('by-hand') : exactly(lengthS + handworkS('by-hand').typical),
    },
    {
      fixture: fixture.id,
      sources: [choice.method.source, citation(context.custom.coldSource)],
      needs: [{ step: readyId(context, fixture.id) }],
      demands: powerOf(context, fixture),
      makeSafe: message('steps.by-hand.safe'),
    },
    { fixture, fuel: fuelOf(fixture) ?? 'electric' },
  );
}
