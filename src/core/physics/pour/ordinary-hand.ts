import { band } from '../../units/index.ts';
import { handSpeed, USUAL_OVERLAP } from './hand-speed.ts';
import type { PourHand } from './pour-types.ts';

/** Stream of a household kettle poured low and slowly, L/min; common practice, no published source. */
const FLOW_LMIN = band(1.5, 2, 2.5);
/** Water that has just left the spout, °C: boiled at sea level and a little cooled. */
export const STREAM_C = 95;
/** Sheets of household sinks, mm: from the thick, slow one to the thin. Common practice, no published source. */
const SHEETS_MM = [1.2, 1, 0.8] as const;
/** Splash, drips, and what stays in the kettle; common practice, no published source. */
const LOSS_SHARE = 0.08;

const [slow, usual, quick] = SHEETS_MM.map(
  (sheetMm) => handSpeed({ flowLMin: FLOW_LMIN.typical, tempC: STREAM_C, sheetMm }).speedMS,
) as [number, number, number];

/**
 * Where a person starts, until the first kettles have taught their own pour:
 * the hand goes as slowly as a sink's steel sheet needs to follow the water
 * (handSpeed), for sheets of 1.2, 1 and 0.8 mm.
 */
export const ORDINARY_HAND: PourHand = {
  flowLMin: FLOW_LMIN,
  handSpeedMS: band(slow, usual, quick),
  overlapShare: USUAL_OVERLAP,
  lossShare: LOSS_SHARE,
};
