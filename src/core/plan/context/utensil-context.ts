import { burnersOf, isGas, type Kitchen } from '../../kitchen/index.ts';
import { SECONDS_PER_HOUR } from '../../units/index.ts';
import { buildUtensilPlan, type UtensilPlan } from '../../utensils/index.ts';
import { calibratedBoil, type BoilEstimate, type Kettle } from '../estimates/index.ts';
import type { CalibrationFactor } from '../model/index.ts';

/** The pot in which utensils are immersed, on its burner. */
export type PurgingPot = { readonly kettle: Kettle; readonly boil: BoilEstimate };

/** Utensils of a kitchen as they are treated, and the pot for it where there is one. */
export type UtensilContext = { readonly plan: UtensilPlan; readonly pot?: PurgingPot };

function potOf(
  kitchen: Kitchen,
  { pot, firstBoilS }: UtensilPlan,
  factors: Readonly<Record<string, CalibrationFactor>> = {},
): PurgingPot | undefined {
  const vessel = kitchen.vessels.find(({ id }) => id === pot?.vessel);
  const burner = burnersOf(kitchen).find(({ id }) => id === vessel?.burner);
  if (!pot || !firstBoilS || !vessel || !burner) return undefined;
  const kWhPerS = burner.ratedW / 1000 / SECONDS_PER_HOUR;
  return {
    kettle: { id: vessel.id, name: pot.name, vessel, burner, toBuy: false },
    boil: calibratedBoil(
      {
        timeS: firstBoilS,
        energyKWh: firstBoilS.typical * kWhPerS,
        fuel: isGas(burner.type) ? 'gas' : 'electric',
        // Nothing is poured from it.
        waitS: 0,
      },
      factors[vessel.id],
    ),
  };
}

/**
 * How the utensils of a kitchen are treated; none where it has none.
 * @param factors of boiling times by vessel, which earlier runs taught
 */
export function utensilContextOf(
  kitchen: Kitchen,
  factors?: Readonly<Record<string, CalibrationFactor>>,
): UtensilContext | undefined {
  if ((kitchen.utensils ?? []).length === 0) return undefined;
  const plan = buildUtensilPlan(kitchen);
  const pot = potOf(kitchen, plan, factors);
  return { plan, ...(pot && { pot }) };
}
