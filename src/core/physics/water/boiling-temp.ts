import { OutOfRangeError } from '../../units/index.ts';
import { saturationTemp } from './saturation.ts';
import { standardPressure } from './standard-pressure.ts';

export type BoilingPlace = { readonly altitudeM?: number; readonly pressurePa?: number };

/**
 * Temperature of boiling water here, °C. Give the altitude, or the pressure
 * of a barometer at this place (not reduced to sea level); a barometer wins.
 * At sea level IF97 gives 99.974 °C, not 100: show it rounded.
 * @throws OutOfRangeError
 * Source: ISO 2533 and IAPWS-IF97.
 */
export function boilingTemp({ altitudeM, pressurePa }: BoilingPlace): { readonly tempC: number } {
  if (pressurePa !== undefined) return saturationTemp({ pressurePa });
  if (altitudeM === undefined) {
    throw new OutOfRangeError(
      'altitudeM',
      'not given',
      '-500 to 11000, or pressurePa',
      'Enter the altitude of the kitchen.',
    );
  }
  return saturationTemp(standardPressure({ altitudeM }));
}
