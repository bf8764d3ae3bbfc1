import { inRange, OutOfRangeError } from '../../units/index.ts';
import { touchThreshold } from '../burn/touch.ts';
import { checkLump, lumpSeconds, steadyTempC, type Lump } from '../surface/lumped.ts';
import { burnerRow } from '../tables/burners.ts';
import { glowLump, type GlowInput } from './glow-time.ts';

/** A consumer may lean on it for so long: children and older people. ASTM C1055-20. */
const CONSUMER_CONTACT_S = 60;

export type CoolInput = GlowInput & {
  /** Temperature when it is turned off; default: the steady temperature, or the catalogue's. */
  readonly fromC?: number;
  /** What is touched: a material id, or a kind (metal, mineral, plastic, wood). Default: the catalogue's, else metal. */
  readonly material?: string;
  /** Length of the touch it must be safe for. */
  readonly contactS?: number;
  /** The temperature itself, instead of material and length. */
  readonly touchC?: number;
};

/** The body that stays hot: with a named burner its grate or glass, not the tips that glowed. */
function hotBody(of: CoolInput): { readonly body: Lump; readonly fromC: number } {
  const glowing = glowLump(of);
  const off = { ...glowing, powerW: 0 };
  if (of.burner === undefined) return { body: off, fromC: of.fromC ?? steadyTempC(glowing) };
  const row = burnerRow(of.burner);
  const scale = (of.ratedW ?? row.ratedW.typical) / row.ratedW.typical;
  const body = checkLump({
    ...off,
    areaM2: of.areaM2 ?? row.after.areaM2 * scale,
    heatCapacityJK: of.heatCapacityJK ?? row.after.heatCapacityJK * scale,
    emissivity: of.emissivity ?? row.after.emissivity,
  });
  return { body, fromC: of.fromC ?? row.after.fromC ?? steadyTempC(glowing) };
}

/**
 * Seconds from turning off until the burner may be touched. 0 when it already may.
 * @throws OutOfRangeError also when the room is as warm as the threshold
 * Source: lumped cooling by film and radiation; ISO 13732-1 threshold for a
 * contact of one minute (ASTM C1055 consumer contact).
 */
export function coolToTouch(of: CoolInput): {
  readonly timeS: number;
  readonly touchC: number;
  readonly fromC: number;
} {
  const { body, fromC } = hotBody(of);
  inRange('fromC', fromC, -30, 1300);
  const kind = of.material ?? (of.burner === undefined ? 'metal' : burnerRow(of.burner).after.kind);
  const contactS = of.contactS ?? CONSUMER_CONTACT_S;
  const touchC = of.touchC ?? touchThreshold({ material: kind, contactS }).touchC;
  inRange('touchC', touchC, 20, 400);
  if (fromC <= touchC) return { timeS: 0, touchC, fromC };
  const timeS = lumpSeconds(body, fromC, touchC);
  if (timeS === undefined) {
    throw new OutOfRangeError(
      'roomC',
      body.roomC,
      `below ${touchC} °C`,
      'It never cools to the touch in so warm a room.',
    );
  }
  return { timeS, touchC, fromC };
}
