import erfLibrary from '@stdlib/math-base-special-erf';
import heatIndexLibrary from 'heat-index';
import psychrolib from 'psychrolib';
import {
  erf,
  heatIndex,
  saturationPressure,
  standardPressure,
} from '../../../../src/core/physics/index.ts';
import { rows, type Row } from './row.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

// One point of each sweep of libraries.test.ts, so that the printed table shows them.
export const LIBRARY_ROWS: readonly Row[] = [
  ...rows(
    { group: 'standard atmosphere', source: 'psychrolib', confidence: 'reference library' },
    [0, 1500, 4000].map((altitudeM) => {
      const theirs = psychrolib.GetStandardAtmPressure(altitudeM);
      const ours = () => standardPressure({ altitudeM }).pressurePa;
      return [`p(${altitudeM} m), Pa`, theirs, theirs * 2e-5, ours] as const;
    }),
  ),
  ...rows(
    { group: 'saturation', source: 'psychrolib', confidence: 'reference library' },
    [20, 60, 95].map((tempC) => {
      const theirs = psychrolib.GetSatVapPres(tempC);
      const ours = () => saturationPressure({ tempC }).pressurePa;
      return [`psat(${tempC} °C), Pa`, theirs, theirs * 3e-4, ours] as const;
    }),
  ),
  ...rows(
    { group: 'heat index', source: 'heat-index', confidence: 'reference library' },
    [30, 36, 42].map((tempC) => {
      const theirs = heatIndexLibrary.heatIndex({ temperature: tempC, humidity: 60 });
      const ours = () => heatIndex({ tempC, humidityPct: 60 }).heatIndexC;
      return [`${tempC} °C, 60 %, °C`, theirs, 0.01, ours] as const;
    }),
  ),
  ...rows(
    { group: 'error function', source: 'stdlib', confidence: 'reference library' },
    [0.3, 1, 2.5].map((x) => [`erf(${x})`, erfLibrary(x), 1e-14, () => erf(x)] as const),
  ),
];
