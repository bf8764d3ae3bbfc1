import { message, type Message } from '../../../../core/messages/index.ts';
import type { Fixture } from '../../../../core/kitchen/index.ts';
import type { RunView } from '../../../../core/run/index.ts';

/** What one wants to do in a kitchen while it rests. */
const NEEDS = ['eat', 'wash', 'heat'] as const;
type Need = (typeof NEEDS)[number];

const FOR: Readonly<Record<Need, readonly Fixture['kind'][]>> = {
  eat: ['table', 'counter'],
  wash: ['sink', 'dishwasher'],
  heat: ['cooktop', 'oven', 'microwave'],
};

/**
 * How a thing may be used now:
 * - `free`: purged or covered;
 * - `cold`: it rests, or has rested: nothing hot;
 * - `not-now`: it is hot, or in work;
 * - `before`: nobody has begun with it.
 */
type Use = 'free' | 'cold' | 'not-now' | 'before';
const USES = ['free', 'before', 'cold', 'not-now'] as const satisfies readonly Use[];

const USE_OF: Readonly<Record<RunView['fixtures'][number]['phase'], Use>> = {
  untouched: 'before',
  'to-clean': 'before',
  resting: 'cold',
  ready: 'cold',
  purging: 'not-now',
  hot: 'not-now',
  'not-purged': 'cold',
  'left-out': 'cold',
  covered: 'free',
  done: 'free',
};

/** What is done where meanwhile: a need, and a sentence for each use that some thing has. */
export type Meanwhile = { readonly need: Message; readonly lines: readonly Message[] };

type Thing = { readonly name: string; readonly use: Use };

/** Kettles and pots that the plan lets rest: from the cleaning to their own purge nothing hot is in them. */
function vesselsOf({ plan, steps }: RunView): readonly Thing[] {
  return plan.kitchen.vessels.flatMap(({ id, name }): readonly Thing[] => {
    const own = steps.filter(
      ({ step: { work } }) => work.on === 'vessel' && work.vessel.unit === id,
    );
    const rest = own.find(({ step }) => step.kind === 'rest');
    if (!rest) return [];
    if (own.every(({ status }) => status === 'settled')) return [{ name, use: 'free' }];
    return [{ name, use: rest.status === 'waiting' ? 'before' : 'cold' }];
  });
}

function thingsFor(view: RunView, need: Need): readonly Thing[] {
  const fixtures = view.plan.kitchen.fixtures.flatMap(({ id, kind, name }): readonly Thing[] => {
    const phase = view.fixtures.find((one) => one.id === id)?.phase;
    return phase && FOR[need].includes(kind) ? [{ name, use: USE_OF[phase] }] : [];
  });
  return need === 'heat' ? [...fixtures, ...vesselsOf(view)] : fixtures;
}

/**
 * Where to eat, wash and boil while the kitchen rests: told by how far each place is, and by
 * nothing else. What food may be where is for the household and its rabbi.
 */
export function meanwhileOf(view: RunView): readonly Meanwhile[] {
  return NEEDS.flatMap((need): readonly Meanwhile[] => {
    const things = thingsFor(view, need);
    if (things.length === 0) return [];
    const lines = USES.flatMap((use) => {
      const names = things.filter((one) => one.use === use).map(({ name }) => name);
      return names.length === 0 ? [] : [message(`run.meanwhile.${use}`, { names })];
    });
    const isNowhere = things.every(({ use }) => use === 'cold' || use === 'not-now');
    return [
      {
        need: message(`run.meanwhile.need.${need}`),
        lines:
          need === 'heat' && isNowhere ? [message('run.meanwhile.elsewhere'), ...lines] : lines,
      },
    ];
  });
}
