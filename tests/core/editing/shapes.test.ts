import { areaM2, boundingBox, pointInPolygon } from '../../../src/core/geometry/index.ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fixture, type Kitchen } from '../../../src/core/kitchen/index.ts';
import * as survey from '../../../src/core/editing/index.ts';
import { someEdits } from './edits-arbitrary.ts';
import { inEnglish } from '../../support/english.ts';

const empty = survey.newKitchen({ name: 'Ours', country: 'GB' }, inEnglish);
/** A counter with a sink and a cooktop in it, an oven under the cooktop. */
const set = ['counter', 'sink-1', 'gas-4', 'oven-pyrolytic'].reduce(
  (kitchen, offer) => survey.addFixture(kitchen, offer, inEnglish).kitchen,
  empty,
);

function get<K extends Fixture['kind']>(kitchen: Kitchen, kind: K, n = 0) {
  const found = kitchen.fixtures.filter((f) => f.kind === kind)[n];
  if (!found) throw new Error(`no ${kind}`);
  return found as Extract<Fixture, { kind: K }>;
}
const box = (kitchen: Kitchen, kind: 'counter' | 'sink' | 'cooktop' | 'oven') =>
  boundingBox(get(kitchen, kind).outline);

describe('moveFixture', () => {
  it('moves the counter with all that is in it', () => {
    const moved = survey.moveFixture(set, 'counter', [1, 0.5]);
    const [from, to] = [box(set, 'counter'), box(moved, 'counter')];
    expect([to.xMinM, to.yMinM]).toEqual([1, 0.5]);
    for (const kind of ['sink', 'cooktop', 'oven'] as const) {
      expect(box(moved, kind).xMinM - box(set, kind).xMinM).toBeCloseTo(1 - from.xMinM, 6);
      expect(box(moved, kind).yMinM - box(set, kind).yMinM).toBeCloseTo(0.5 - from.yMinM, 6);
    }
    expect(get(moved, 'counter').holes).toEqual([
      get(moved, 'sink').outline,
      get(moved, 'cooktop').outline,
    ]);
    const top = get(moved, 'cooktop');
    expect(top.burners.every(({ at }) => pointInPolygon(at, top.outline))).toBe(true);
  });

  it('closes the cut-out when the sink leaves and opens one where it comes in again', () => {
    const at = box(set, 'sink');
    const out = survey.moveFixture(set, 'sink', [1.5, 0.2]);
    expect(get(out, 'counter').holes).toEqual([get(set, 'cooktop').outline]);
    const back = survey.moveFixture(out, 'sink', [at.xMinM + 0.05, at.yMinM]);
    expect(get(back, 'counter').holes).toContainEqual(get(back, 'sink').outline);
  });

  it('takes the oven along with its cooktop', () => {
    const moved = survey.moveFixture(set, 'cooktop', [3, 1]);
    expect(box(moved, 'oven')).toEqual(box(moved, 'cooktop'));
  });

  it('refuses a place out of the plan', () => {
    expect(survey.moveFixture(set, 'counter', [199, 0])).toBe(set);
    expect(survey.moveFixture(set, 'counter', [Number.NaN, 0])).toBe(set);
  });

  it('draws what was not drawn', () => {
    const { kitchen, id } = survey.addFixture(set, 'cupboard', inEnglish);
    const drawn = survey.moveFixture(kitchen, id, [1, 1]);
    const cupboard = drawn.fixtures.find((fixture) => fixture.id === id);
    expect(cupboard).toHaveProperty('outline.0', [1, 1]);
  });
});

describe('turnFixture', () => {
  it('swaps length and depth, and four turns bring all back', () => {
    const once = survey.turnFixture(set, 'counter');
    const [a, b] = [box(set, 'counter'), box(once, 'counter')];
    expect(b.xMaxM - b.xMinM).toBeCloseTo(a.yMaxM - a.yMinM, 6);
    expect(get(once, 'counter').holes).toHaveLength(2);
    let turned = set;
    for (let i = 0; i < 4; i += 1) turned = survey.turnFixture(turned, 'counter');
    const flat = (k: Kitchen) => get(k, 'sink').outline.flat();
    flat(turned).forEach((value, i) => expect(value).toBeCloseTo(flat(set)[i] ?? 0, 6));
  });
});

describe('resizeFixture', () => {
  const size = (k: Kitchen, kind: 'counter' | 'sink' | 'cooktop') => {
    const b = box(k, kind);
    return [b.xMaxM - b.xMinM, b.yMaxM - b.yMinM];
  };
  it('keeps what is typed, in millimetres and in sixteenths of an inch', () => {
    const SIXTEENTH_M = 0.0254 / 16;
    fc.assert(
      fc.property(
        fc.nat(400),
        fc.nat(400),
        fc.boolean(),
        fc.constantFrom('counter' as const, 'sink' as const, 'cooktop' as const),
        (l, d, inches, kind) => {
          const unit = inches ? SIXTEENTH_M * 16 : 0.005;
          const [lengthM, depthM] = [0.5 + l * unit * 0.1, 0.4 + d * unit * 0.1];
          const typed = [lengthM, depthM].map((m) => Math.round(m / SIXTEENTH_M) * SIXTEENTH_M);
          const [a = 1, b = 1] = inches ? typed : [lengthM, depthM];
          const next = survey.resizeFixture(set, get(set, kind).id, a, b);
          const [gotL = 0, gotD = 0] = size(next, kind);
          // Corners are kept to 0.1 µm, so a length to 0.2 µm.
          expect(Math.abs(gotL - a)).toBeLessThan(2e-7);
          expect(Math.abs(gotD - b)).toBeLessThan(2e-7);
        },
      ),
    );
  });

  it('keeps burners on the cooktop and bowls in the sink', () => {
    const small = survey.resizeFixture(set, 'sink', 0.3, 0.3);
    const bowls = get(small, 'sink').bowls;
    expect(Math.max(...bowls.flatMap((b) => [b.lengthM, b.widthM]))).toBeLessThanOrEqual(0.3);
    const top = get(survey.resizeFixture(set, 'cooktop', 0.4, 0.3), 'cooktop');
    expect(top.burners.every(({ at }) => pointInPolygon(at, top.outline))).toBe(true);
    const larger = survey.resizeFixture(set, 'sink', 0.62, 0.52);
    expect(get(larger, 'sink').bowls).toEqual(get(set, 'sink').bowls);
  });

  it('closes the cut-out of what no longer fits', () => {
    const narrow = survey.resizeFixture(set, 'counter', 2.4, 0.4);
    expect(get(narrow, 'counter').holes).toEqual([]);
    expect(survey.problemsOf(narrow)).toEqual([]);
  });
});

describe('corners', () => {
  it('refuses an outline that would cross itself or uncover a cut-out', () => {
    expect(survey.moveCorner(set, 'counter', 0, [1, 4])).toBe(set);
    const sink = box(set, 'sink');
    expect(survey.moveCorner(set, 'counter', 0, [sink.xMinM + 0.3, 2.4])).toBe(set);
    expect(survey.moveCorner(set, 'counter', 0, [-0.5, 2.4])).not.toBe(set);
  });

  it('adds and takes out a corner, walls keeping their edges', () => {
    const more = survey.addCorner(set, 'counter', 2);
    expect(get(more, 'counter').backEdges).toEqual([
      [2, 3],
      [3, 4],
    ]);
    expect(areaM2(get(more, 'counter').outline)).toBeCloseTo(areaM2(get(set, 'counter').outline));
    expect(survey.removeCorner(more, 'counter', 3)).toEqual(set);
    const before = survey.addCorner(set, 'counter', 0);
    expect(get(before, 'counter').backEdges).toEqual([[3, 4]]);
    expect(survey.removeCorner(before, 'counter', 1)).toEqual(set);
  });

  it('three corners stay', () => {
    const { kitchen } = survey.addFixture(empty, 'table', inEnglish);
    const three = survey.removeCorner(kitchen, 'table', 0);
    expect(get(three, 'table').outline).toHaveLength(3);
    expect(survey.removeCorner(three, 'table', 0)).toBe(three);
  });

  it('an edge at a wall is one or is not', () => {
    const on = survey.toggleBackEdge(set, 'counter', 3);
    expect(get(on, 'counter').backEdges).toContainEqual([3, 0]);
    expect(survey.toggleBackEdge(on, 'counter', 3)).toEqual(set);
  });
});

describe('snapping', () => {
  const far = fc.integer({ min: -3000, max: 6000 }).map((mm) => mm / 1000 + 0.00037);
  const within = (from: readonly number[], to: readonly number[]) =>
    Math.hypot((from[0] ?? 0) - (to[0] ?? 0), (from[1] ?? 0) - (to[1] ?? 0));

  it('is done once and for all, and moves no farther than the snap distance', () => {
    fc.assert(
      fc.property(someEdits, fc.nat(50), fc.nat(9), far, far, (edits, n, corner, x, y) => {
        const kitchen = edits.reduce((k, { run }) => run(k), set);
        const id = kitchen.fixtures[n % Math.max(1, kitchen.fixtures.length)]?.id ?? '';
        for (const snap of [
          (to: readonly [number, number]) => survey.snapMove(kitchen, id, to),
          (to: readonly [number, number]) => survey.snapCorner(kitchen, id, corner, to),
        ]) {
          const once = snap([x, y]);
          expect(snap(once.at).at).toEqual(once.at);
          expect(within([x, y], once.at)).toBeLessThanOrEqual(survey.SNAP_M + 1e-6);
        }
      }),
      { numRuns: 80 },
    );
  }, 60_000);

  it('sets a table flush against the counter, with a guide, else on the grid', () => {
    const { kitchen } = survey.addFixture(set, 'table', inEnglish);
    const edge = box(kitchen, 'counter');
    const snapped = survey.snapMove(kitchen, 'table', [edge.xMaxM + 0.03, 1.013]);
    expect(snapped.at).toEqual([edge.xMaxM, 1]);
    expect(snapped.guides).toHaveLength(1);
  });
});

describe('counterRun', () => {
  it('keeps each typed length along the wall and takes the corner once', () => {
    const { kitchen, id } = survey.counterRun(
      empty,
      [
        { lengthM: 2.437, turn: 'right' },
        { lengthM: 1.8, turn: 'straight' },
      ],
      inEnglish,
    );
    expect(id).toBe('counter');
    const counter = get(kitchen, 'counter');
    const walls = counter.backEdges.map(([from, to]) => {
      const [a, b] = [counter.outline[from] ?? [0, 0], counter.outline[to] ?? [0, 0]];
      return Math.hypot(b[0] - a[0], b[1] - a[1]);
    });
    expect(walls[0]).toBeCloseTo(2.437, 6);
    expect(walls[1]).toBeCloseTo(1.8, 6);
    expect(areaM2(counter.outline)).toBeCloseTo(2.437 * 0.6 + (1.8 - 0.6) * 0.6, 5);
  });

  it('refuses a run that lies over itself', () => {
    const narrow = survey.counterRun(
      empty,
      [
        { lengthM: 2, turn: 'right' },
        { lengthM: 0.9, turn: 'right' },
        { lengthM: 2, turn: 'straight' },
      ],
      inEnglish,
    );
    expect(narrow).toEqual({ kitchen: empty, id: '' });
  });
});
