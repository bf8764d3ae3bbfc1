import type { Burner, Kitchen } from '../../kitchen/index.ts';
import type { PlanContext } from './plan-context.ts';
import type { Kettle } from '../estimates/index.ts';

export const HANDS = 'hands';
export const BURNERS_LIT = 'burners-lit';

export function vesselResource(kettle: Kettle): string {
  return `vessel-${kettle.id}`;
}

export function circuitResource(circuit: string): string {
  return `circuit-${circuit}`;
}

export function rangeResource(cooktop: string): string {
  return `range-${cooktop}`;
}

/**
 * Amperes that a heater draws from its circuit: its power goes with the square
 * of the voltage. Never more than the whole circuit: what draws more stands in
 * the notices, and nothing else may run beside it.
 */
export function circuitDemand(
  kitchen: Kitchen,
  circuit: string | undefined,
  ratedW: number,
): Readonly<Record<string, number>> {
  const found = kitchen.circuits.find(({ id }) => id === circuit);
  if (!found || ratedW <= 0) return {};
  return { [circuitResource(found.id)]: Math.min(found.ratingA, ratedW / found.voltsV) };
}

/** What a lit burner holds: a place among those lit, its range, its circuit. */
export function burnerDemand(
  context: PlanContext,
  burner: Burner,
): Readonly<Record<string, number>> {
  const cooktop = context.kitchen.fixtures.find(
    (one) => one.kind === 'cooktop' && one.burners.some(({ id }) => id === burner.id),
  );
  return {
    [BURNERS_LIT]: 1,
    ...(cooktop && { [rangeResource(cooktop.id)]: 1 }),
    ...circuitDemand(context.kitchen, burner.circuit, burner.ratedW),
  };
}

/** What a kettle on the boil holds. */
export function kettleDemand(
  context: PlanContext,
  kettle: Kettle,
): Readonly<Record<string, number>> {
  const { vessel, burner } = kettle;
  const drawnW = vessel.ratedW * (context.kitchen.supplyV / vessel.ratedV) ** 2;
  return {
    [vesselResource(kettle)]: 1,
    ...(burner
      ? burnerDemand(context, burner)
      : circuitDemand(context.kitchen, vessel.circuit, drawnW)),
  };
}
