import { calibrationOf } from '../../../../src/core/calibration/index.ts';
import { buildPlan, ranOut, type Plan } from '../../../../src/core/plan/index.ts';
import { simulateRun, type Fact, type Request, type RunView } from '../../../../src/core/run/index.ts';
import { kitchenOf } from '../../plan/support/plans.ts';
import { standing } from '../../run/support/finishing.ts';

const MIN_S = 60;
/** Wall times of the kitchens' zones: a Sunday, and a Thursday before a Sabbath. */
const SUNDAY_MS = Date.UTC(2026, 2, 1, 15);
const THURSDAY_MS = Date.UTC(2027, 2, 4, 17);

/** A note, a pause, a kettle that ran out, a power cut and a doubt, each once. */
function disturbing(plan: Plan): (seen: RunView) => readonly Request[] {
  const told = new Set<string>();
  const once = (what: string, ...asked: readonly Request[]): readonly Request[] => {
    if (told.has(what)) return [];
    told.add(what);
    return asked;
  };
  return (seen) => {
    if (seen.status === 'held') return once('resume', { kind: 'resume' });
    const find = (kind: string, status: string) =>
      seen.steps.find((one) => one.step.kind === kind && one.status === status);
    if (find('clean', 'active') && !told.has('pause'))
      return once('pause', { kind: 'note', text: 'Tea – שבע דקות.' }, { kind: 'pause' });
    const pour = find('pour', 'active');
    const poured = find('pour', 'settled')?.step.fixture;
    if (pour && !told.has('ran out')) {
      const amendment = ranOut(plan, pour.step.id, 0.5, (id) =>
        seen.steps.some(({ step, attempt, status }) => step.id === id && (attempt > 1 || status !== 'waiting')),
      );
      if (amendment)
        return once('ran out', { kind: 'amend-plan', ...amendment });
    }
    if (pour && told.has('ran out'))
      return once('power', { kind: 'report-fault', fault: 'power-cut', step: pour.step.id });
    if (poured !== undefined && find('boil', 'ready') && told.has('power'))
      return once('doubt', { kind: 'report-recheck', fixture: poured, text: 'A cup was washed.' });
    return [];
  };
}

/** A purge with everything in it that can happen, left while a burner glows and opened by another page after a gap. */
export function openPurge(): readonly Fact[] {
  const plan = buildPlan(kitchenOf('flat-coils'));
  const { facts } = simulateRun(plan, { startWallMs: SUNDAY_MS, script: disturbing(plan) });
  const at = facts.findLastIndex(({ body }) => body.kind === 'step-started' && body.step.startsWith('glow-'));
  const tablet = standing(facts.slice(0, at + 3), plan);
  tablet.restarts(14 * MIN_S, undefined, 1);
  return tablet.facts;
}

/** A whole run around a Sabbath, by a plan that uses what an earlier run measured. */
export function restDayCalibrated(): readonly Fact[] {
  const kitchen = kitchenOf('flat-glass-230');
  const options = { startWallMs: THURSDAY_MS };
  const earlier = simulateRun(buildPlan(kitchen, options));
  const calibration = calibrationOf([{ facts: earlier.facts }], kitchen);
  return simulateRun(buildPlan(kitchen, { ...options, calibration })).facts;
}

export function wholeSephardic(): readonly Fact[] {
  const kitchen = kitchenOf('mountain-gas');
  const household = { ...kitchen.household, custom: 'sephardic' as const };
  return simulateRun(buildPlan({ ...kitchen, household }), { startWallMs: SUNDAY_MS }).facts;
}
