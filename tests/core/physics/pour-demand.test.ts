import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { pourDemand, puddleDepth, type PourPiece } from '../../../src/core/physics/index.ts';

/** An ordinary household sink: bowl 0.50 × 0.40 × 0.18 m, rim, spout and one handle; steel at 70°. */
const SINK: readonly PourPiece[] = [
  { kind: 'fitting', count: 2 },
  { kind: 'edge', lengthM: 1.8 },
  { kind: 'upright', areaM2: 1.8 * 0.18, contactDeg: 70 },
  { kind: 'level', areaM2: 0.2, contactDeg: 70 },
];
const KETTLE_L = 1.7;
const STREAM_C = 98;
/** About as quick as a hand over a steel sheet may be; estimates of the plan follow the material. */
const HAND_MS = 0.06;

const sink = (more: object = {}) =>
  pourDemand({
    pieces: SINK,
    usableKettleL: KETTLE_L,
    streamC: STREAM_C,
    handSpeedMS: HAND_MS,
    ...more,
  });

describe('pourDemand', () => {
  it('never pours less than the film that stands on a level top', () => {
    const quick = {
      pieces: [{ kind: 'level', areaM2: 1, contactDeg: 90 } as const],
      usableKettleL: 2,
      streamC: 95,
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
        streamC: STREAM_C,
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
            streamC: STREAM_C,
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

afterAll(() => {
  const row = (name: string, more: object) => {
    const { litres, kettles } = sink(more);
    const span = ({ low, typical, high }: typeof litres, digits: number) =>
      [low, typical, high].map((value) => value.toFixed(digits)).join(' / ');
    return `${name} | ${span(litres, 1)} L | ${span(kettles, 0)} kettles`;
  };
  const lines = [
    row('0.06 m/s', {}),
    ...[1, 1.5, 2.5, 4].map((flow) => row(`flow ${flow} L/min, speed kept`, { flowLMin: flow })),
    ...[0.02, 0.03, 0.05, 0.08, 0.12].map((speed) =>
      row(`hand ${speed} m/s`, { handSpeedMS: speed }),
    ),
    ...[0, 0.3].map((overlapShare) => row(`overlap ${overlapShare}, speed kept`, { overlapShare })),
    ...[0, 0.15].map((lossShare) => row(`loss ${lossShare}`, { lossShare })),
  ];
  console.log(`\nAn ordinary sink, kettles of 1.7 L\n${lines.join('\n')}\n`);
});
