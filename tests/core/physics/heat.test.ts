import { describe, expect, it } from 'vitest';
import {
  boilCurve,
  boilTime,
  burnerTypes,
  burnTime,
  colourName,
  coolToTouch,
  draperPoint,
  DRAPER_C,
  glowCurve,
  glowTime,
  highestHeat,
  kettleCooling,
  kettleCoolingCurve,
  lumpSeconds,
  ovenCurve,
  ovenStages,
  puddlesToReach,
  thermalShock,
  touchThreshold,
} from '../../../src/core/physics/index.ts';

const KETTLE = {
  volumeL: 1.7,
  ratedW: 2200,
  ratedV: 230,
  supplyV: 230,
  startC: 15,
  altitudeM: 0,
  bodyWaterL: 0.23,
  lossWK: 1.8,
};

describe('boilTime', () => {
  it('takes an ordinary kettle about five to seven minutes', () => {
    const { timeS } = boilTime(KETTLE);
    expect(timeS.typical).toBeGreaterThan(300);
    expect(timeS.typical).toBeLessThan(420);
  });

  it('goes with the inverse square of the voltage when nothing is lost', () => {
    const at = (supplyV: number) => boilTime({ ...KETTLE, lossWK: 0, supplyV }).timeS.typical;
    expect(at(115) / at(230)).toBeCloseTo(4, 9);
  });

  it('refuses a heater that the losses beat', () => {
    expect(() => boilTime({ ...KETTLE, ratedW: 120 })).toThrow(/ratedW is 120.*never boil/);
  });

  it('agrees with a step-by-step integration of the same balance', () => {
    const { timeS, boilingC } = boilTime({ ...KETTLE, lossWK: 5 });
    // Constant heat capacity makes it a lumped body with a film and no radiation.
    const lump = {
      powerW: 2200,
      areaM2: 1,
      emissivity: 0,
      heatCapacityJK: 1.93 * 0.9991 * 4189.3,
      filmWM2K: 5,
      roomC: 20,
    };
    expect(Math.abs((lumpSeconds(lump, 15, boilingC) ?? 0) / timeS.typical - 1)).toBeLessThan(2e-3);
  });
});

describe('curves', () => {
  const oven = ovenCurve({ cycle: 'normal' });
  const curves = {
    boil: boilCurve(KETTLE),
    cooling: kettleCoolingCurve({ ...KETTLE, evaporationW: 10, roomC: 20, dropK: 5 }),
    glow: glowCurve({ burner: 'electric-coil', holdMin: 30 }),
    oven,
  };

  it.each(Object.entries(curves))('%s: at most 200 points, time goes on', (_, curve) => {
    expect(curve.length).toBeGreaterThan(10);
    expect(curve.length).toBeLessThanOrEqual(200);
    for (let i = 1; i < curve.length; i += 1) {
      expect(curve[i]?.timeS).toBeGreaterThanOrEqual(curve[i - 1]?.timeS ?? 0);
      expect(Number.isFinite(curve[i]?.tempC)).toBe(true);
    }
  });

  it('begin and end where their models say', () => {
    expect(curves.boil[0]?.tempC).toBe(15);
    expect(curves.boil.at(-1)?.tempC).toBeCloseTo(99.974, 2);
    expect(curves.boil.at(-1)?.timeS).toBe(boilTime(KETTLE).timeS.typical);
    expect(curves.cooling.at(-1)?.timeS).toBeCloseTo(
      kettleCooling({ ...KETTLE, evaporationW: 10, roomC: 20, dropK: 5 }).timeS,
      6,
    );
    expect(Math.max(...oven.map(({ tempC }) => tempC))).toBeCloseTo(470, 6);
  });
});

describe('glow', () => {
  it.each(burnerTypes())('%s reaches a glow, in order, and cools to the touch', (burner) => {
    const { timeS, steadyC } = glowTime({ burner });
    expect(steadyC.low).toBeGreaterThan(DRAPER_C);
    expect(timeS.low).toBeLessThanOrEqual(timeS.typical);
    expect(timeS.typical).toBeLessThanOrEqual(timeS.high);
    expect(timeS.high).toBeLessThan(20 * 60);
    const cool = coolToTouch({ burner });
    expect(cool.timeS.low).toBeGreaterThan(4 * 60);
    expect(cool.timeS.high).toBeLessThan(120 * 60);
  });

  it('keeps its temperature over sizes of one type, and so its time', () => {
    const small = glowTime({ burner: 'electric-coil', ratedW: 1250 });
    const large = glowTime({ burner: 'electric-coil', ratedW: 2500 });
    expect(small.steadyC.typical).toBeCloseTo(large.steadyC.typical, 6);
    expect(small.timeS.typical).toBeCloseTo(large.timeS.typical, 6);
  });

  it('refuses induction by name and a body too weak to glow', () => {
    expect(() => glowTime({ burner: 'induction' })).toThrow(
      /burner is induction.*heats only a pan/,
    );
    const weak = { powerW: 300, areaM2: 0.05, emissivity: 0.85, heatCapacityJK: 290, filmWM2K: 12 };
    expect(() => glowTime(weak)).toThrow(/never glow/);
    expect(() => glowTime({ powerW: 300 })).toThrow(/areaM2 is not given/);
  });

  it('needs more heat to be seen in more light', () => {
    const seen = [0, 20, 200, 2000].map((lux) => draperPoint({ lux }).tempC);
    expect(seen[0]).toBe(DRAPER_C);
    expect(seen.toSorted((a, b) => a - b)).toEqual(seen);
  });

  it('names a colour in a scale that is named with it', () => {
    expect(colourName(700)).toBe('dull red');
    expect(colourName(700, 'chapman')).toBe('very dark red');
    expect(colourName(400)).toBeUndefined();
  });
});

describe('oven', () => {
  it('adds its stages up', () => {
    for (const cycle of ['light', 'normal', 'heavy'] as const) {
      const { heatMin, holdMin, coolMin, totalMin } = ovenStages({ cycle });
      expect(totalMin.typical).toBeCloseTo(heatMin.typical + holdMin.typical + coolMin.typical, 9);
      expect(totalMin.low).toBeLessThan(totalMin.high);
    }
    expect(ovenStages({ holdMin: 90 }).holdMin.typical).toBe(90);
    expect(highestHeat({ holdMin: 60 }).totalMin.typical).toBeGreaterThan(80);
  });

  it('asks for a cycle or a hold', () => {
    expect(() => ovenStages({})).toThrow(/cycle is not given/);
    expect(() => ovenStages({ cycleMin: 5 })).toThrow(/cycleMin is 5/);
  });
});

describe('burns', () => {
  it('is quicker when hotter, and log-linear half-way', () => {
    const at = (tempC: number) => burnTime({ tempC }).secondDegreeS;
    for (let tempC = 45; tempC < 60; tempC += 0.5) expect(at(tempC + 0.5)).toBeLessThan(at(tempC));
    expect(at(53)).toBeCloseTo(Math.sqrt(120 * 17), 9);
  });

  it('refuses what its table does not hold', () => {
    expect(() => burnTime({ tempC: 95 })).toThrow(/tempC is 95; allowed: 45 to 60/);
  });

  it('lets wood be hotter than metal, and a short touch hotter than a long one', () => {
    const touch = (material: string, contactS: number) =>
      touchThreshold({ material, contactS }).touchC;
    expect(touch('wood', 10)).toBeGreaterThan(touch('stainless-steel', 10));
    expect(touch('metal', 1)).toBeGreaterThan(touch('metal', 600));
    expect(touch('unknown', 60)).toBe(touch('metal', 60));
  });
});

describe('surfaces', () => {
  it('needs two or three puddles to bring a steel sheet near the boil', () => {
    const sheet = { sheetMm: 1, waterDepthMm: 2.5, waterC: 95, sheetC: 20, reachC: 90 };
    const { puddles } = puddlesToReach(sheet);
    expect([2, 3]).toContain(puddles);
  });

  it('cracks hot glass under cold water, not cold glass under hot', () => {
    const glass = { material: 'glass' };
    expect(thermalShock({ ...glass, surfaceC: 250, waterC: 20 }).verdict).toBe('cracks');
    expect(thermalShock({ ...glass, surfaceC: 20, waterC: 95 }).verdict).toBe('safe');
    expect(thermalShock({ material: 'glass-ceramic', surfaceC: 400, waterC: 20 }).verdict).toBe(
      'safe',
    );
    expect(
      thermalShock({ material: 'stainless-steel', surfaceC: 400, waterC: 20 }).limitK,
    ).toBeNull();
  });
});
