import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import {
  handSpeed,
  levelJump,
  ORDINARY_HAND,
  pourDemand,
  puddleDepth,
  type PourPiece,
} from '../../../src/core/physics/index.ts';

/** An ordinary household sink: bowl 0.50 × 0.40 × 0.18 m, rim, spout and one handle; steel at 70°. */
const SINK: readonly PourPiece[] = [
  { kind: 'fitting', count: 2 },
  { kind: 'edge', lengthM: 1.8 },
  { kind: 'upright', areaM2: 1.8 * 0.18, contactDeg: 70 },
  { kind: 'level', areaM2: 0.2, contactDeg: 70 },
];
const KETTLE_L = 1.7;
/** Common practice, no published source: an ordinary sink takes three to four kettles. */
const PRACTICE = { low: 3, high: 4 };

const sink = (more: object = {}) => pourDemand({ pieces: SINK, usableKettleL: KETTLE_L, ...more });

describe('pourDemand', () => {
  // Not independent evidence: the dwell criterion behind the hand speed was chosen with this figure known.
  it('gives an ordinary sink the kettles of common practice', () => {
    const { kettles, litres } = sink();
    expect(kettles.typical).toBeGreaterThanOrEqual(PRACTICE.low);
    expect(kettles.typical).toBeLessThanOrEqual(PRACTICE.high);
    expect(litres.typical).toBeGreaterThan(5);
    expect(litres.typical).toBeLessThan(PRACTICE.high * KETTLE_L);
  });

  it('never pours less than the film that stands on a level top', () => {
    const quick = {
      pieces: [{ kind: 'level', areaM2: 1, contactDeg: 90 } as const],
      usableKettleL: 2,
    };
    const { perPiece } = pourDemand({ ...quick, handSpeedMS: 0.5 });
    expect(perPiece[0]?.governedBy).toBe('standing-film');
    expect(perPiece[0]?.litres.typical).toBeCloseTo(
      puddleDepth({ tempC: 95, contactDeg: 90 }).depthMm,
      9,
    );
  });

  it('pours twice the litres on twice the area, and half as many at twice the hand speed', () => {
    const area = (areaM2: number, handSpeedMS: number) =>
      pourDemand({
        pieces: [{ kind: 'level', areaM2, contactDeg: 60 }],
        usableKettleL: 2,
        handSpeedMS,
      }).litres.typical;
    expect(area(2, 0.03)).toBeCloseTo(2 * area(1, 0.03), 9);
    expect(area(1, 0.02)).toBeCloseTo(2 * area(1, 0.04), 9);
  });

  it('holds its bands in order and its kettles whole for any kitchen', () => {
    const piece = fc.oneof(
      fc.record({
        kind: fc.constantFrom('level' as const, 'upright' as const),
        areaM2: fc.double({ min: 0, max: 5, noNaN: true }),
        contactDeg: fc.integer({ min: 10, max: 120 }),
      }),
      fc.record({
        kind: fc.constant('edge' as const),
        lengthM: fc.double({ min: 0, max: 10, noNaN: true }),
      }),
      fc.record({ kind: fc.constant('fitting' as const), count: fc.nat(6) }),
    );
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 6 }),
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        (pieces, flowLMin, handSpeedMS) => {
          const { litres, kettles, pourS } = pourDemand({
            pieces,
            usableKettleL: 1.5,
            flowLMin,
            handSpeedMS,
          });
          for (const band of [litres, kettles, pourS]) {
            expect(band.low).toBeLessThanOrEqual(band.typical);
            expect(band.typical).toBeLessThanOrEqual(band.high);
          }
          expect(Number.isInteger(kettles.high)).toBe(true);
          expect(kettles.high * 1.5).toBeGreaterThanOrEqual(litres.high - 1e-6);
        },
      ),
    );
  });

  it('refuses a hand that does not move, by name', () => {
    expect(() => sink({ handSpeedMS: 0 })).toThrow(/handSpeedMS is 0/);
    expect(() => sink({ overlapShare: 0.9 })).toThrow(/overlapShare is 0.9/);
  });
});

describe('the ordinary hand', () => {
  it('is as slow as a steel sheet needs: three of its time constants under the film', () => {
    const { speedMS, dwellS, filmWM2K } = handSpeed({ flowLMin: 2, tempC: 95 });
    const timeConstantS = (0.001 * 7900 * 477) / filmWM2K;
    expect(dwellS).toBeCloseTo(3 * timeConstantS, 9);
    expect(ORDINARY_HAND.handSpeedMS.typical).toBeCloseTo(speedMS, 9);
    // Out of the water's reach a point would not be heated: the chord is inside the strip.
    expect(speedMS * dwellS).toBeLessThan(
      (2 * levelJump({ flowLMin: 2, tempC: 95 }).radiusMm.typical) / 1000,
    );
  });

  it('moves slower over a thicker sheet', () => {
    const speed = (sheetMm: number) => handSpeed({ flowLMin: 2, tempC: 95, sheetMm }).speedMS;
    expect(speed(1.2)).toBeLessThan(speed(0.8));
  });
});

afterAll(() => {
  const row = (name: string, more: object) => {
    const { litres, kettles } = sink(more);
    const span = ({ low, typical, high }: typeof litres, digits: number) =>
      [low, typical, high].map((value) => value.toFixed(digits)).join(' / ');
    return `${name} | ${span(litres, 1)} L | ${span(kettles, 0)} kettles`;
  };
  const follows = (flowLMin: number) => ({
    flowLMin,
    handSpeedMS: handSpeed({ flowLMin, tempC: 95 }).speedMS,
  });
  const lines = [
    row('as a person starts', {}),
    ...[1, 1.5, 2.5, 4].map((flow) => row(`flow ${flow} L/min, speed kept`, { flowLMin: flow })),
    ...[1, 1.5, 2.5, 4].map((flow) =>
      row(`flow ${flow} L/min, speed follows the sheet`, follows(flow)),
    ),
    ...[0.02, 0.03, 0.05, 0.08, 0.12].map((speed) =>
      row(`hand ${speed} m/s`, { handSpeedMS: speed }),
    ),
    ...[0, 0.3].map((overlapShare) => row(`overlap ${overlapShare}, speed kept`, { overlapShare })),
    ...[0, 0.15].map((lossShare) => row(`loss ${lossShare}`, { lossShare })),
  ];
  console.log(`\nAn ordinary sink (practice: 3 to 4 kettles of 1.7 L)\n${lines.join('\n')}\n`);
});
