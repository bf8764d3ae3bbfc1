import { describe, expect, it } from 'vitest';
import burners from '../../../shared/burners.json';
import {
  burnerTypes,
  coolToTouch,
  freeConvection,
  glowCurve,
  glowTime,
  ovenStages,
} from '../../../src/core/physics/index.ts';

const min = (s: number) => s / 60;
/** Film of a lit burner, W/(m² K), from the catalogue. */
const litFilm = (type: string) => burners.rows.find((row) => row.type === type)?.filmWM2K ?? 0;

describe('still air', () => {
  it('carries less the cooler the body and the thinner the air', () => {
    const bar = { shape: 'horizontal-cylinder', sizeM: 0.012, airC: 20 } as const;
    const film = (surfaceC: number) => freeConvection({ ...bar, surfaceC }).filmWM2K;
    expect(film(400)).toBeGreaterThan(film(200));
    expect(film(200)).toBeGreaterThan(film(60));
    const high = freeConvection({ ...bar, surfaceC: 200, pressurePa: 70_000 }).filmWM2K;
    expect(high).toBeLessThan(film(200));
  });

  it('lies between 6 and 14 W/(m² K) at what cools on a stove', () => {
    for (const { after } of burners.rows) {
      for (const surfaceC of [80, 150, 300]) {
        const { filmWM2K } = freeConvection({
          shape: after.shape as 'disc-up',
          sizeM: after.sizeM,
          surfaceC,
          airC: 20,
        });
        expect(filmWM2K).toBeGreaterThan(6);
        expect(filmWM2K).toBeLessThan(14.5);
      }
    }
  });
});

describe('safe to touch', () => {
  // Reckoned apart for the same bodies in still air, min.
  const APART = {
    'electric-coil': 11,
    'solid-plate': 76,
    'radiant-glass': 21.6,
    'gas-sealed': 14,
    'gas-open': 14,
    'commercial-open': 28,
  };

  it.each(Object.entries(APART))('%s: the clock is not short of %d min', (burner, apart) => {
    expect(min(coolToTouch({ burner }).timeS.high)).toBeGreaterThan(apart);
  });

  it.each(['radiant-glass', 'gas-sealed', 'gas-open', 'gas-wok', 'commercial-open'])(
    '%s cools slower than in the draught of its own flame',
    (burner) => {
      const still = coolToTouch({ burner }).timeS.typical;
      const draught = coolToTouch({ burner, filmWM2K: litFilm(burner) }).timeS.typical;
      expect(still).toBeGreaterThan(1.3 * draught);
    },
  );

  it.each(burnerTypes())('%s: a hot kitchen and thin air only lengthen it', (burner) => {
    const usual = coolToTouch({ burner }).timeS.typical;
    expect(coolToTouch({ burner, roomC: 32 }).timeS.typical).toBeGreaterThan(usual);
    expect(coolToTouch({ burner, altitudeM: 3000 }).timeS.typical).toBeGreaterThan(usual);
  });

  it('is no sooner for a weak supply', () => {
    const full = coolToTouch({ burner: 'electric-coil' }).timeS.high;
    const weak = coolToTouch({ burner: 'electric-coil', ratedV: 240, supplyV: 208 }).timeS.high;
    expect(weak).toBeCloseTo(full, 6);
  });

  it('is drawn as the same course', () => {
    for (const burner of burnerTypes()) {
      const curve = glowCurve({ burner, holdMin: 30 });
      const { timeS, touchC } = coolToTouch({ burner });
      const end = curve.at(-1);
      const off = curve.findLast(
        ({ tempC }) => tempC > (glowTime({ burner }).steadyC.typical ?? 0) - 6,
      );
      expect(end?.tempC).toBeCloseTo(touchC, 3);
      // The drawn part that glowed cools first: a little later, never sooner.
      const drawnS = (end?.timeS ?? 0) - (off?.timeS ?? 0);
      expect(drawnS).toBeGreaterThanOrEqual(0.98 * timeS.typical);
      expect(drawnS).toBeLessThan(timeS.typical + 10 * 60);
    }
  });
});

describe('the volts of a burner', () => {
  it('count with their square: 208 V give a 240 V coil three quarters', () => {
    const coil = { burner: 'electric-coil', ratedW: 2100 };
    const weak = glowTime({ ...coil, ratedV: 240, supplyV: 208 });
    const same = glowTime({ ...coil, ratedW: 2100 * (208 / 240) ** 2, areaM2: 0.04375 });
    expect(weak.steadyC.typical).toBeCloseTo(same.steadyC.typical, -1.5);
    expect(weak.timeS.typical).toBeGreaterThan(1.4 * glowTime(coil).timeS.typical);
    expect(weak.surelyGlows).toBe(false);
    expect(glowTime(coil).surelyGlows).toBe(true);
  });

  it('do not count for a flame', () => {
    const gas = { burner: 'gas-sealed', ratedW: 2900 };
    expect(glowTime({ ...gas, ratedV: 240, supplyV: 208 })).toEqual(glowTime(gas));
  });
});

describe('a bare coil', () => {
  it('has a band that holds what a thermal imager saw, bare and covered', () => {
    const { low, high } = glowTime({ burner: 'electric-coil' }).steadyC;
    expect(low).toBeLessThanOrEqual(550);
    expect(high).toBeGreaterThanOrEqual(750);
  });
});

describe('the lock of a self-clean', () => {
  it('has the hour of the manuals, and 36 to 58 min, within its band', () => {
    const { coolMin } = ovenStages({ cycle: 'normal' });
    expect(coolMin.low).toBeLessThan(36);
    expect(coolMin.typical).toBeGreaterThan(36);
    expect(coolMin.high).toBeGreaterThanOrEqual(60);
  });
});
