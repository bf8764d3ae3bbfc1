import type { Polygon } from '../../geometry/index.ts';
import type { Fixture, FixtureKind, Kitchen } from '../model/kitchen.ts';

/** Kinds that hang or hide and need not be drawn in the plan view. */
const UNDRAWN: ReadonlySet<FixtureKind> = new Set<FixtureKind>([
  'cupboard',
  'drawer',
  'fridge',
  'freezer',
  'microwave',
  'dishwasher',
  'warming-drawer',
  'hood',
]);

/** Whether a file may leave out the outline of such a fixture. */
export function mayBeUndrawn(kind: FixtureKind): boolean {
  return UNDRAWN.has(kind);
}

export function fixtureOf(kitchen: Kitchen, id: string): Fixture | undefined {
  return kitchen.fixtures.find((fixture) => fixture.id === id);
}

/** The outline of a fixture that is drawn in the plan view. */
export function outlineOf(fixture: Fixture): Polygon | undefined {
  return 'outline' in fixture ? fixture.outline : undefined;
}

/** Every outline that is drawn. */
export function drawnOutlines(kitchen: Kitchen): readonly Polygon[] {
  return kitchen.fixtures.flatMap((fixture) => {
    const outline = outlineOf(fixture);
    return outline ? [outline] : [];
  });
}
