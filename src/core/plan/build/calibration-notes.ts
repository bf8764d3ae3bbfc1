import { burnersOf } from '../../kitchen/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { boilingVessels, type PlanContext } from '../context/plan-context.ts';
import type { Calibration, CalibrationFactor, Step } from '../model/index.ts';

const PERCENT = 100;

type Experience = {
  readonly what: 'boil' | 'glow' | 'heat-up' | 'pour';
  readonly factor: CalibrationFactor | undefined;
  /** As the calibrated plan expects it. */
  readonly lengthS: number | undefined;
};

function expectedS({ stages }: Step): number | undefined {
  const timers = stages.flatMap((stage) => stage.timers);
  return timers.find(({ role }) => role === 'estimate')?.lengthS;
}

/** What runs taught about what a step uses, with the seconds expected; nothing for work without a measure. */
function experienceOf(
  context: PlanContext,
  calibration: Calibration,
  step: Step,
): Experience | undefined {
  const { boils, burners } = context;
  const { kind, work, fixture } = step;
  if (kind === 'boil' || kind === 'boil-over') {
    if (work.on !== 'kettle' && work.on !== 'vessel') return undefined;
    const { unit } = work.vessel;
    const vessel = boilingVessels(context).find(({ id }) => id === unit)?.vessel.id;
    return {
      what: 'boil',
      factor: vessel === undefined ? undefined : calibration.boil?.[vessel],
      lengthS: boils.get(unit)?.timeS.typical,
    };
  }
  if (kind === 'glow' && work.on === 'burner')
    return {
      what: 'glow',
      factor: calibration.glow?.[work.burner],
      lengthS: burners.get(work.burner)?.estimate?.glowS.typical,
    };
  if (kind === 'high-heat' && step.picture?.kind === 'oven' && fixture !== undefined)
    return { what: 'heat-up', factor: calibration.heatUp?.[fixture], lengthS: expectedS(step) };
  if (kind === 'pour')
    return { what: 'pour', factor: calibration.flowLMin, lengthS: expectedS(step) };
  return undefined;
}

/** The step with a word on what it expects from earlier runs, where it does. */
export function withCalibration(context: PlanContext, step: Step): Step {
  const { calibration } = context;
  const found = calibration && experienceOf(context, calibration, step);
  if (!found?.factor || !found.lengthS) return step;
  const { what, factor, lengthS } = found;
  const experience = message(`steps.experience.${what}`, { lengthS, reports: factor.n });
  return {
    ...step,
    reason: message('steps.reason-and-experience', { reason: step.reason, experience }),
  };
}

function namesOf(context: PlanContext): ReadonlyMap<string, Message> {
  const { vessels, fixtures } = context.kitchen;
  const burners = burnersOf(context.kitchen);
  return new Map([
    ...fixtures.map(({ id, name }) => [id, asWritten(name)] as const),
    ...burners.map(({ id, name }) => [id, message('plan.burner', { burner: name })] as const),
    ...vessels.map(({ id, name }) => [id, asWritten(name)] as const),
  ]);
}

/** One line on what the plan took from earlier runs; none when it took nothing. */
export function calibrationNotices(context: PlanContext): readonly Message[] {
  const { calibration } = context;
  if (!calibration) return [];
  const names = namesOf(context);
  const factors = (
    what: 'boil' | 'glow' | 'heat-up' | 'cool',
    by: Readonly<Record<string, CalibrationFactor>> = {},
  ): readonly Message[] =>
    Object.entries(by).map(([id, { mean }]) =>
      message(`plan.calibration.${what}`, {
        name: names.get(id) ?? asWritten(id),
        percent: (mean - 1) * PERCENT,
      }),
    );
  const told = [
    ...factors('boil', calibration.boil),
    ...factors('glow', calibration.glow),
    ...factors('heat-up', calibration.heatUp),
    ...factors('cool', calibration.cool),
    ...(calibration.flowLMin
      ? [message('plan.calibration.flow', { flowLMin: calibration.flowLMin.mean })]
      : []),
    ...(calibration.reach
      ? [message('plan.calibration.reach', { percent: calibration.reach.mean * PERCENT })]
      : []),
  ];
  return [message('plan.notice.calibration', { told })];
}
