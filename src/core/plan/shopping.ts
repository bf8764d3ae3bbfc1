import type { Fixture } from '../kitchen/index.ts';
import type { Draft, Site } from './draft.ts';
import { isGas } from './reckon/index.ts';
import type { ShoppingItem, Totals } from './types.ts';
import { surfaceM2 } from './work-times.ts';

/** A jug that one hand lifts, L: common practice, no published source. */
const JUG_L = 2;
/** Cover material beyond the area itself, for overhang and cuts: common practice, no published source. */
const OVERHANG_SHARE = 0.2;

function item(id: string, name: string, amount: string, why: string): ShoppingItem {
  return { id, name, amount, why };
}

function squareMetres(area: number): string {
  return `${Number((area * (1 + OVERHANG_SHARE)).toFixed(1))} m²`;
}

/** Covers and liners, one item for each material they are made of. */
function coverItems(site: Site): readonly ShoppingItem[] {
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

/** What to buy and gather, with amounts from the plan. */
export function shoppingOf(
  site: Site,
  drafts: readonly Draft[],
  totals: Totals,
): readonly ShoppingItem[] {
  const { household } = site.kitchen;
  const kinds = new Set(drafts.map(({ step }) => step.kind));
  const pours = kinds.has('pour');
  const hot = ['glow', 'self-clean', 'high-heat'].some((kind) => kinds.has(kind as never));
  const gas =
    [...site.burners.values()].some(({ burner }) => isGas(burner.type)) ||
    site.kitchen.fixtures.some((one) => one.kind === 'oven' && one.heat === 'gas');
  const people = `${household.people} ${household.people === 1 ? 'pair' : 'pairs'}`;
  const boiling = pours || kinds.has('boil-over');
  return [
    ...site.kettles
      .filter(({ toBuy }) => toBuy && pours)
      .map(({ vessel }) =>
        item(
          'kettle',
          `Electric kettle, ${vessel.maxFillL} L, ${vessel.ratedW} W`,
          '1',
          'The kitchen names no kettle that can be poured from.',
        ),
      ),
    ...(boiling || hot
      ? [
          item(
            'gloves',
            'Heat-proof waterproof gloves, long',
            people,
            'Boiling water and hot metal.',
          ),
        ]
      : []),
    item('rubber-gloves', 'Rubber gloves and eye cover', people, 'Cleaners.'),
    ...(pours
      ? [
          item(
            'jugs',
            `Cold-water jugs of ${JUG_L} L`,
            String(Math.max(1, Math.ceil((site.filledL * household.people) / JUG_L))),
            `About ${Math.ceil(totals.coldL.typical)} L of cold water follow the boiling water.`,
          ),
          item(
            'mop',
            'Mop, bucket and floor towels',
            '1 set',
            'The floor gets wet after each kettle.',
          ),
        ]
      : []),
    ...(hot
      ? [
          item(
            'extinguisher',
            'Fire extinguisher for kitchens, or a fire blanket',
            '1',
            'Glow and oven heat.',
          ),
        ]
      : []),
    ...(gas || hot
      ? [
          item(
            'co-alarm',
            'CO alarm, tested',
            '1',
            'Flames and burning grease give carbon monoxide.',
          ),
        ]
      : []),
    item('smoke-alarm', 'Smoke alarm, tested', '1', 'It stays in place, not disabled.'),
    item(
      'towels',
      'Clean towels or a sheet',
      '2',
      'Clean things stand on them until the counters are done.',
    ),
    item(
      'cleaning',
      'Washing-up liquid, brushes, scrubbers, vacuum',
      '1 set',
      'Cleaning from top to bottom.',
    ),
    ...coverItems(site),
    ...(site.kitchen.fixtures.some(({ kind }) =>
      ['hood', 'cupboard', 'fridge', 'freezer'].includes(kind),
    )
      ? [
          item(
            'ladder',
            'Step ladder',
            '1',
            'High places are reached from a ladder, not from a chair.',
          ),
        ]
      : []),
    item('labels', 'Labels or tape in three colours', '1 set', 'Meat, dairy and neutral places.'),
  ];
}
