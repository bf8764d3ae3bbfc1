import { unkeyed } from '../../messages/temporary.ts';
import type { Fixture } from '../../kitchen/index.ts';
import type { StepDraft, PlanContext } from '../context/step-draft.ts';
import { isGas } from '../estimates/index.ts';
import type { ShoppingItem, StepKind, Totals } from '../model/types.ts';
import { surfaceM2 } from '../context/work-times.ts';

/** A jug that one hand lifts, L: common practice, no published source. */
const JUG_L = 2;
/** Cover material beyond the area itself, for overhang and cuts: common practice, no published source. */
const OVERHANG_SHARE = 0.2;

function item(id: string, name: string, amount: string, why: string): ShoppingItem {
  return { id, name: unkeyed(name), amount: unkeyed(amount), why: unkeyed(why) };
}

function squareMetres(area: number): string {
  return `${Number((area * (1 + OVERHANG_SHARE)).toFixed(1))} m²`;
}

/** Covers and liners, one item for each material they are made of. */
function coverItems(site: PlanContext): readonly ShoppingItem[] {
  const byWith = new Map<string, Fixture[]>();
  for (const fixture of site.kitchen.fixtures) {
    const choice = site.choices.get(fixture.id);
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
        ? `for ${bowls} ${bowls === 1 ? 'bowl' : 'bowls'}`
        : area > 0
          ? squareMetres(area)
          : 'to size';
    const name = coverWith.charAt(0).toUpperCase() + coverWith.slice(1);
    return item(
      `cover-${at + 1}`,
      name,
      amount,
      `For ${fixtures.map((one) => one.name).join(', ')}.`,
    );
  });
}

type Needs = {
  readonly pours: boolean;
  readonly hot: boolean;
  readonly gas: boolean;
  readonly high: boolean;
};

const HIGH_KINDS: readonly Fixture['kind'][] = ['hood', 'cupboard', 'fridge', 'freezer'];
const HOT_KINDS: ReadonlySet<StepKind> = new Set(['glow', 'self-clean', 'high-heat']);

function needsOf(site: PlanContext, drafts: readonly StepDraft[]): Needs {
  const { fixtures } = site.kitchen;
  const has = (holds: (kind: StepKind) => boolean) => drafts.some(({ step }) => holds(step.kind));
  return {
    pours: has((kind) => kind === 'pour'),
    hot: has((kind) => HOT_KINDS.has(kind)),
    gas:
      [...site.burners.values()].some(({ burner }) => isGas(burner.type)) ||
      fixtures.some((one) => one.kind === 'oven' && one.heat === 'gas'),
    high: fixtures.some(({ kind }) => HIGH_KINDS.includes(kind)),
  };
}

function waterItems(site: PlanContext, totals: Totals): readonly ShoppingItem[] {
  const jugs = Math.max(1, Math.ceil((site.filledL * site.kitchen.household.people) / JUG_L));
  const coldL = Math.ceil(totals.coldL.typical);
  return [
    ...site.kettles
      .filter(({ toBuy }) => toBuy)
      .map(({ vessel }) =>
        item(
          'kettle',
          `Electric kettle, ${vessel.maxFillL} L, ${vessel.ratedW} W`,
          '1',
          'The kitchen names no kettle that can be poured from.',
        ),
      ),
    item(
      'jugs',
      `Cold-water jugs of ${JUG_L} L`,
      String(jugs),
      `About ${coldL} L of cold water follow the boiling water.`,
    ),
    item('mop', 'Mop, bucket and floor towels', '1 set', 'The floor gets wet after each kettle.'),
  ];
}

function safetyItems({ pours, hot, gas, high }: Needs, pairs: string): readonly ShoppingItem[] {
  const gloves = 'Heat-proof waterproof gloves, long';
  const extinguisher = 'Fire extinguisher for kitchens, or a fire blanket';
  const carbon = 'Flames and burning grease give carbon monoxide.';
  const ladder = 'High places are reached from a ladder, not from a chair.';
  return [
    ...(pours || hot ? [item('gloves', gloves, pairs, 'Boiling water and hot metal.')] : []),
    item('rubber-gloves', 'Rubber gloves and eye cover', pairs, 'Cleaners.'),
    ...(hot ? [item('extinguisher', extinguisher, '1', 'Glow and oven heat.')] : []),
    ...(gas || hot ? [item('co-alarm', 'CO alarm, tested', '1', carbon)] : []),
    item('smoke-alarm', 'Smoke alarm, tested', '1', 'It stays in place, not disabled.'),
    ...(high ? [item('ladder', 'Step ladder', '1', ladder)] : []),
  ];
}

/** What to buy and gather, with amounts from the plan. */
export function shoppingOf(
  site: PlanContext,
  drafts: readonly StepDraft[],
  totals: Totals,
): readonly ShoppingItem[] {
  const needs = needsOf(site, drafts);
  const { people } = site.kitchen.household;
  const until = 'Clean things stand on them until the counters are done.';
  const cleaners = 'Washing-up liquid, brushes, scrubbers, vacuum';
  return [
    ...(needs.pours ? waterItems(site, totals) : []),
    ...safetyItems(needs, `${people} ${people === 1 ? 'pair' : 'pairs'}`),
    item('towels', 'Clean towels or a sheet', '2', until),
    item('cleaning', cleaners, '1 set', 'Cleaning from top to bottom.'),
    ...coverItems(site),
    item('labels', 'Labels or tape in three colours', '1 set', 'Meat, dairy and neutral places.'),
  ];
}
