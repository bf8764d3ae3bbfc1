import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  learn,
  PRIORS,
  startEstimate,
  unlearn,
  type Estimate,
} from '../../../src/core/physics/index.ts';

const kettle = startEstimate(PRIORS.boilTimeFactor);
const all = (start: Estimate, values: readonly number[]) => values.reduce(learn, start);

/** Roughly normal draws from uniform ones (sum of twelve), so that a failure shrinks. */
const draw = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true, noDefaultInfinity: true }), {
    minLength: 12,
    maxLength: 12,
  })
  .map((parts) => parts.reduce((sum, part) => sum + part, 0) - 6);

/** The same from a seed: no shrinking towards all-equal draws, which is not noise. */
function noise(seed: number, count: number): readonly number[] {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return Array.from(
    { length: count },
    () => Array.from({ length: 12 }, uniform).reduce((sum, part) => sum + part, 0) - 6,
  );
}

describe('learn', () => {
  it('converges on the truth under noise, and knows how well', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.75, max: 1.35, noNaN: true }),
        fc.integer({ min: 1, max: 2 ** 31 }),
        (truth, seed) => {
          const values = noise(seed, 60).map(
            (z) => truth * Math.exp(PRIORS.boilTimeFactor.noise * z),
          );
          const { mean, spread, n } = all(kettle, values);
          expect(Math.abs(mean / truth - 1)).toBeLessThan(0.1);
          expect(Math.abs(Math.log(mean / truth))).toBeLessThan(4.5 * spread);
          expect(spread).toBeLessThan(0.03);
          expect(n).toBeGreaterThan(50);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('keeps one absurd boil apart', () => {
    const { mean, outliers } = all(kettle, [1.02, 0.98, 2.9, 1.01]);
    expect(outliers).toEqual([2.9]);
    expect(mean).toBeCloseTo(1, 1);
  });

  it('believes three in a row that agree: the kettle was changed', () => {
    const { mean, outliers } = all(kettle, [1, 1, 1, 1, 1.8, 1.82, 1.79]);
    expect(mean).toBeCloseTo(1.8, 1);
    expect(outliers).toEqual([]);
  });

  it('does not believe three in a row that disagree', () => {
    const { mean, outliers } = all(kettle, [1, 1, 1, 1, 1.8, 0.52, 2.9]);
    expect(mean).toBeCloseTo(1, 1);
    expect(outliers).toHaveLength(3);
  });

  it('never leaves the physical range, whatever it is told', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), { maxLength: 30 }),
        (values) => {
          const { mean, spread, observations } = all(kettle, values);
          expect(mean).toBeGreaterThanOrEqual(PRIORS.boilTimeFactor.min);
          expect(mean).toBeLessThanOrEqual(PRIORS.boilTimeFactor.max);
          expect(spread).toBeGreaterThan(0);
          expect(observations).toEqual(values);
        },
      ),
    );
  });

  it('undoes any observation as if it had never been made', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(draw, fc.double({ min: 0.8, max: 1.2, noNaN: true })), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.nat(11),
        (pairs, at) => {
          const values = pairs.map(([z, base]) => base * Math.exp(0.05 * z));
          const place = at % values.length;
          expect(unlearn(all(kettle, values), place)).toEqual(
            all(kettle, values.toSpliced(place, 1)),
          );
        },
      ),
    );
  });

  it('refuses what is no measurement', () => {
    expect(() => learn(kettle, 0)).toThrow(/observation is 0/);
    expect(() => learn(kettle, Number.NaN)).toThrow(/observation is NaN/);
    expect(() => unlearn(kettle, 0)).toThrow(/at is 0/);
  });
});
