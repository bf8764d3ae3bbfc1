import { message, type Message } from '../../messages/index.ts';
import type { CoverMaterial } from '../../custom/index.ts';
import { isGas, type Fixture } from '../../kitchen/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import type { ShoppingItem, StepKind, Totals } from '../model/index.ts';
import { surfaceM2 } from '../context/work-times.ts';
import { partName } from '../steps/parts.ts';

/** A jug that one hand lifts, L: common practice, no published source. */
const JUG_L = 2;
/** Cover material beyond the area itself, for overhang and cuts: common practice, no published source. */
const OVERHANG_SHARE = 0.2;

/** An item of the catalogue: its name and its reason stand there under its id. */
type ItemId =
  | 'mop'
  | 'gloves'
  | 'rubber-gloves'
  | 'extinguisher'
  | 'co-alarm'
  | 'smoke-alarm'
  | 'ladder'
  | 'towels'
  | 'cleaning'
  | 'labels'
  | 'stone';

function item(id: ItemId, amount: Message): ShoppingItem {
  return { id, name: message(`plan.buy.${id}`), amount, why: message(`plan.buy.${id}.why`) };
}

function count(number: number): Message {
  return message('plan.amount.count', { count: number });
}

/** Covers and liners, one item for each material they are made of. */
function coverItems(context: PlanContext): readonly ShoppingItem[] {
  const byWith = new Map<CoverMaterial, Fixture[]>();
  for (const fixture of context.kitchen.fixtures) {
    const choice = context.choices.get(fixture.id);
    if (!choice?.method.cover) continue;
    byWith.set(choice.coverWith, [...(byWith.get(choice.coverWith) ?? []), fixture]);
  }
  return [...byWith].map(([coverWith, fixtures], at) => {
    const area = fixtures.reduce((sum, fixture) => sum + surfaceM2(fixture), 0);
    const bowls = fixtures.reduce(
      (sum, one) => sum + (one.kind === 'sink' ? one.bowls.length : 0),
      0,
    );
    const amount =
      bowls > 0
        ? message('plan.amount.bowls', { bowls })
        : area > 0
          ? message('plan.amount.area', { areaM2: area * (1 + OVERHANG_SHARE) })
          : message('plan.amount.to-size');
    return {
      id: `cover-${at + 1}`,
      name: message('plan.buy.cover', { material: message(`custom.cover.${coverWith}`) }),
      amount,
      why: message('plan.buy.cover.why', { fixtures: fixtures.map(({ name }) => name) }),
    };
  });
}

/** New parts, one item a fixture. */
function partItems(context: PlanContext): readonly ShoppingItem[] {
  return context.kitchen.fixtures.flatMap(({ id, name }) => {
    const all = context.choices.get(id)?.method.parts ?? [];
    const parts = all
      .filter(({ method }) => method === 'replace')
      .map(({ part }) => partName(part));
    return parts.length === 0
      ? []
      : [
          {
            id: `parts-${id}`,
            name: message('plan.buy.parts', { parts }),
            amount: message('plan.amount.set'),
            why: message('plan.buy.parts.why', { fixture: name }),
          },
        ];
  });
}

type Needs = {
  readonly pours: boolean;
  readonly hot: boolean;
  readonly gas: boolean;
  readonly high: boolean;
};

const HIGH_KINDS: readonly Fixture['kind'][] = ['hood', 'cupboard', 'fridge', 'freezer'];

/** Is it reached from a ladder? A cupboard of which nothing is told may be high. */
function isHigh(fixture: Fixture): boolean {
  const low = fixture.kind === 'cupboard' && fixture.place === 'under-counter';
  return HIGH_KINDS.includes(fixture.kind) && !low;
}
const HOT_KINDS: ReadonlySet<StepKind> = new Set(['glow', 'self-clean', 'high-heat']);

function needsOf(context: PlanContext, drafts: readonly StepDraft[]): Needs {
  const { fixtures } = context.kitchen;
  const has = (holds: (kind: StepKind) => boolean) => drafts.some(({ step }) => holds(step.kind));
  return {
    pours: has((kind) => kind === 'pour'),
    hot: has((kind) => HOT_KINDS.has(kind)),
    gas:
      [...context.burners.values()].some(({ burner }) => isGas(burner.type)) ||
      fixtures.some((one) => one.kind === 'oven' && one.heat === 'gas'),
    high: fixtures.some((one) => isHigh(one)),
  };
}

function waterItems(context: PlanContext, totals: Totals): readonly ShoppingItem[] {
  const jugs = Math.max(1, Math.ceil((context.filledL * context.kitchen.household.people) / JUG_L));
  return [
    ...context.kettles
      .filter(({ toBuy }) => toBuy)
      .map(({ vessel: { maxFillL, ratedW } }) => ({
        id: 'kettle',
        name: message('plan.buy.kettle', { maxFillL, ratedW }),
        amount: count(1),
        why: message('plan.buy.kettle.why'),
      })),
    {
      id: 'jugs',
      name: message('plan.buy.jugs', { jugL: JUG_L }),
      amount: count(jugs),
      why: message('plan.buy.jugs.why', { coldL: Math.ceil(totals.coldL.typical) }),
    },
    item('mop', message('plan.amount.set')),
  ];
}

function safetyItems({ pours, hot, gas, high }: Needs, people: number): readonly ShoppingItem[] {
  const pairs = message('plan.amount.pairs', { pairs: people });
  return [
    ...(pours || hot ? [item('gloves', pairs)] : []),
    item('rubber-gloves', pairs),
    ...(hot ? [item('extinguisher', count(1))] : []),
    ...(gas || hot ? [item('co-alarm', count(1))] : []),
    item('smoke-alarm', count(1)),
    ...(high ? [item('ladder', count(1))] : []),
  ];
}

/** What to buy and gather, with amounts from the plan. */
export function shoppingOf(
  context: PlanContext,
  drafts: readonly StepDraft[],
  totals: Totals,
): readonly ShoppingItem[] {
  const needs = needsOf(context, drafts);
  const stones = [...context.choices.values()].some(({ method }) => method.stone);
  return [
    ...(needs.pours ? waterItems(context, totals) : []),
    ...safetyItems(needs, context.kitchen.household.people),
    item('towels', count(2)),
    item('cleaning', message('plan.amount.set')),
    ...coverItems(context),
    ...partItems(context),
    ...(stones ? [item('stone', message('plan.amount.set'))] : []),
    item('labels', message('plan.amount.set')),
  ];
}
