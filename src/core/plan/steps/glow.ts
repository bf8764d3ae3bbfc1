import { hasHeatLamp, isGas, type Burner, type Cooktop } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { addBands, exactly, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { burnerDemand } from '../context/demands.ts';
import { besideDemand, WATCHED_HEAT } from '../context/places.ts';
import { choiceOf, readyId, type PlanContext } from '../context/plan-context.ts';
import {
  estimateTimer,
  offReminder,
  reminder,
  stage,
  stepDraft,
  unbrokenHold,
  type About,
  type StepDraft,
} from '../context/step-draft.ts';
import { coolId, glowId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import { glowVisible, type BurnerEstimate } from '../estimates/index.ts';
import type { Hazard, Stage, TimerSpec, Work } from '../model/index.ts';
import { coolStep, type Cooling } from './cool.ts';

/** Look at a lit burner at least this often, s: common practice, no published source. */
const LOOK_S = 10 * SECONDS_PER_MINUTE;

/** Back burners first: nobody then reaches over a hot one, neither to look at the back ones nor to light the front. */
function isBack(cooktop: Cooktop, burner: Burner): boolean {
  const middleM = cooktop.outline.reduce((sum, [, y]) => sum + y, 0) / cooktop.outline.length;
  return burner.at[1] > middleM;
}

type Heated = {
  readonly cooktop: Cooktop;
  readonly burner: Burner;
  readonly minutes: number;
  readonly glows: boolean;
  readonly notes: readonly Message[];
  readonly estimate?: BurnerEstimate | undefined;
  /** Another burner that is heated stands before it. */
  readonly isBehind: boolean;
};

function aboutOf({ cooktop, burner }: Heated): About {
  return { fixture: cooktop, burner, fuel: isGas(burner.type) ? 'gas' : 'electric' };
}

function workOf({ burner, glows }: Heated): Extract<Work, { readonly on: 'burner' }> {
  return { on: 'burner', burner: burner.id, method: glows ? 'glow' : 'light-heat' };
}

function warmUpTimers({ glowS, limitS }: BurnerEstimate): readonly TimerSpec[] {
  return [
    estimateTimer('expect', glowS.typical, message('steps.glow.expect')),
    {
      id: 'limit',
      role: 'limit',
      purpose: 'at-most',
      lengthS: limitS,
      label: message('steps.glow.limit'),
      fault: 'no-glow',
    },
  ];
}

function warmUp({ burner, notes, estimate }: Heated, hazards: readonly Hazard[]): Stage {
  return stage('warm-up', message('steps.glow.warm-up'), {
    detail: [
      ...(burner.type === 'induction' ? [] : [glowVisible(burner.type)]),
      ...(estimate?.mayStayDark ? [message('steps.glow.may-stay-dark')] : []),
      ...notes,
    ],
    say: message('steps.glow.warm-up-say'),
    hazards,
    resumption: 'restart',
    reviewAsk: message('steps.heat.ask-stayed-on'),
    timers: estimate ? warmUpTimers(estimate) : [],
  });
}

function stagesOf(heated: Heated): readonly Stage[] {
  const { burner, minutes, glows } = heated;
  const hazards: readonly Hazard[] = [isGas(burner.type) ? 'flame' : 'element'];
  const named = { burner: burner.name };
  const light = isGas(burner.type)
    ? message('steps.glow.light-gas', named)
    : message('steps.glow.light-electric', named);
  return [
    stage('light', light, {
      detail: [
        ...(isGas(burner.type) ? [message('steps.glow.light-gas-ready')] : []),
        message('steps.glow.light-clear'),
        message('steps.glow.light-order'),
      ],
      say: message('steps.heat.say-on'),
      hazards,
      resumption: 'ask',
      reviewAsk: message('steps.glow.light-ask'),
    }),
    ...(glows ? [warmUp(heated, hazards)] : []),
    stage('hold', message(glows ? 'steps.glow.hold' : 'steps.glow.hold-highest'), {
      detail: [message('steps.glow.hold-detail')],
      hazards,
      resumption: 'restart',
      reviewAsk: message(glows ? 'steps.glow.hold-ask' : 'steps.heat.ask-stayed-on'),
      timers: [
        unbrokenHold(minutes, message('steps.glow.hold-timer')),
        reminder('look', LOOK_S, message('steps.glow.look')),
      ],
    }),
    stage('off', message('steps.glow.off', named), {
      detail: [message('steps.glow.off-detail')],
      say: message('steps.heat.say-off'),
      hazards,
      resumption: 'ask',
      reviewAsk: message('steps.glow.off-ask'),
      timers: [offReminder(message('steps.glow.off-timer'))],
    }),
  ];
}

function glowStep(context: PlanContext, heated: Heated, follows: readonly string[]): StepDraft {
  const { cooktop, burner, minutes, glows, estimate } = heated;
  const choice = choiceOf(context, cooktop.id);
  const warmS = glows && estimate ? estimate.glowS : exactly(0);
  const hand = addBands(handworkS('light'), handworkS('off'));
  const lengthS = minutes * SECONDS_PER_MINUTE;
  const named = { burner: burner.name, cooktop: cooktop.name, lengthS };
  return stepDraft(
    {
      id: glowId(burner.id),
      kind: glows ? 'glow' : 'high-heat',
      phase: 'purge',
      work: { ...workOf(heated), minutes },
      title: glows
        ? message('steps.glow.title', named)
        : message('steps.glow.title-highest', named),
      reason: choice.method.reason,
      stages: stagesOf(heated),
      durationS: addBands(addBands(hand, warmS), exactly(lengthS)),
    },
    {
      fixture: cooktop.id,
      sources: [choice.method.source],
      needs: [{ step: readyId(context, cooktop.id) }],
      demands: {
        ...burnerDemand(context, burner),
        ...besideDemand(context, cooktop),
        ...WATCHED_HEAT,
      },
      makeSafe: message('steps.glow.off', { burner: burner.name }),
      picture: { kind: 'burner', cooktop: cooktop.id, burner: burner.id },
    },
    aboutOf(heated),
    follows,
  );
}

function burnerCool(context: PlanContext, heated: Heated): readonly StepDraft[] {
  const { cooktop, burner, estimate } = heated;
  if (!estimate) return [];
  const of: Cooling = {
    id: coolId(burner.id),
    heated: glowId(burner.id),
    fixture: cooktop,
    work: workOf(heated),
    name: message('steps.burner.of', { burner: burner.name, cooktop: cooktop.name }),
    timerName: asWritten(burner.name),
    lengthS: estimate.coolS,
    isBehind: heated.isBehind,
    test: hasHeatLamp(cooktop) ? 'lamp' : 'drop',
    reason: message('steps.glow.cool-reason'),
    makeSafe: message('steps.glow.cool-safe', { burner: burner.name }),
    demands: besideDemand(context, cooktop),
  };
  return [coolStep(of, aboutOf(heated))];
}

/** One step for each burner that is heated, back before front, each with its cool-down. */
export function glowSteps(context: PlanContext, cooktop: Cooktop): readonly StepDraft[] {
  const planned = cooktop.burners.flatMap((burner) => {
    const choice = context.burners.get(burner.id);
    return choice && (choice.method === 'glow' || choice.method === 'light-heat') ? [choice] : [];
  });
  const back = planned.filter(({ burner }) => isBack(cooktop, burner));
  const front = planned.filter(({ burner }) => !isBack(cooktop, burner));
  const notes = choiceOf(context, cooktop.id).notes;
  return [...back, ...front].flatMap((choice) => {
    const { burner, minutes, method, estimate } = choice;
    const behind = front.includes(choice) ? back.map((one) => glowId(one.burner.id)) : [];
    const heated: Heated = {
      cooktop,
      burner,
      minutes,
      glows: method === 'glow',
      notes,
      estimate,
      isBehind: front.length > 0 && !front.includes(choice),
    };
    return [glowStep(context, heated, behind), ...burnerCool(context, heated)];
  });
}
