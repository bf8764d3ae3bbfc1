import appliances from '../../../../shared/appliances.json';
import burners from '../../../../shared/burners.json';
import burns from '../../../../shared/burns.json';
import materials from '../../../../shared/materials.json';
import type { BurnerType, Material, VesselBody } from '../../kitchen/index.ts';
import type { Band } from '../../quantity/index.ts';

// The rows of the physical tables that a plan looks up by ids of the kitchen file.

export type BurnerRow = (typeof burners.rows)[number];

/** The row of a burner that can glow; none for induction. */
export function burnerRow(type: BurnerType): BurnerRow | undefined {
  return burners.rows.find((row) => row.type === type);
}

/** Contact angle of water on a material, degrees. */
export function contactDeg(material: Material): number {
  const row = materials.rows.find((one) => one.id === material);
  if (!row) throw new RangeError(`material is "${material}"; allowed: a row of materials. Add it.`);
  return row.contactDeg.typical;
}

/** Heat capacity (as litres of water) and losses of a vessel's body. */
export function vesselBody(body: VesselBody): {
  readonly bodyWaterL: number;
  readonly lossWK: Band;
  readonly evaporationW: Band;
} {
  const row = appliances.bodies.find((one) => one.body === body);
  if (!row) throw new RangeError(`body is "${body}"; allowed: a row of appliances. Add it.`);
  return row;
}

/** Share of a burner's energy that reaches a vessel on it. */
export function hobEfficiency(type: BurnerType): Band {
  const gas = isGas(type);
  const id = gas ? 'gas' : type === 'portable-plate' ? 'solid-plate' : type;
  const row = appliances.hobs.find((one) => one.hob === id);
  if (!row) throw new RangeError(`hob is "${type}"; allowed: a row of appliances. Add it.`);
  return row.efficiency;
}

export function isGas(type: BurnerType): boolean {
  return type.startsWith('gas') || type === 'commercial-open';
}

/** Contact long enough to count as touching it by mistake and holding on, s. */
const TOUCH_S = 60;

/** A surface below this may be touched for a minute, °C. */
export function touchC(kind: string): number {
  const row = burns.touch.find((one) => one.kind === kind && one.contactS === TOUCH_S);
  if (!row) throw new RangeError(`kind is "${kind}"; allowed: a row of burns. Add it.`);
  return row.tempC.low;
}

function normalCycle() {
  const row = appliances.cycles.find((one) => one.cycle === 'normal');
  if (!row) throw new RangeError('cycle is "normal"; allowed: a row of appliances. Add it.');
  return row;
}

/** Usual self-clean cycle where the manual's length is not told. */
export const NORMAL_CYCLE = normalCycle();
export const NORMAL_CYCLE_MIN = NORMAL_CYCLE.cycleMin;
export const HIGHEST = appliances.highest;
