import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import type { Burner, Cooktop } from '../../kitchen/index.ts';
import { addBands, exactly } from '../../units/index.ts';
import { burnerDemand } from '../context/demands.ts';
import {
  stepDraft,
  offReminder,
  stage,
  type StepDraft,
  type PlanContext,
} from '../context/step-draft.ts';
import { isGas, type BurnerEstimate } from '../estimates/index.ts';
import type { Hazard, Stage, TimerSpec } from '../model/types.ts';
import { handworkS } from '../context/work-times.ts';
import { restId } from './clean.ts';

const S_MIN = 60;
/** Look at a lit burner at least this often, s: common practice, no published source. */
const LOOK_S = 10 * S_MIN;

export function glowId(burner: string): string {
  return `glow-${burner}`;
}

export function coolId(id: string): string {
  return `cool-${id}`;
}

/** Back burners first: nobody then reaches over a hot one, neither to look at the back ones nor to light the front. */
export function isBack(cooktop: Cooktop, burner: Burner): boolean {
  if (/back|rear/i.test(burner.name)) return true;
  if (/front/i.test(burner.name)) return false;
  const middleM = cooktop.outline.reduce((sum, [, y]) => sum + y, 0) / cooktop.outline.length;
  return burner.at[1] > middleM;
}

type GlowSite = {
  readonly cooktop: Cooktop;
  readonly burner: Burner;
  readonly minutes: number;
  readonly glows: boolean;
  readonly notes: readonly string[];
};

function warmUpTimers({ glowS, limitS }: BurnerEstimate): readonly TimerSpec[] {
  return [
    {
      id: 'expect',
      role: 'estimate',
      purpose: 'at-least',
      lengthS: glowS.typical,
      label: unkeyed('Glows about now'),
    },
    {
      id: 'limit',
      role: 'limit',
      purpose: 'at-most',
      lengthS: limitS,
      label: unkeyed('It should have glowed by now'),
      fault: 'no-glow',
    },
  ];
}

function holdTimers(minutes: number): readonly TimerSpec[] {
  return [
    {
      id: 'hold',
      role: 'hold',
      purpose: 'unbroken',
      lengthS: minutes * S_MIN,
      label: unkeyed('Glow'),
    },
    {
      id: 'look',
      role: 'reminder',
      purpose: 'at-most',
      lengthS: LOOK_S,
      label: unkeyed('Look at the burner'),
      repeats: true,
    },
  ];
}

function stagesOf(site: PlanContext, of: GlowSite): readonly Stage[] {
  const { burner, minutes } = of;
  const hazards: readonly Hazard[] = [isGas(burner.type) ? 'flame' : 'element'];
  const reckoned = site.burners.get(burner.id)?.reckoned;
  const light = isGas(burner.type)
    ? `Light the ${burner.name} burner on full flame.`
    : `Turn the ${burner.name} burner to high.`;
  return [
    stage('light', light, {
      detail: [
        unkeyed('Hood on, nothing near it.'),
        unkeyed('The back burners go first, so that nobody reaches over a hot one.'),
      ],
      say: unkeyed('It is on'),
      hazards,
      resumption: 'ask',
      reviewAsk: unkeyed('Is the burner on now?'),
    }),
    ...(of.glows
      ? [
          stage('warm-up', 'Watch it until it glows.', {
            detail: [...(reckoned ? [unkeyed(reckoned.visible)] : []), ...of.notes.map(unkeyed)],
            say: unkeyed('It glows'),
            hazards,
            resumption: 'restart' as const,
            reviewAsk: unkeyed('Did the burner stay on?'),
            timers: reckoned ? warmUpTimers(reckoned) : [],
          }),
        ]
      : []),
    stage(
      'hold',
      of.glows ? 'Let it glow without a break.' : 'Keep it at its highest without a break.',
      {
        detail: [unkeyed('Stay with it. If the flame or the power fails, the time begins again.')],
        hazards,
        resumption: 'restart',
        reviewAsk: unkeyed(of.glows ? 'Did the burner keep glowing?' : 'Did the burner stay on?'),
        timers: holdTimers(minutes),
      },
    ),
    stage('off', `Turn the ${burner.name} burner off.`, {
      detail: [unkeyed('Leave it untouched and dry.')],
      say: unkeyed('It is off'),
      hazards,
      resumption: 'ask',
      reviewAsk: unkeyed('Is the burner off?'),
      timers: [offReminder('Turn the burner off')],
    }),
  ];
}

function glowStep(site: PlanContext, of: GlowSite, follows: readonly string[]): StepDraft {
  const { cooktop, burner, minutes } = of;
  const choice = site.choices.get(cooktop.id);
  const reckoned = site.burners.get(burner.id)?.reckoned;
  const warmS = of.glows && reckoned ? reckoned.glowS : exactly(0);
  const hand = addBands(handworkS('light'), handworkS('off'));
  return stepDraft(
    {
      id: glowId(burner.id),
      kind: of.glows ? 'glow' : 'high-heat',
      phase: 'purge',
      title: unkeyed(
        `${of.glows ? 'Bring to a glow' : 'Heat at the highest'}: ${burner.name} of ${cooktop.name}, ${minutes} min.`,
      ),
      reason: unkeyed(choice?.method.reason ?? ''),
      stages: stagesOf(site, of),
      durationS: addBands(addBands(hand, warmS), exactly(minutes * S_MIN)),
    },
    {
      fixture: cooktop.id,
      sources: choice ? [choice.method.source] : [],
      needs: [{ step: restId(cooktop.id) }],
      demands: burnerDemand(site, burner),
      makeSafe: unkeyed(`Turn the ${burner.name} burner off.`),
      picture: { kind: 'burner', cooktop: cooktop.id, burner: burner.id },
    },
    { fixture: cooktop, burner, fuel: isGas(burner.type) ? 'gas' : 'electric' },
    follows,
  );
}

/** The clock to "safe to touch", which begins by itself when the burner is off. */
function burnerCool(site: PlanContext, cooktop: Cooktop, burner: Burner): readonly StepDraft[] {
  const reckoned = site.burners.get(burner.id)?.reckoned;
  if (!reckoned) return [];
  const title = `Let it cool untouched: ${burner.name} of ${cooktop.name}.`;
  return [
    stepDraft(
      {
        id: coolId(burner.id),
        kind: 'cool',
        phase: 'cool',
        title: unkeyed(title),
        reason: unkeyed('It burns the hand long after the glow is gone.'),
        stages: [
          stage('cool', title, {
            hazards: ['hot-surface'],
            timers: [
              {
                id: 'cool',
                role: 'hold',
                purpose: 'at-least',
                lengthS: reckoned.coolS,
                label: unkeyed(`Safe to touch: ${burner.name}`),
              },
            ],
          }),
        ],
        durationS: exactly(reckoned.coolS),
      },
      {
        fixture: cooktop.id,
        sources: [citation('iso-13732-1-touch')],
        attention: 'none',
        startsBy: 'chain',
        needs: [{ step: glowId(burner.id) }],
        makeSafe: unkeyed(
          `Keep hands, cloths and children away from the ${burner.name} burner until it has cooled.`,
        ),
      },
      { fixture: cooktop, burner, fuel: isGas(burner.type) ? 'gas' : 'electric' },
    ),
  ];
}

/** One step for each burner that is heated, back before front, each with its cool-down. */
export function glowSteps(site: PlanContext, cooktop: Cooktop): readonly StepDraft[] {
  const heated = cooktop.burners.flatMap((burner) => {
    const choice = site.burners.get(burner.id);
    return choice && (choice.method === 'glow' || choice.method === 'light-heat') ? [choice] : [];
  });
  const back = heated.filter(({ burner }) => isBack(cooktop, burner));
  const front = heated.filter(({ burner }) => !isBack(cooktop, burner));
  const notes = site.choices.get(cooktop.id)?.notes ?? [];
  return [...back, ...front].flatMap((choice) => {
    const { burner, minutes, method } = choice;
    const behind = front.includes(choice) ? back.map((one) => glowId(one.burner.id)) : [];
    const of: GlowSite = { cooktop, burner, minutes, glows: method === 'glow', notes };
    return [glowStep(site, of, behind), ...burnerCool(site, cooktop, burner)];
  });
}
