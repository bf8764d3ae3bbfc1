import { asWritten, message, type Message } from '../../messages/index.ts';
import { inEnglish, unkeyed } from '../../messages/temporary.ts';
import type { PlanContext } from '../context/step-draft.ts';
import { vesselResource } from '../context/demands.ts';
import type { CalibrationFactor, Step } from '../model/types.ts';

const S_MIN = 60;
const PERCENT = 100;

/** "4 min 20 s", "40 s". */
function length(seconds: number): string {
  const whole = Math.round(seconds);
  const min = Math.floor(whole / S_MIN);
  const s = whole % S_MIN;
  if (min === 0) return `${s} s`;
  return s === 0 ? `${min} min` : `${min} min ${s} s`;
}

function reports({ n }: CalibrationFactor): string {
  return n === 1 ? 'one report' : `${n} reports`;
}

/** What was learned about what a step uses, with the seconds expected; none where nothing was. */
function lessonOf(
  site: PlanContext,
  step: Step,
): { lesson: CalibrationFactor; what: string; s: number } | undefined {
  const { calibration: learned } = site;
  const { picture } = step;
  if (!learned) return undefined;
  if (step.kind === 'boil' || step.kind === 'boil-over') {
    const kettle = site.kettles.find((one) => step.demands[vesselResource(one)] !== undefined);
    const lesson = kettle && learned.boil?.[kettle.vessel.id];
    const s = kettle && site.boils.get(kettle.id)?.timeS.typical;
    return lesson && s ? { lesson, what: 'it boils in', s } : undefined;
  }
  if (step.kind === 'glow' && picture?.kind === 'burner') {
    const lesson = learned.glow?.[picture.burner];
    const s = site.burners.get(picture.burner)?.reckoned?.glowS.typical;
    return lesson && s ? { lesson, what: 'it glows after', s } : undefined;
  }
  const expected = step.stages
    .flatMap(({ timers }) => timers)
    .find(({ role }) => role === 'estimate');
  if (step.kind === 'high-heat' && picture?.kind === 'oven' && step.fixture !== undefined) {
    const lesson = learned.heatUp?.[step.fixture];
    return lesson && expected
      ? { lesson, what: 'it is at its highest after', s: expected.lengthS }
      : undefined;
  }
  if (step.kind === 'pour' && learned.flowLMin && expected)
    return { lesson: learned.flowLMin, what: 'this kettle is empty after', s: expected.lengthS };
  return undefined;
}

/** The step with a word on what it expects from earlier runs, where it does. */
export function withCalibration(site: PlanContext, step: Step): Step {
  const found = lessonOf(site, step);
  if (!found) return step;
  const { lesson, what, s } = found;
  const said = `From your last run: ${what} about ${length(s)} (${reports(lesson)}).`;
  return { ...step, reason: unkeyed(`${inEnglish(step.reason)} ${said}`.trim()) };
}

function namesOf(site: PlanContext): ReadonlyMap<string, Message> {
  const { vessels, fixtures } = site.kitchen;
  const burners = fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []));
  return new Map([
    ...fixtures.map(({ id, name }) => [id, asWritten(name)] as const),
    ...burners.map(({ id, name }) => [id, message('plan.burner', { burner: name })] as const),
    ...vessels.map(({ id, name }) => [id, asWritten(name)] as const),
  ]);
}

/** One line on what the plan took from earlier runs; none when it took nothing. */
export function calibrationNotices(site: PlanContext): readonly Message[] {
  const { calibration } = site;
  if (!calibration) return [];
  const names = namesOf(site);
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
