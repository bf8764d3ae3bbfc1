import { burnersOf, type Burner, type Kitchen, type Vessel } from '../../kitchen/index.ts';
import { asWritten } from '../../messages/index.ts';
import { boilTime, hobEfficiency, potLoss } from '../../physics/index.ts';
import type { Band } from '../../units/index.ts';
import { TABLE } from '../model/table.ts';
import type { PurgePot } from '../model/types.ts';
import { potOf } from './fit.ts';

/** A pot with what heats it. */
export type HeatedPot = PurgePot & {
  readonly vessel: string;
  readonly powerW: number;
  readonly efficiency: Band;
  /** At the boil, under its lid while it waits. */
  readonly lossW: Band;
  readonly potWaterL: number;
};

function heated(vessel: Vessel, burner: Burner): HeatedPot {
  const shape = potOf(vessel.maxFillL);
  return {
    ...shape,
    vessel: vessel.id,
    name: asWritten(vessel.name),
    volumeL: vessel.maxFillL,
    powerW: burner.ratedW,
    efficiency: hobEfficiency(burner.type),
    lossW: potLoss({ diameterM: shape.diameterM, heightM: shape.depthM, lid: true }).lossW,
    potWaterL: vessel.maxFillL * TABLE.pot.bodyWaterShare,
  };
}

/** The pots of a kitchen on their burners, the largest first. */
export function potsOf(kitchen: Kitchen): readonly HeatedPot[] {
  const burners = new Map(burnersOf(kitchen).map((burner) => [burner.id, burner]));
  return kitchen.vessels
    .filter(({ kind }) => kind === 'pot')
    .flatMap((vessel) => {
      const burner = vessel.burner === undefined ? undefined : burners.get(vessel.burner);
      return burner ? [heated(vessel, burner)] : [];
    })
    .toSorted((a, b) => b.volumeL - a.volumeL);
}

/** Losses of a pot that warms up grow with what it is warmer than the room, W/K. */
const BOIL_OVER_ROOM_K = 80;

/** From cold water to the boil under a lid, s. */
export function firstBoilS(pot: HeatedPot, kitchen: Kitchen): Band {
  return boilTime({
    volumeL: pot.volumeL,
    ratedW: pot.powerW,
    // A burner's plate is told at the mains it hangs on.
    ratedV: kitchen.supplyV,
    supplyV: kitchen.supplyV,
    startC: kitchen.tapColdC,
    altitudeM: kitchen.altitudeM,
    bodyWaterL: pot.potWaterL,
    lossWK: pot.lossW.typical / BOIL_OVER_ROOM_K,
    efficiency: pot.efficiency,
  }).timeS;
}
