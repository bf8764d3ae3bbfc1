/**
 * Compared with libraries that other people wrote: psychrolib (ASHRAE),
 * heat-index (NWS), stdlib (error functions).
 */
import erfLibrary from '@stdlib/math-base-special-erf';
import erfcLibrary from '@stdlib/math-base-special-erfc';
import erfinvLibrary from '@stdlib/math-base-special-erfinv';
import fc from 'fast-check';
import heatIndexLibrary from 'heat-index';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import {
  boilingTemp,
  erf,
  erfc,
  erfcScaled,
  heatIndex,
  saturationPressure,
  standardPressure,
} from '../../../src/core/physics/index.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** Its formula is the same to four figures of the exponent. */
const PRESSURE_SHARE = 2e-5;
/** Two formulations of saturation: 0.017 % apart at 25 °C. */
const SATURATION_SHARE = 3e-4;

describe('against psychrolib', () => {
  it('agrees on the standard atmosphere from -500 to 9000 m', () => {
    for (let altitudeM = -500; altitudeM <= 9000; altitudeM += 250) {
      const theirs = psychrolib.GetStandardAtmPressure(altitudeM);
      const ours = standardPressure({ altitudeM }).pressurePa;
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(PRESSURE_SHARE);
    }
  });

  it('agrees on saturation pressure from 1 to 180 °C', () => {
    for (let tempC = 1; tempC <= 180; tempC += 1) {
      const theirs = psychrolib.GetSatVapPres(tempC);
      const ours = saturationPressure({ tempC }).pressurePa;
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(SATURATION_SHARE);
    }
  });

  it('boils where its saturation pressure is the pressure of the place', () => {
    for (let altitudeM = -400; altitudeM <= 5000; altitudeM += 200) {
      const { tempC } = boilingTemp({ altitudeM });
      const theirs = psychrolib.GetSatVapPres(tempC);
      expect(Math.abs(theirs / psychrolib.GetStandardAtmPressure(altitudeM) - 1)).toBeLessThan(
        SATURATION_SHARE,
      );
    }
  });
});

describe('against heat-index', () => {
  it('agrees from 27 to 44 °C and 14 to 84 % (it makes no adjustment outside)', () => {
    for (let temperature = 27; temperature <= 44; temperature += 1) {
      for (let humidity = 40; humidity <= 84; humidity += 4) {
        const theirs = heatIndexLibrary.heatIndex({ temperature, humidity });
        const ours = heatIndex({ tempC: temperature, humidityPct: humidity }).heatIndexC;
        expect(Math.abs(ours - theirs), `${temperature} °C ${humidity} %`).toBeLessThan(0.01);
      }
    }
  });
});

describe('against stdlib', () => {
  it('agrees on erf and erfc', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (x) => {
        expect(Math.abs(erf(x) - erfLibrary(x))).toBeLessThan(1e-14);
        expect(Math.abs(erfc(x) - erfcLibrary(x))).toBeLessThan(1e-14);
      }),
    );
  });

  it('undoes the library’s inverse', () => {
    for (let share = -0.99; share < 1; share += 0.01) {
      expect(erf(erfinvLibrary(share))).toBeCloseTo(share, 13);
    }
  });

  it('keeps the relative precision of erfc where it is tiny', () => {
    for (let x = 0.1; x < 26; x += 0.1) {
      expect(Math.abs(erfc(x) / erfcLibrary(x) - 1), `x ${x}`).toBeLessThan(1e-11);
    }
  });

  it('scales without overflow: 1/(x√π) for large x', () => {
    expect(erfcScaled(1e5) * 1e5 * Math.sqrt(Math.PI)).toBeCloseTo(1, 9);
  });
});
