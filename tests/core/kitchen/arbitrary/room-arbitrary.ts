import * as fc from 'fast-check';
import type { Room } from '../../../../src/core/kitchen/index.ts';

const metres = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => n / 100);

/** Rooms with hood and window told, not there, or not told. */
export function rooms(): fc.Arbitrary<Room> {
  return fc
    .record({
      floorAreaM2: metres(5, 60),
      heightM: metres(2.2, 3.5),
      hood: fc.constantFrom(
        { kind: 'none', flowLS: 0 } as const,
        { kind: 'vented', flowLS: 120 } as const,
        { kind: 'unknown', flowLS: 0 } as const,
      ),
      air: fc.constantFrom<Pick<Room, 'window' | 'outdoorC'>>(
        { window: { areaM2: 0, heightM: 0 } },
        { window: { areaM2: 0.9, heightM: 1.1 } },
        { outdoorC: 12 },
        {},
      ),
    })
    .map(({ air, ...room }) => ({ ...room, ...air }));
}
