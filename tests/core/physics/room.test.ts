import { afterAll, describe, expect, it } from 'vitest';
import {
  airCurve,
  burnersAtOnce,
  hoodCapture,
  roomHeat,
  type BurnersInput,
  type RoomInput,
  wallOfEffusivity,
  wallRates,
} from '../../../src/core/physics/index.ts';

const NO_HOOD = { capture: hoodCapture('none'), flowM3S: 0 };
/** 100 cubic feet a minute: the least hood of ASHRAE 62.2. */
const HOOD = { capture: hoodCapture('vented'), flowM3S: 0.0472 };
const SHUT = { areaM2: 0.5, heightM: 1, open: false };
const OPEN = { ...SHUT, open: true };
/** An ordinary kitchen: 10 m² of floor, 2.5 m high, plastered walls. */
const KITCHEN = { volumeM3: 25, wallAreaM2: 52, outdoorC: 20, startC: 22, windMS: 2 };
const room = (more: Partial<RoomInput>): RoomInput => ({
  ...KITCHEN,
  hood: NO_HOOD,
  window: SHUT,
  heat: [{ fromS: 0, toS: 2400, heatW: 4000 }],
  ...more,
});

describe('roomHeat', () => {
  it('keeps the energy: without walls or air exchange all heat stays in the air', () => {
    // The least wall and admittance that are answered take a few per cent.
    const { peakC } = roomHeat(
      room({
        wallAreaM2: 5,
        wallAdmittanceWM2K: 0.5,
        radiantShare: 0,
        leakPerH: 0,
        heat: [{ fromS: 0, toS: 60, heatW: 3000 }],
        startC: 20,
        untilS: 60,
      }),
    );
    const rise = (3000 * 60) / (25 * 1.184 * 1006);
    expect(peakC.typical - 20).toBeGreaterThan(rise * 0.93);
    expect(peakC.typical - 20).toBeLessThanOrEqual(rise);
  });

  it('stays as it was when nothing heats it and outside is as warm', () => {
    const { curve } = roomHeat(room({ heat: [], startC: 20, untilS: 3600 }));
    for (const { airC } of curve) expect(airC).toBeCloseTo(20, 9);
  });

  it('is cooler with hood, with window, and with both', () => {
    const peak = (more: Partial<RoomInput>) => roomHeat(room(more)).peakC.typical;
    const shut = peak({});
    expect(peak({ hood: HOOD })).toBeLessThan(shut);
    expect(peak({ window: OPEN })).toBeLessThan(shut);
    expect(peak({ hood: HOOD, window: OPEN })).toBeLessThan(peak({ hood: HOOD }));
  });

  it('heats a thick wall as the closed form does: 2q/e·√(t/π) (Incropera eq. 5.62)', () => {
    const e = 800;
    const wall = wallOfEffusivity(e);
    let layers: readonly number[] = wall.capacities.map(() => 0);
    const stepS = 5;
    for (let timeS = stepS; timeS <= 7200; timeS += stepS) {
      const rates = wallRates(wall, layers, 1000);
      layers = layers.map((tempC, i) => tempC + (rates[i] ?? 0) * stepS);
      if (timeS % 600 === 0) {
        const exact = ((2 * 1000) / e) * Math.sqrt(timeS / Math.PI);
        // The first layer is 5 √s thick: its mean lags its face. Tolerance 12 %, falling with time.
        expect(Math.abs((layers[0] ?? 0) / exact - 1), `${timeS} s`).toBeLessThan(
          0.12 * Math.sqrt(600 / timeS) + 0.01,
        );
      }
    }
  });

  it('draws at most 200 points and holds its band in order', () => {
    const { curve, peakC, peakHeatIndexC } = roomHeat(room({ hood: HOOD, window: OPEN }));
    expect(curve.length).toBeLessThanOrEqual(200);
    for (const band of [peakC, peakHeatIndexC]) {
      expect(band.low).toBeLessThanOrEqual(band.typical);
      expect(band.typical).toBeLessThanOrEqual(band.high);
    }
  });

  it('refuses a room of no size', () => {
    expect(() => roomHeat(room({ volumeM3: 0 }))).toThrow(/volumeM3 is 0/);
  });
});

describe('airCurve', () => {
  const gas = [{ fromS: 0, toS: 2400, gasW: 2900 }];
  const no2 = (more: object) =>
    airCurve({ volumeM3: 25, gas, hood: NO_HOOD, airChangesPerH: 0.5, pollutant: 'NO2', ...more });

  it('passes the one-hour value within minutes in a shut kitchen', () => {
    const [epa] = no2({}).limits.filter(({ id }) => id === 'epa-no2-1h');
    expect(epa?.exceeded).toBe(true);
    expect(epa?.passesAtS).toBeLessThan(400);
  });

  it('keeps one burner below it with hood on and window open', () => {
    const [epa] = no2({ hood: HOOD, airChangesPerH: 10 }).limits;
    expect(epa?.exceeded).toBe(false);
  });

  it('keeps CO of a burner in tune far below, and says so only of a burner in tune', () => {
    const { limits } = no2({ pollutant: 'CO' });
    const who = limits.find(({ id }) => id === 'who-co-1h');
    expect(who?.exceeded).toBe(false);
    // The high end is a burner out of tune: nine times as much.
    expect(who?.meanMgM3.high).toBeGreaterThan(5 * (who?.meanMgM3.typical ?? 0));
  });

  it('begins at the outdoor air and falls back towards it', () => {
    const { curve } = no2({ hood: HOOD, airChangesPerH: 10, untilS: 6 * 3600 });
    expect(curve[0]?.mgM3).toBe(0.02);
    // The walls take up a little of what comes in.
    expect(curve.at(-1)?.mgM3).toBeGreaterThan(0.019);
    expect(curve.at(-1)?.mgM3).toBeLessThanOrEqual(0.02);
  });
});

const ask = (more: Partial<BurnersInput>) =>
  burnersAtOnce({
    ...KITCHEN,
    hood: NO_HOOD,
    window: SHUT,
    burnerW: 2000,
    gas: false,
    minutes: 40,
    burners: 4,
    ...more,
  });
const GAS = { gas: true, burnerW: 2900 };

// The counts hold for this kitchen and these usual values only. Three gas burners miss the limit by
// 1 %; a capture of 0.3 or 0.75, or walls of admittance 5 or 7, move a count by one or two.
describe('burnersAtOnce', () => {
  it('allows two gas burners in this kitchen with hood and window; three pass the air limit narrowly', () => {
    const asMany = ask({ ...GAS, hood: HOOD, window: OPEN, most: 4 });
    expect(asMany.atOnce).toBe(2);
    expect(asMany.limitedBy).toBe('air');
  });

  it('allows two electric burners in this kitchen shut, and not three: heat', () => {
    const asMany = ask({ most: 4 });
    expect(asMany.atOnce).toBe(2);
    expect(asMany.limitedBy).toBe('heat');
  });

  it('finds no number of gas burners for a shut kitchen, and says so', () => {
    const shut = ask(GAS);
    expect(shut.withinLimits).toBe(false);
    expect(shut.atOnce).toBe(1);
    expect(shut.limitedBy).toBe('air');
  });

  it('lights two where four would do: the usual number', () => {
    const plenty = ask({ hood: HOOD, window: OPEN });
    expect(plenty.atOnce).toBe(2);
    expect(plenty.limitedBy).toBe('usual');
  });

  it('keeps to the circuit', () => {
    const one = ask({ hood: HOOD, window: OPEN, circuit: { supplyV: 230, ratingA: 10 } });
    expect(one.atOnce).toBe(1);
    expect(one.limitedBy).toBe('circuit');
  });
});

afterAll(() => {
  const lines = (
    [
      ['shut', NO_HOOD, SHUT],
      ['hood', HOOD, SHUT],
      ['window', NO_HOOD, OPEN],
      ['both', HOOD, OPEN],
    ] as const
  ).flatMap(([name, hood, window]) =>
    [GAS, { gas: false, burnerW: 2000 }].map((fuel) => {
      const { rows } = ask({ ...fuel, hood, window });
      const cells = rows.map(({ peakC, heatIndexC, no2HourMgM3, refusedBy }) =>
        [
          `${peakC.typical.toFixed(0)} °C`,
          `feels ${heatIndexC.typical.toFixed(0)}`,
          ...(no2HourMgM3 ? [`NO2 ${no2HourMgM3.typical.toFixed(2)}`] : []),
          ...(refusedBy ? [`refused: ${refusedBy}`] : []),
        ].join(', '),
      );
      return `${name}, ${fuel.gas ? 'gas 2.9 kW' : 'electric 2.0 kW'} | ${cells.join(' | ')}`;
    }),
  );
  console.log(
    `\n1, 2, 3, 4 burners for 40 min in 25 m³ at 22 °C, 20 °C outside\n${lines.join('\n')}\n`,
  );
});
