import { describe, expect, it } from 'vitest';
import {
  boilingTemp,
  heatedSpeed,
  jetLoss,
  keepsUp,
  pouredSpot,
  reachedSpeed,
} from '../../../src/core/physics/index.ts';
import { slabResponse } from '../../../src/core/physics/surface/slab-response.ts';
import { surfaceAfter } from '../../../src/core/physics/index.ts';

const STEEL = {
  flowLMin: 2,
  impactC: 97.5,
  boilingC: 99.97,
  handSpeedMS: 0.037,
  material: 'stainless-steel',
  offset: 0.85,
};

describe('a stream that falls', () => {
  it('loses more the higher it falls and the thinner it is', () => {
    const lossK = (flowLMin: number, fallM: number) =>
      jetLoss({ flowLMin, spoutC: 99.9, boilingC: 99.97, fallM }).lossK.typical;
    expect(lossK(2, 0.5)).toBeGreaterThan(lossK(2, 0.2));
    expect(lossK(1, 0.2)).toBeGreaterThan(lossK(2, 0.2));
  });

  it('is never hotter than water boils at 4500 m', () => {
    const { tempC: boilingC } = boilingTemp({ altitudeM: 4500 });
    const { lossK } = jetLoss({ flowLMin: 2, spoutC: boilingC, boilingC });
    expect(boilingC - lossK.low).toBeLessThan(boilingC);
    expect(boilingC).toBeLessThan(86);
    expect(() => jetLoss({ flowLMin: 2, spoutC: 95, boilingC })).toThrow(/spoutC is 95; allowed/);
  });
});

describe('a slab under a steady heat', () => {
  it('warms as a thin sheet does, and as a thick body does', () => {
    const risen = (slab: Parameters<typeof slabResponse>[0], stepS: number, steps: number) =>
      slabResponse(slab, stepS, steps).reduce((sum, one) => sum + one, 0);
    const sheet = { conductivityWMK: 14.9, heatCapacityJM3K: 3.77e6, thicknessM: 0.001 };
    // Lumped: t/(ρcL), and a third of L/k across it.
    expect(risen(sheet, 0.1, 20)).toBeCloseTo(2 / 3770 + 0.001 / (3 * 14.9), 7);
    const stone = { conductivityWMK: 2.79, heatCapacityJM3K: 2.04e6, thicknessM: 0.03 };
    // Half-space: 2·√(t/π)/e.
    expect(risen(stone, 0.1, 20)).toBeCloseTo(
      (2 * Math.sqrt(2 / Math.PI)) / Math.sqrt(2.79 * 2.04e6),
      9,
    );
  });
});

describe('the worst-placed spot of a strip', () => {
  it('is met hotter, and warmed more, by a slower hand and hotter water', () => {
    const slow = pouredSpot({ ...STEEL, handSpeedMS: 0.02 });
    const quick = pouredSpot({ ...STEEL, handSpeedMS: 0.08 });
    const cool = pouredSpot({ ...STEEL, impactC: 90 });
    const usual = pouredSpot(STEEL);
    for (const what of ['firstTouchC', 'hottestC', 'surfaceC'] as const) {
      expect(slow[what]).toBeGreaterThan(usual[what]);
      expect(quick[what]).toBeLessThan(usual[what]);
      expect(cool[what]).toBeLessThan(usual[what]);
    }
  });

  it('stays in order: cold, surface, water, stream', () => {
    for (const material of ['stainless-steel', 'granite', 'soapstone', 'wood', 'laminate']) {
      const { firstTouchC, hottestC, surfaceC, runOffC } = pouredSpot({ ...STEEL, material });
      expect(surfaceC).toBeGreaterThan(20);
      expect(hottestC).toBeGreaterThanOrEqual(surfaceC);
      expect(hottestC).toBeGreaterThanOrEqual(firstTouchC);
      expect(hottestC).toBeLessThan(97.5);
      expect(runOffC).toBeLessThan(hottestC);
    }
  });

  it('is met much cooler where a puddle was left: dry it first', () => {
    const wet = pouredSpot({ ...STEEL, standingMm: 3.1 });
    expect(wet.firstTouchC).toBeLessThan(pouredSpot(STEEL).firstTouchC - 10);
  });

  it('does not hang on the mesh: within 1.5 K of four times as fine', () => {
    for (const material of ['stainless-steel', 'granite', 'wood']) {
      const usual = pouredSpot({ ...STEEL, material, cells: 12 });
      const fine = pouredSpot({ ...STEEL, material, cells: 48 });
      for (const what of ['firstTouchC', 'hottestC', 'surfaceC', 'runOffC'] as const)
        expect(Math.abs(usual[what] - fine[what]), `${material} ${what}`).toBeLessThan(1.5);
    }
  });

  it('refuses water above boiling, by name', () => {
    expect(() => pouredSpot({ ...STEEL, impactC: 95, boilingC: 85 })).toThrow(
      /impactC is 95; allowed: 40 to 85/,
    );
  });
});

describe('the hand', () => {
  const hand = { flowLMin: 2, impactC: 97.5, boilingC: 99.97 };

  it('until heated is what a film and a slab need', () => {
    const { dwellS, filmWM2K } = heatedSpeed({ ...hand, material: 'granite' });
    const { tempC } = surfaceAfter({
      bodyTempC: 0,
      fluidTempC: 1,
      filmWM2K,
      conductivityWMK: 2.79,
      diffusivityM2S: 2.79 / (2630 * 775),
      depthM: 0,
      timeS: dwellS,
    });
    expect(tempC).toBeCloseTo(0.95, 2);
  });

  it('until reached meets the spot at what is asked, and no hand is quicker than its film', () => {
    for (const material of ['stainless-steel', 'soapstone', 'enamelled-steel']) {
      const { speedMS, reached } = reachedSpeed({ ...hand, material, touchC: 75 });
      const { firstTouchC } = pouredSpot({ ...hand, material, handSpeedMS: speedMS, offset: 0.85 });
      expect(reached).toBe(true);
      expect(firstTouchC).toBeGreaterThan(74);
      expect(firstTouchC).toBeLessThan(77);
    }
    const wood = reachedSpeed({ ...hand, material: 'wood', touchC: 75 });
    expect(wood.speedMS).toBe(keepsUp({ ...hand, material: 'wood' }).speedMS);
  });

  it('that no slowness helps says so', () => {
    expect(reachedSpeed({ ...hand, material: 'soapstone', touchC: 97 })).toEqual({
      speedMS: 0.001,
      reached: false,
    });
  });
});
