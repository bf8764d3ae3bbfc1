import { purchaseMessage, type CoverPlan } from '../../covering/index.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Fixture, PartId } from '../../kitchen/index.ts';
import type { Plan, ShoppingItem } from '../../plan/index.ts';
import type { UtensilPlan } from '../../utensils/index.ts';
import { coverWithOf, onlyIfSaid, waitsFor } from './open-answers.ts';

/** Where in a shop, or in a house, one looks for it. */
export type ProductGroup = 'water' | 'hands' | 'room' | 'cleaning' | 'covers' | 'parts' | 'marks';

/** In the order of the list. */
export const PRODUCT_GROUPS = [
  'water',
  'hands',
  'room',
  'cleaning',
  'covers',
  'parts',
  'marks',
] as const satisfies readonly ProductGroup[];

/** One product: all that is needed of it, for all that it is needed for. */
export type Product = {
  /** Holds from plan to plan, so that a tick stays. */
  readonly id: string;
  readonly group: ProductGroup;
  readonly name: Message;
  /** Absent: the name says it. */
  readonly amount?: Message;
  readonly reasons: readonly Message[];
  /** Used once: it may be lent instead of bought. */
  readonly borrowed: boolean;
  /**
   * `needed`: buy it. `wait`: an answer that is still open may make it needless. `only-if-said`:
   * the plan does without, an answer may ask for it.
   */
  readonly when: 'needed' | 'wait' | 'only-if-said';
};

const GROUP_OF: Readonly<Record<string, ProductGroup>> = {
  kettle: 'water',
  jugs: 'water',
  mop: 'water',
  stone: 'water',
  gloves: 'hands',
  'rubber-gloves': 'hands',
  extinguisher: 'room',
  'co-alarm': 'room',
  'smoke-alarm': 'room',
  ladder: 'room',
  towels: 'cleaning',
  cleaning: 'cleaning',
  labels: 'marks',
};

/** Used for a few days and given back as it was; a kettle that is lent is purged before it pours. */
const LENT: ReadonlySet<string> = new Set(['kettle', 'mop', 'ladder', 'stone']);

function plain({ id, name, amount, why }: ShoppingItem, group: ProductGroup): Product {
  const borrowed = LENT.has(id);
  return { id, group, name, amount, reasons: [why], borrowed, when: 'needed' };
}

/** What a purchase leaves out: nobody measured it, or it lies on no roll. */
function notCut(fixtures: readonly Fixture[], { unmeasured, tooLarge }: CoverPlan) {
  const ids = new Set(fixtures.map(({ id }) => id));
  return [
    ...unmeasured
      .filter(({ fixture }) => ids.has(fixture))
      .map(({ name }) => message('covers.unmeasured', { name })),
    ...tooLarge
      .filter(({ fixture }) => ids.has(fixture))
      .map(({ name, widthM, lengthM }) => message('covers.too-large', { name, widthM, lengthM })),
  ];
}

/** Covers: what is cut from rolls as its cut plan says, the rest as the plan tells it. */
function coverProducts(plan: Plan, covers: CoverPlan): readonly Product[] {
  const items = plan.shopping.filter(({ id }) => id.startsWith('cover-'));
  const waiting = waitsFor(plan);
  return items.map((item) => {
    const coverWith = coverWithOf(item);
    const group = covers.groups.find((one) => one.coverWith === coverWith);
    const fixtures = plan.kitchen.fixtures.filter(({ name }) =>
      (item.why.params['fixtures'] as readonly string[] | undefined)?.includes(name),
    );
    const waits = fixtures.length > 0 && fixtures.every(({ id }) => waiting.has(id));
    return {
      id: `cover-${coverWith ?? item.id}`,
      group: 'covers',
      name: group ? purchaseMessage(group) : item.name,
      ...(!group && { amount: item.amount }),
      reasons: [item.why, ...(group ? notCut(fixtures, covers) : [])],
      borrowed: false,
      when: waits ? 'wait' : 'needed',
    };
  });
}

/** New parts of one kind in one line, with how many and for what. */
function partProducts({ methods, kitchen }: Plan): readonly Product[] {
  const byPart = new Map<PartId, { readonly names: string[]; waits: number }>();
  for (const { fixture, parts = [] } of methods) {
    const name = kitchen.fixtures.find(({ id }) => id === fixture)?.name ?? fixture;
    for (const { part, method, question } of parts) {
      if (method !== 'replace') continue;
      const found = byPart.get(part) ?? { names: [], waits: 0 };
      found.names.push(name);
      found.waits += question === undefined ? 0 : 1;
      byPart.set(part, found);
    }
  }
  return [...byPart].map(([part, { names, waits }]) => ({
    id: `part-${part}`,
    group: 'parts',
    name: message('plan.buy.parts', { parts: [message(`steps.part.${part}`)] }),
    amount: message('handouts.shopping.sets', { sets: names.length }),
    reasons: [message('handouts.shopping.part-why', { fixtures: names })],
    borrowed: false,
    when: waits === names.length ? 'wait' : 'needed',
  }));
}

/** A pot for the utensils, where none that is told boils for them. */
function potProducts(utensils: UtensilPlan | undefined): readonly Product[] {
  if (!utensils || utensils.pot || utensils.unfit.length === 0) return [];
  const leastPotL = Math.max(...utensils.unfit.map((one) => one.leastPotL));
  return [
    {
      id: 'pot',
      group: 'water',
      name: message('handouts.shopping.pot'),
      amount: message('handouts.shopping.pot-size', { leastPotL }),
      reasons: [message('utensils.no-pot')],
      borrowed: true,
      when: 'needed',
    },
  ];
}

/** What only an answer would ask for. */
function askedProducts(plan: Plan): readonly Product[] {
  return onlyIfSaid(plan).map(({ id, group, name, fixtures }) => ({
    id,
    group,
    name,
    reasons: [message('plan.buy.cover.why', { fixtures })],
    borrowed: LENT.has(id),
    when: 'only-if-said' as const,
  }));
}

/**
 * All there is to buy and gather, product by product.
 * @param covers how covers are cut; what is cut from a roll is bought as it says
 */
export function productsOf(
  plan: Plan,
  covers: CoverPlan,
  utensils?: UtensilPlan,
): readonly Product[] {
  const simple = plan.shopping.flatMap((item) => {
    const group = GROUP_OF[item.id];
    return group ? [plain(item, group)] : [];
  });
  const all = [
    ...simple,
    ...potProducts(utensils),
    ...coverProducts(plan, covers),
    ...partProducts(plan),
    ...askedProducts(plan),
  ];
  return PRODUCT_GROUPS.flatMap((group) => all.filter((one) => one.group === group));
}
