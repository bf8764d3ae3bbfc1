import type { Kitchen } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
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
  const says = much.map(({ fixture, planned, litres }) =>
    message('plan.notice.much-water.fixture', {
      fixture: kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture,
      kettles: planned,
      litres: litres.typical,
    }),
  );
  return [message('plan.notice.much-water', { says })];
}
