import { isGas, type Fixture, type MethodId } from '../../kitchen/index.ts';

const RESTED: ReadonlySet<MethodId> = new Set<MethodId>([
  'glow',
  'light-heat',
  'self-clean',
  'pour',
  'immerse',
  'steam',
  'boil-over',
]);

/** Does this method purge, so that the fixture must rest before it? */
export function needsRest(method: MethodId): boolean {
  return RESTED.has(method);
}

export type Fuel = 'gas' | 'electric';

/** What heats a fixture; nothing for one without a heater. One gas burner makes a cooktop gas. */
export function fuelOf(fixture: Fixture): Fuel | undefined {
  if (fixture.kind === 'oven') return fixture.heat;
  if (fixture.kind !== 'cooktop') return undefined;
  return fixture.burners.some(({ type }) => isGas(type)) ? 'gas' : 'electric';
}
