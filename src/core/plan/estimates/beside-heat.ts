import type { Kitchen, MethodId, Oven } from '../../kitchen/index.ts';
import type { HeatPiece } from '../../physics/index.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { estimateHighHeat, estimateSelfClean, OVEN_DUTY_SHARE } from './ovens.ts';
import { pouringKettles } from './vessels.ts';

/** What heats the room besides the burners, and when these are lit after its start. */
export type BesideHeat = { readonly pieces: readonly HeatPiece[]; readonly litAtS: number };

/**
 * Of a kettle's power, what the room gets while water is boiled and poured:
 * half of the time it is on, half of its heat stays in the room, the rest runs
 * down the drain. Judgement, no published source.
 */
const BOILING_SHARE = 0.25;
/** Steam of a kettle over its boil and pour, kg/s: 3 % of 1.7 L in eight minutes. Judgement, no published source. */
const STEAM_KG_S = 1e-4;
/** Length of one step of the drawn cooling of an oven, s. */
const COOLING_STEP_S = 10 * SECONDS_PER_MINUTE;
/** An oven that has cooled this long gives the room little more, s. */
const COOLING_S = 4 * SECONDS_PER_HOUR;
const ROOM_C = 20;
/** The highest heat where no minutes are told, min; as the steps have it. */
const LONGEST_HEAT_MIN = 120;
/** Longest the room model answers for with its tail, s. */
const LONGEST_S = 24 * SECONDS_PER_HOUR;

type MethodOf = (
  fixture: string,
) => { readonly method: MethodId; readonly minutes?: number } | undefined;

type Fired = {
  readonly oven: Oven;
  readonly onS: number;
  /** From its end until its lock opens, s. */
  readonly coolS: number;
  readonly tauS: number;
};

/** Electric ovens that are fired; gas ovens take the place of a burner and are counted with them. */
function firedOvens(kitchen: Kitchen, methodOf: MethodOf): readonly Fired[] {
  return kitchen.fixtures.flatMap((oven): readonly Fired[] => {
    if (oven.kind !== 'oven') return [];
    const chosen = methodOf(oven.id);
    if (chosen?.method !== 'self-clean' && oven.heat === 'gas') return [];
    if (chosen?.method === 'self-clean') {
      const { holdS, coolS, hotC, openC } = estimateSelfClean(oven);
      const tauS = coolS.typical / Math.log((hotC - ROOM_C) / (openC - ROOM_C));
      return [{ oven, onS: holdS, coolS: coolS.typical, tauS }];
    }
    if (chosen?.method !== 'light-heat' && chosen?.method !== 'glow') return [];
    const { heatS, holdS, coolS, hotC, openC } = estimateHighHeat(
      chosen.minutes ?? LONGEST_HEAT_MIN,
    );
    const tauS = coolS.typical / Math.log((hotC - ROOM_C) / (openC - ROOM_C));
    return [{ oven, onS: heatS.typical + holdS, coolS: 0, tauS }];
  });
}

/** Heat of one oven that goes off at `offS`: what it is fed while hot, then what it has stored, less and less. */
function ovenPieces({ oven, onS, tauS }: Fired, offS: number): readonly HeatPiece[] {
  const heatW = oven.ratedW * OVEN_DUTY_SHARE;
  const on: HeatPiece = { fromS: offS - onS, toS: offS, heatW };
  const steps = Array.from({ length: COOLING_S / COOLING_STEP_S }, (_, i): HeatPiece => {
    const fromS = offS + i * COOLING_STEP_S;
    const middleS = (i + 0.5) * COOLING_STEP_S;
    return { fromS, toS: fromS + COOLING_STEP_S, heatW: heatW * Math.exp(-middleS / tauS) };
  });
  return [on, ...steps];
}

/**
 * What heats the room before and beside the burners of a plan: ovens, with the
 * burners lit so that the worst of both meets, and kettles on the boil. A range
 * whose oven is locked lights its burners when the lock opens.
 * @param minutes how long burners are lit in all
 */
export function besideHeat(kitchen: Kitchen, methodOf: MethodOf, minutes: number): BesideHeat {
  const litS = minutes * SECONDS_PER_MINUTE;
  const fired = firedOvens(kitchen, methodOf);
  const offS = Math.max(0, ...fired.map(({ onS }) => onS));
  const apart = fired.some(({ oven }) => oven.sharesRangeWith === undefined);
  const unlockS = Math.max(0, ...fired.map(({ coolS }) => coolS));
  const litAtS = apart ? Math.max(0, offS - litS) : offS + unlockS;
  const pours = kitchen.fixtures.some(({ id }) => methodOf(id)?.method === 'pour');
  const kettles = pours ? pouringKettles(kitchen).filter(({ burner }) => !burner) : [];
  const boiling = kettles.map(({ vessel }): HeatPiece => ({
    fromS: 0,
    toS: litAtS + litS,
    heatW: vessel.ratedW * (kitchen.supplyV / vessel.ratedV) ** 2 * BOILING_SHARE,
    moistureKgS: STEAM_KG_S,
  }));
  const pieces = [...fired.flatMap((one) => ovenPieces(one, offS)), ...boiling];
  const within = pieces.map((piece) => ({ ...piece, toS: Math.min(piece.toS, LONGEST_S) }));
  return { pieces: within.filter(({ fromS, toS }) => fromS < toS), litAtS };
}
