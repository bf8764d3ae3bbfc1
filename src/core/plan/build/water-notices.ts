import type { Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { unreachedSpots } from '../pours/unreached-spots.ts';
import { LOW_BOIL_C } from '../steps/pour.ts';
import type { PourTotal } from '../steps/purge.ts';

/**
 * More kettles over one fixture than this is another kind of job: with one
 * kettle at six minutes a turn it is two and a half hours. Judgement, no
 * published source.
 */
const MUCH_KETTLES = 24;

/** Fixtures that take very many kettles, the worst first, and what makes them bearable: one notice for all. */
export function waterNotices(kitchen: Kitchen, pours: readonly PourTotal[]): readonly Message[] {
  const much = pours
    .filter(({ planned }) => planned > MUCH_KETTLES)
    .toSorted((a, b) => b.planned - a.planned);
  if (much.length === 0) return [];
  const says = much.map(({ told: { fixture }, planned, litres }) =>
    message('plan.notice.much-water.fixture', {
      fixture: kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture,
      kettles: planned,
      litres: litres.typical,
    }),
  );
  return [message('plan.notice.much-water', { says })];
}

/** Where water boils well below 100 °C people doubt that it boils. */
export function boilNotices(
  { boilingC }: PlanContext,
  drafts: readonly StepDraft[],
): readonly Message[] {
  const boils = drafts.some(({ step }) => step.kind === 'boil');
  return boils && boilingC < LOW_BOIL_C ? [message('plan.notice.boils-low', { boilingC })] : [];
}

/** What is asked about the spots that no kettle is planned for. */
export function reachNotices(
  { kitchen }: PlanContext,
  drafts: readonly StepDraft[],
): readonly Message[] {
  const steps = drafts.map(({ step }) => step);
  return kitchen.fixtures.flatMap(({ id, name }) => {
    const spots = unreachedSpots(steps, id);
    return spots.length > 0 ? [message('plan.notice.unreached', { fixture: name, spots })] : [];
  });
}
