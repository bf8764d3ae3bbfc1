import type { Fixture, SurfaceFacts } from '../../kitchen/index.ts';

const WOOD: readonly string[] = ['wood', 'raw-wood'];

/** What can be told of the use of a fixture, where it can matter. */
export function factsToTell(fixture: Fixture): readonly (keyof SurfaceFacts)[] {
  switch (fixture.kind) {
    case 'sink':
      return WOOD.includes(fixture.material) ? ['varnished'] : [];
    case 'counter':
    case 'table':
      return WOOD.includes(fixture.material) ? ['varnished', 'kneaded', 'hotFood'] : ['hotFood'];
    case 'cupboard':
    case 'drawer':
      return ['hotFood'];
    default:
      return [];
  }
}
