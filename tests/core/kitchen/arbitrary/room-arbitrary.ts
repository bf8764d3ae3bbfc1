import * as fc from 'fast-check';
import type { Polygon, Room } from '../../../../src/core/kitchen/index.ts';

const metres = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => n / 100);

const WALLS: Polygon = [
  [0, 0],
  [4, 0],
  [4, 3],
  [0, 3],
];

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
      walls: fc.constantFrom<Pick<Room, 'outline' | 'openings'>>(
        {},
        { outline: WALLS },
        { outline: WALLS, openings: [] },
        {
          outline: WALLS,
          openings: [
            { id: 'door-1', kind: 'door', wall: [0, 1], atM: 0.4, widthM: 0.8, hinge: 'right' },
            {
              id: 'window-1',
              kind: 'window',
              wall: [3, 0],
              atM: 1,
              widthM: 1.2,
              heights: { fromM: 1, toM: 2.1 },
            },
          ],
        },
      ),
    })
    .map(({ air, walls, ...room }) => ({ ...room, ...walls, ...air }));
}
