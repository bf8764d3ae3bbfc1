import { isGas } from '../../kitchen/index.ts';
import { mapBand, SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { vesselResource } from '../context/demands.ts';
import { boilingVessels, type PlanContext } from '../context/plan-context.ts';
import type { StepDraft } from '../context/step-draft.ts';
import { aroundPlanned } from '../pours/index.ts';
import type { PourTotal } from '../steps/purge.ts';
import {
  calibratedOven,
  OVEN_DUTY_SHARE,
  estimateHighHeat,
  estimateSelfClean,
  sumBands,
} from '../estimates/index.ts';
import type { Totals } from '../model/index.ts';

/** Cold water over a fixture for each litre of boiling water over it: common practice, no published source. */
const COLD_PER_HOT = 1;

type Energy = { electric: number; gas: number };

function heatEnergy(context: PlanContext): Energy {
  const sum: Energy = { electric: 0, gas: 0 };
  for (const { burner, method, minutes, estimate } of context.burners.values()) {
    if (method !== 'glow' && method !== 'light-heat') continue;
    const litS = minutes * SECONDS_PER_MINUTE + (estimate?.glowS.typical ?? 0);
    sum[isGas(burner.type) ? 'gas' : 'electric'] +=
      (burner.ratedW / 1000) * (litS / SECONDS_PER_HOUR);
  }
  for (const fixture of context.kitchen.fixtures) {
    const method = context.choices.get(fixture.id)?.method;
    if (fixture.kind !== 'oven' || !method) continue;
    const heat =
      method.method === 'self-clean'
        ? estimateSelfClean(fixture)
        : method.method === 'light-heat' || method.method === 'glow'
          ? calibratedOven(
              estimateHighHeat(method.minutes ?? 0),
              context.calibration?.heatUp?.[fixture.id],
              undefined,
            )
          : undefined;
    if (!heat) continue;
    const onS = method.method === 'self-clean' ? heat.holdS : heat.heatS.typical + heat.holdS;
    sum[fixture.heat] += (fixture.ratedW / 1000) * OVEN_DUTY_SHARE * (onS / SECONDS_PER_HOUR);
  }
  return sum;
}

/** Water, energy and hands of the whole plan. */
export function totalsOf(
  context: PlanContext,
  drafts: readonly StepDraft[],
  pours: readonly PourTotal[],
): Totals {
  const sum = heatEnergy(context);
  const boiled = drafts.filter(({ step }) => step.kind === 'boil' || step.kind === 'boil-over');
  for (const { step } of boiled) {
    const picture = step.picture;
    if (picture?.kind !== 'kettle') continue;
    const kettle = boilingVessels(context).find(
      (one) => step.demands[vesselResource(one)] !== undefined,
    );
    const boil = kettle && context.boils.get(kettle.id);
    if (boil) sum[boil.fuel] += boil.energyKWh;
  }
  const hotL = sumBands(pours.map(({ litres }) => litres));
  return {
    hotL,
    coldL: mapBand(hotL, (litres) => litres * COLD_PER_HOT),
    kettles: sumBands(pours.map(({ kettles, planned }) => aroundPlanned(kettles, planned))),
    electricityKWh: sum.electric,
    gasKWh: sum.gas,
    handsOnS: drafts
      .filter(({ step }) => step.attention === 'hands')
      .reduce((total, { step }) => total + step.durationS.typical, 0),
  };
}
