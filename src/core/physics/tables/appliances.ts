import table from '../../../../shared/appliances.json';
import { OutOfRangeError, type Band } from '../../units/index.ts';

export type KettleBody = {
  readonly body: string;
  readonly bodyWaterL: number;
  readonly lossWK: Band;
  readonly evaporationW: Band;
};

export type CycleRow = {
  readonly cycle: string;
  readonly cycleMin: number;
  readonly heatMin: Band;
  readonly coolTauMin: Band;
  readonly cleanC: Band;
  readonly unlockC: Band;
};

function find<T>(rows: readonly T[], input: string, id: string, idOf: (row: T) => string): T {
  const row = rows.find((found) => idOf(found) === id);
  if (row) return row;
  throw new OutOfRangeError(input, id, rows.map(idOf).join(', '), 'Choose one of these.');
}

/**
 * Heat capacity (as water) and losses of a kettle by what its body is made of.
 * @throws OutOfRangeError
 */
export function kettleBody(body: string): KettleBody {
  return find<KettleBody>(table.bodies, 'body', body, (row) => row.body);
}

/**
 * Share of the energy used that reaches a kettle on this hob. A burner type
 * that starts with `gas` or `commercial` counts as gas.
 * @throws OutOfRangeError
 */
export function hobEfficiency(hob: string): Band {
  const gas = hob.startsWith('gas') || hob.startsWith('commercial');
  const id = gas ? 'gas' : hob === 'portable-plate' ? 'solid-plate' : hob;
  return find(table.hobs, 'hob', id, (row) => row.hob).efficiency;
}

/**
 * Lengths and temperatures of a self-clean cycle.
 * @throws OutOfRangeError
 */
export function cleanCycle(cycle: string): CycleRow {
  return find<CycleRow>(table.cycles, 'cycle', cycle, (row) => row.cycle);
}

/** An oven at its highest setting. */
export const HIGHEST_HEAT: {
  readonly heatMin: Band;
  readonly coolTauMin: Band;
  readonly settingC: Band;
  readonly openC: Band;
} = table.highest;
