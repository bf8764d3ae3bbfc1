import type { ChosenMethod } from '../../custom/index.ts';
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

/** Does what is chosen for a fixture purge it after a rest? */
export function restsFirst({ method, rest }: Pick<ChosenMethod, 'method' | 'rest'>): boolean {
  return needsRest(method) && rest !== false;
}

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
