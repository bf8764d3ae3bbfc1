import { message, type Message } from '../../messages/index.ts';
import { LAST_HOT_DAYS, type LastHot } from '../context/last-hot.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';

/** Those of which the same was told with the same consequence, by name. */
type Told = Pick<LastHot, 'why' | 'written' | 'wallMs'> & { readonly names: string[] };

/** What was told of everything that rests in this plan. */
function toldOf({ kitchen, lastHots }: PlanContext, drafts: readonly StepDraft[]): readonly Told[] {
  const rests = drafts.map(({ step }) => step).filter(({ kind }) => kind === 'rest');
  const told = new Map<string, Told>();
  for (const { id, name } of [...kitchen.fixtures, ...kitchen.vessels]) {
    const last = lastHots.get(id);
    const resting = rests.some(
      ({ fixture, work }) => fixture === id || (work.on === 'vessel' && work.vessel.id === id),
    );
    if (!last || !resting) continue;
    const key = `${last.why} ${last.written}`;
    const one = told.get(key) ?? { ...last, names: [] };
    one.names.push(name);
    told.set(key, one);
  }
  return [...told.values()];
}

/** From when rests are planned, and what was told of a last hot use that is not counted. */
export function restNotices(
  context: PlanContext,
  drafts: readonly StepDraft[],
): readonly Message[] {
  const zone = context.kitchen.place?.zone ?? '';
  return toldOf(context, drafts).map(({ why, written, wallMs = 0, names }) => {
    const wall = written.replace('T', ' ');
    if (why === 'counts') return message('plan.notice.last-hot.counts', { names, wallMs, zone });
    if (why === 'long-ago')
      return message('plan.notice.last-hot.long-ago', { names, wall, mostDays: LAST_HOT_DAYS });
    return message(`plan.notice.last-hot.${why}`, { names, wall });
  });
}
