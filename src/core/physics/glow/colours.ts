import { inRange } from '../../units/index.ts';
import { luminance, tempOfLuminance } from './luminance.ts';

/** All solids glow visibly to a rested eye from here, °C (798 K). Draper 1847. */
export const DRAPER_C = 525;

/** Named colour scales disagree by 50 to 150 K for one word: always name the scale. */
export const COLOUR_SCALES = {
  stirling: {
    title: 'Stirling 1905',
    source: 'stirling-1905',
    rows: [
      [525, 'red just visible'],
      [699, 'dull red'],
      [800, 'dull cherry'],
      [900, 'full cherry'],
      [1000, 'clear cherry'],
      [1100, 'deep orange'],
      [1200, 'clear orange'],
      [1300, 'white'],
    ],
  },
  chapman: {
    title: 'Chapman',
    source: 'chapman-colours',
    rows: [
      [426, 'black red'],
      [594, 'very dark red'],
      [705, 'dark red'],
      [815, 'cherry red'],
      [871, 'light cherry'],
      [982, 'orange'],
      [1093, 'yellow'],
      [1315, 'white'],
    ],
  },
} as const;

/** Diffuse reflectance of dark burner metal. Common practice, no published source. */
const DARK_METAL = 0.15;
/** A patch is plainly seen from about this share above its surroundings (Weber contrast). Common practice, no published source. */
const SEEN_CONTRAST = 0.1;

/** Name of the colour at a temperature in a scale; undefined below its first row. */
export function colourName(
  tempC: number,
  scale: keyof typeof COLOUR_SCALES = 'stirling',
): string | undefined {
  return COLOUR_SCALES[scale].rows.filter(([fromC]) => fromC <= tempC).at(-1)?.[1];
}

/**
 * Temperature at which a burner's own light stands out in a room with this
 * much light, °C: its luminance is a tenth of what the dark metal reflects
 * (E·ρ/π). Never below the Draper point.
 * @param lux 0 to 20 000 lx on the burner (a lit kitchen 150 to 500, dimmed 20, dark 0)
 * @throws OutOfRangeError
 * Source: Planck's law and the CIE eye (luminance); reflectance and contrast
 * are common practice, no published source.
 */
export function draperPoint(of: { readonly lux: number; readonly emissivity?: number }): {
  readonly tempC: number;
  readonly luminanceCdM2: number;
} {
  const lux = inRange('lux', of.lux, 0, 20_000);
  const emissivity = of.emissivity ?? 1 - DARK_METAL;
  const needed = (SEEN_CONTRAST * lux * DARK_METAL) / Math.PI;
  const darkest = luminance({ tempC: DRAPER_C, emissivity }).luminanceCdM2;
  if (needed <= darkest) return { tempC: DRAPER_C, luminanceCdM2: darkest };
  return { ...tempOfLuminance({ luminanceCdM2: needed, emissivity }), luminanceCdM2: needed };
}
