import { message, type Message } from '../../messages/index.ts';
import type { Designation, Fixture, FixtureKind, Kitchen } from '../../kitchen/index.ts';

/** What a kitchen that has meat and dairy needs one of for each, or a word on how both use it. */
const FOR_EACH = [
  'oven',
  'cooktop',
  'sink',
  'drawer',
  'dishwasher',
  'microwave',
  'table',
] as const satisfies readonly FixtureKind[];

/** Something that both meat and dairy need and that cannot be marked for both. */
export type Clash = { readonly fixtures: readonly string[]; readonly text: Message };

/** Whether both meat and dairy are told of anywhere: places, or utensils with what they are for. */
function hasBoth({ fixtures, utensils = [] }: Kitchen): boolean {
  const told = new Set([...fixtures, ...utensils].map(({ designation }) => designation));
  return told.has('meat') && told.has('dairy');
}

function clashOf(kind: (typeof FOR_EACH)[number], fixtures: readonly Fixture[]): readonly Clash[] {
  const own = fixtures.filter((one) => one.kind === kind);
  const marked = new Set<Designation>(own.map(({ designation }) => designation));
  const missing = (['meat', 'dairy'] as const).filter((one) => !marked.has(one));
  const [first] = own;
  if (!first || missing.length === 0) return [];
  const names = own.map(({ name }) => name);
  const ids = own.map(({ id }) => id);
  const kindWord = message(`common.fixture-kind.${kind}`);
  if (own.length === 1) {
    const { name, designation } = first;
    const text = message('handouts.clash.only-one', {
      kind: kindWord,
      name,
      marking: message(`common.designation.${designation}`),
    });
    return [{ fixtures: ids, text }];
  }
  // Where nothing is decided yet there is nothing to clash.
  if (own.every(({ designation }) => designation === 'undecided')) return [];
  return missing.map((one) => ({
    fixtures: ids,
    text: message('handouts.clash.none-for', {
      kind: kindWord,
      names,
      marking: message(`common.designation.${one}`),
    }),
  }));
}

/** An oven and a cooktop in one appliance, marked for different food: steam and spills go from one to the other. */
function sharedRanges(fixtures: readonly Fixture[]): readonly Clash[] {
  return fixtures.flatMap((oven): readonly Clash[] => {
    if (oven.kind !== 'oven') return [];
    const top = fixtures.find(({ id }) => id === oven.sharesRangeWith);
    if (!top) return [];
    const two = [oven, top].map(({ designation }) => designation);
    if (!two.includes('meat') || !two.includes('dairy')) return [];
    return [
      {
        fixtures: [oven.id, top.id],
        text: message('handouts.clash.one-range', { oven: oven.name, cooktop: top.name }),
      },
    ];
  });
}

/**
 * What labels cannot settle: one oven, one sink, one drawer … in a kitchen that has meat and
 * dairy. It tells and asks; it decides nothing.
 */
export function markClashes(kitchen: Kitchen): readonly Clash[] {
  const { fixtures } = kitchen;
  return [
    ...(hasBoth(kitchen) ? FOR_EACH.flatMap((kind) => clashOf(kind, fixtures)) : []),
    ...sharedRanges(fixtures),
  ];
}
