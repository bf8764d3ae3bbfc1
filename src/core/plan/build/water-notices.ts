import { boundingBox } from '../../geometry/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { LOW_BOIL_C } from '../steps/pour.ts';
import type { PourTotal } from '../steps/purge.ts';

const CM2_PER_M2 = 1e4;

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

/** Spots that no kettle is planned for, each with how large and where, and what is asked about it. */
export function reachNotices(
  { kitchen }: PlanContext,
  drafts: readonly StepDraft[],
): readonly Message[] {
  return kitchen.fixtures.flatMap((one) => {
    const picture = drafts.find(({ step }) => step.kind === 'pour' && step.fixture === one.id)?.step
      .picture;
    if (picture?.kind !== 'lanes' || !picture.unreached) return [];
    const box = boundingBox(picture.outline);
    const spots = picture.unreached.map(({ areaM2, at: [x, y] }) =>
      message('plan.notice.spot', {
        areaCm2: areaM2 * CM2_PER_M2,
        leftM: x - box.xMinM,
        nearM: y - box.yMinM,
      }),
    );
    return [message('plan.notice.unreached', { fixture: one.name, spots })];
  });
}
