import { describe, expect, it } from 'vitest';
import { fixtureOf } from '../../../src/core/kitchen/index.ts';
import * as editing from '../../../src/core/editing/index.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const coils = demoKitchen('flat-coils.kitchen.json');
const FAR = [2, 3] as const;
const RIGHT = [1, 2] as const;
const fresh = editing.newKitchen({ name: 'Ours', country: 'IL' }, inEnglish);

describe('a wall as one stands before it', () => {
  it('shows what stands, hangs and is built in there, from its left end', () => {
    const seen = editing.elevationOf(coils, FAR);
    const box = (id: string) => seen?.fronts.find((one) => one.id === id);
    expect(seen?.wall.lengthM).toBeCloseTo(3.66, 6);
    expect(seen?.heightM).toBe(2.44);
    expect(box('fridge')).toMatchObject({ atM: 0, widthM: 0.76, fromM: 0, toM: 1.7, told: true });
    expect(box('hood')).toMatchObject({ atM: 1.52, widthM: 0.76, fromM: 1.6, toM: 1.78 });
    expect(box('sink')?.atM).toBeCloseTo(2.64, 6);
    expect(box('table')).toBeUndefined();
    expect(seen?.openings.map(({ id }) => id)).toEqual(['window-sink']);
    expect(editing.elevationOf(coils, RIGHT)?.openings.map(({ id }) => id)).toEqual(['door']);
  });

  it('is measured from the left as seen from inside, at every wall', () => {
    const glass = demoKitchen('flat-glass-230.kitchen.json');
    // Left wall, seen from the room: its left end is the near corner.
    const sink = editing.elevationOf(glass, [3, 0])?.fronts.find(({ id }) => id === 'sink');
    expect(sink?.atM).toBeCloseTo(1.2, 6);
    const oven = editing.elevationOf(glass, RIGHT)?.fronts.find(({ id }) => id === 'oven');
    expect(oven?.atM).toBeCloseTo(0, 6);
  });

  it('says which heights nobody told', () => {
    const { kitchen, id } = editing.addFixture(fresh, 'counter', inEnglish);
    const walls = [0, 1, 2, 3].map((i) => editing.elevationOf(kitchen, [i, (i + 1) % 4]));
    const seen = walls.flatMap((one) => one?.fronts ?? []).filter((one) => one.id === id);
    expect(seen.map(({ told, toM }) => [told, toM])).toContainEqual([false, 0.9]);
  });
});

describe('doors and windows', () => {
  it('are put into a wall with room, and tell the walls that were only likely', () => {
    const { kitchen, id } = editing.addOpening(fresh, 'door');
    expect(kitchen.room.outline).toEqual(editing.roomOutline(fresh));
    expect(editing.openingOf(kitchen, id)).toMatchObject({ kind: 'door', hinge: 'left' });
    expect(editing.problemsOf(kitchen)).toEqual([]);
    const door = editing.addOpening(coils, 'door');
    const at = editing.openingOf(door.kitchen, door.id);
    // The far wall is full of kitchen, the right one has its door.
    expect(at?.wall).not.toEqual(FAR);
  });

  it('follow a finger along and onto another wall, in steps of 5 cm, and stay within it', () => {
    const along = editing.moveOpening(coils, 'door', [3.6, 1.53]);
    expect(editing.openingOf(along, 'door')).toMatchObject({ wall: RIGHT, atM: 0.45 });
    const end = editing.moveOpening(coils, 'door', [3.66, 0.05]);
    expect(editing.openingOf(end, 'door')?.atM).toBeCloseTo(1.6, 6);
    const left = editing.moveOpening(coils, 'door', [0.05, 1]);
    expect(editing.openingOf(left, 'door')?.wall).toEqual([3, 0]);
  });

  it('turn through the four ways a door can open', () => {
    let kitchen = coils;
    const ways = new Set<string>();
    for (let i = 0; i < 4; i += 1) {
      kitchen = editing.turnOpening(kitchen, 'door');
      const { hinge, swing = 'in' } = editing.openingOf(kitchen, 'door') ?? {};
      ways.add(`${hinge} ${swing}`);
    }
    expect(ways.size).toBe(4);
  });
});

describe('walls pushed', () => {
  it('take their neighbours along; what is in the others stays where it was', () => {
    const wider = editing.moveWall(coils, RIGHT, 0.34);
    expect(wider.room.outline?.[1]).toEqual([4, 0]);
    expect(wider.room.floorAreaM2).toBeCloseTo(8.8 + 0.34 * 2.4, 1);
    expect(editing.openingOf(wider, 'window-sink')?.atM).toBeCloseTo(2.56, 6);
    const longer = editing.moveWall(coils, FAR, 0.6);
    // The door is measured from the far corner, which is 60 cm farther now.
    expect(editing.openingOf(longer, 'door')?.atM).toBeCloseTo(1.9, 6);
    expect(editing.problemsOf(longer)).toEqual([]);
    expect(editing.moveWall(coils, RIGHT, -5)).toBe(coils);
  });
});

describe('what hangs on a wall', () => {
  it('is hung over the cooktop, moved along and up, and never out of the wall', () => {
    const hood = editing.changeFixture(coils, 'hood', { wallPlace: undefined, heights: undefined });
    const hung = editing.hangFixture(hood, 'hood', FAR);
    const box = editing.elevationOf(hung, FAR)?.fronts.find(({ id }) => id === 'hood');
    expect((box?.atM ?? 0) + (box?.widthM ?? 0) / 2).toBeCloseTo(1.9, 6);
    expect(box?.told).toBe(false);
    const up = editing.moveAtWall(hung, 'hood', FAR, [9, 9]);
    const now = editing.elevationOf(up, FAR)?.fronts.find(({ id }) => id === 'hood');
    expect((now?.atM ?? 0) + (now?.widthM ?? 0)).toBeCloseTo(3.66, 6);
    expect(now?.toM).toBeCloseTo(2.44, 6);
    expect(now?.told).toBe(true);
    expect(editing.problemsOf(up)).toEqual([]);
  });

  it('moves along with what is drawn from above: both show one place', () => {
    const moved = editing.moveAtWall(coils, 'fridge', FAR, [0.02, 0.5]);
    const fridge = fixtureOf(moved, 'fridge');
    expect(fridge && 'outline' in fridge && fridge.outline?.[0]?.[0]).toBeCloseTo(0.02, 6);
    expect(fridge?.heights).toEqual({ fromM: 0, toM: 1.7 });
  });

  it('is not hidden by its copy, which waits to be hung', () => {
    const { kitchen, id } = editing.copyFixture(coils, 'wall-cupboard');
    const copy = fixtureOf(kitchen, id);
    expect(copy?.kind).toBe('cupboard');
    expect(copy).not.toHaveProperty('wallPlace');
    expect(editing.problemsOf(editing.hangFixture(kitchen, id, RIGHT))).toEqual([]);
  });

  it('comes to rest in line with what else is seen there, else on 5 cm', () => {
    const hood = editing.elevationOf(coils, FAR)?.fronts.find(({ id }) => id === 'hood');
    if (!hood) throw new Error('No hood.');
    // Its right side is 4 cm from the window's left one at 2.56 m.
    expect(editing.snapAtWall(coils, FAR, hood, [0.24, 0])[0]).toBeCloseTo(0.28, 6);
    const [alongM] = editing.snapAtWall(coils, FAR, hood, [1.2, 0.02]);
    expect(((1.52 + alongM) * 100) % 5).toBeCloseTo(0, 6);
  });

  it('is pulled to a size on 5 cm', () => {
    const next = editing.resizeAtWallFront(coils, 'hood', {
      atM: 1.51, widthM: 0.92, fromM: 1.58, toM: 1.83,
    }); // prettier-ignore
    const hood = fixtureOf(next, 'hood');
    expect(hood?.heights).toEqual({ fromM: 1.6, toM: 1.85 });
    expect(hood && 'wallPlace' in hood && hood.wallPlace).toMatchObject({ atM: 1.5, widthM: 0.9 });
  });
});
