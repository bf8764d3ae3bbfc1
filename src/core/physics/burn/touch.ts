import { inRange, OutOfRangeError } from '../../units/index.ts';
import { TOUCH_THRESHOLDS } from '../tables/burns.ts';
import { material, type TouchKind } from '../tables/materials.ts';

const KINDS: readonly TouchKind[] = ['metal', 'mineral', 'plastic', 'wood'];

/** Class of burn thresholds of a material id or of a class itself; an unknown material counts as metal. */
function kindOf(id: string): TouchKind {
  const kind = KINDS.find((found) => found === id) ?? material(id).kind;
  return kind === 'unknown' ? 'metal' : kind;
}

/**
 * Temperature of a surface below which a touch of that length does not burn,
 * °C: the low end of the threshold, ln t linear in T between its rows.
 * @param material id of shared/materials.json, or metal, mineral, plastic, wood
 * @param contactS 1 to 28 800 s
 * @throws OutOfRangeError
 * Source: ISO 13732-1 (from memory, see shared/burns.json).
 */
export function touchThreshold(of: { readonly material: string; readonly contactS: number }): {
  readonly touchC: number;
} {
  const rows = TOUCH_THRESHOLDS.filter(({ kind }) => kind === kindOf(of.material));
  const last = rows.at(-1)?.contactS ?? 1;
  const contactS = inRange('contactS', of.contactS, 1, last);
  const at = Math.max(
    1,
    rows.findIndex((row) => row.contactS >= contactS),
  );
  const short = rows[at - 1];
  const long = rows[at];
  if (!short || !long) {
    throw new OutOfRangeError('material', of.material, KINDS.join(', '), 'Choose one of these.');
  }
  const share =
    (Math.log(contactS) - Math.log(short.contactS)) /
    (Math.log(long.contactS) - Math.log(short.contactS));
  return { touchC: short.tempC.low + share * (long.tempC.low - short.tempC.low) };
}
