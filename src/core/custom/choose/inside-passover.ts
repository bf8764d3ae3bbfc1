import type { MethodId } from '../../kitchen/index.ts';
import { message } from '../../messages/index.ts';
import type { Choice, ChosenMethod, ChosenPart } from '../model/types.ts';
import { citation, sourceState } from '../table/sources.ts';

const SOURCE = 'oc-452-1';
const BY_WATER: readonly MethodId[] = ['pour', 'immerse', 'steam', 'boil-over'];
/** What people still walk up to is covered; the rest is closed and kept out of use. */
const COVERED: readonly MethodId[] = ['pour'];

const RESTS_ON = { source: citation(SOURCE), sourceState: sourceState(SOURCE) } as const;

function closedPart(part: ChosenPart): ChosenPart {
  const { minutes: _none, ...rest } = part;
  const reason = message('custom.inside-passover.reason');
  return { ...rest, method: 'not-purged', within: false, reason, ...RESTS_ON };
}

/** Parts by water are closed up with the rest; one that was answered is done, by itself where its fixture is not. */
function closedParts(parts: readonly ChosenPart[], isShut: boolean): readonly ChosenPart[] {
  return parts.map((part) => {
    if (!BY_WATER.includes(part.method)) return part;
    if (!part.overriddenBy) return closedPart(part);
    return isShut ? { ...part, within: false } : part;
  });
}

/**
 * Inside Passover nothing is purged by water (Rema 452:1): what would be is
 * covered or closed up, unless the household was told otherwise about it.
 */
export function closedUp({ method: planned, ...choice }: Choice): Choice {
  const isShut = BY_WATER.includes(planned.method) && !planned.overriddenBy;
  const parts = planned.parts && closedParts(planned.parts, isShut);
  const withParts: ChosenMethod = { ...planned, ...(parts && { parts }) };
  if (!isShut) return { ...choice, method: withParts };
  const { minutes: _none, times: _once, stone: _cold, term: _by, ...rest } = withParts;
  const id = `ask-${planned.fixture}-inside-passover`;
  return {
    ...choice,
    method: {
      ...rest,
      method: COVERED.includes(planned.method) ? 'cover' : 'not-purged',
      cover: true,
      reason: message('custom.inside-passover.reason'),
      ...RESTS_ON,
      checked: true,
      wouldChange: message('custom.inside-passover.would-change'),
      question: id,
    },
    questions: [
      {
        id,
        fixture: planned.fixture,
        ask: message('custom.inside-passover.ask'),
        why: message('custom.inside-passover.why'),
        untilThen: message('custom.inside-passover.until-then'),
        about: 'ruling',
      },
      ...choice.questions,
    ],
  };
}
