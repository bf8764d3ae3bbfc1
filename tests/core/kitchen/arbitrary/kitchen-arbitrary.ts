import { type Polygon } from '../../../../src/core/geometry/index.ts';
import * as fc from 'fast-check';
import type {
  Appliance,
  Burner,
  Circuit,
  Condition,
  Fixture,
  FixtureBase,
  Kitchen,
  Material,
  Vessel,
} from '../../../../src/core/kitchen/index.ts';
import { households } from './household-arbitrary.ts';
import { rooms } from './room-arbitrary.ts';
import { utensils } from './utensil-arbitrary.ts';

const cm = (metres: number) => Number(metres.toFixed(2));
const metres = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => n / 100);

function rectangle(x: number, y: number, w: number, d: number): Polygon {
  return [
    [cm(x), cm(y)],
    [cm(x + w), cm(y)],
    [cm(x + w), cm(y + d)],
    [cm(x), cm(y + d)],
  ];
}

const MATERIALS: readonly Material[] = [
  'stainless-steel',
  'enamelled-steel',
  'porcelain',
  'granite',
  'marble',
  'quartz-composite',
  'laminate',
  'wood',
  'raw-wood',
  'tile',
  'plastic',
  'glass',
  'unknown',
];
const CONDITIONS: readonly Condition[] = ['smooth', 'scratched', 'cracked', 'porous', 'unknown'];

const material = fc.constantFrom(...MATERIALS);
const condition = fc.constantFrom(...CONDITIONS);
const name = fc.constantFrom('left', 'right', 'old', 'new', 'by the door', 'Küche 2', 'כיור');

function base(id: string): fc.Arbitrary<FixtureBase> {
  return fc.record(
    {
      id: fc.constant(id),
      name,
      comment: fc.constantFrom('a note', 'with "quotes" and \\', 'two\nlines'),
      designation: fc.constantFrom('meat', 'dairy', 'pareve', 'undecided'),
      lastHotAt: fc.constantFrom('2026-03-29T20:00', '2028-02-29T07:30'),
      heights: fc.constantFrom({ fromM: 0, toM: 0.9 }, { fromM: 1.4, toM: 2.1 }),
    },
    { requiredKeys: ['id', 'name', 'designation'] },
  );
}

/** Fixtures stand in a row, five metres a place, so that none meets another. */
function counterAt(i: number): fc.Arbitrary<Fixture> {
  return fc
    .tuple(
      base(`counter-${i}`),
      metres(0.5, 4),
      metres(0.4, 0.9),
      material,
      condition,
      fc.boolean(),
    )
    .map(([b, length, depth, m, c, hole]): Fixture => {
      const outline = rectangle(i * 5, 0, length, depth);
      const holes = hole ? [rectangle(i * 5 + 0.05, 0.05, length / 3, depth / 2)] : [];
      return {
        ...b,
        kind: 'counter',
        outline,
        holes,
        backEdges: [[2, 3]],
        material: m,
        condition: c,
        backsplashHeightM: hole ? 0.1 : 0,
      };
    });
}

function sinkAt(i: number): fc.Arbitrary<Fixture> {
  return fc
    .tuple(base(`sink-${i}`), fc.integer({ min: 1, max: 3 }), material, condition, fc.boolean())
    .map(([b, bowls, m, c, yes]): Fixture => ({
      ...b,
      kind: 'sink',
      outline: rectangle(i * 5, 0, 0.1 + bowls * 0.4, 0.5),
      material: m,
      condition: c,
      bowls: Array.from({ length: bowls }, () => ({ lengthM: 0.36, widthM: 0.4, depthM: 0.18 })),
      rimWidthM: 0.03,
      tap: { handles: yes ? 2 : 1, sprayer: !yes },
      drainboard: yes,
    }));
}

function burnersAt(
  i: number,
  type: Burner['type'],
  circuit: string | undefined,
): readonly Burner[] {
  return ['front left', 'front right', 'back left', 'back right'].map((place, j) => ({
    id: `burner-${i}-${j}`,
    name: place,
    type,
    at: [cm(i * 5 + 0.2 + 0.3 * (j % 2)), j < 2 ? 0.15 : 0.4],
    diameterM: 0.18,
    ratedW: 1800,
    ...(circuit === undefined ? {} : { circuit }),
  }));
}

function rangeAt(i: number, circuits: readonly Circuit[]): fc.Arbitrary<readonly Fixture[]> {
  const types = [
    'electric-coil',
    'solid-plate',
    'radiant-glass',
    'induction',
    'gas-sealed',
    'gas-open',
  ] as const;
  const supply = circuits[0]?.id;
  return fc
    .tuple(
      base(`cooktop-${i}`),
      base(`oven-${i}`),
      fc.constantFrom(...types),
      fc.constantFrom('pyrolytic', 'steam', 'catalytic', 'none'),
      fc.boolean(),
    )
    .map(([top, oven, type, cleaning, shares]): readonly Fixture[] => {
      const gas = type.startsWith('gas');
      const outline = rectangle(i * 5, 0, 0.7, 0.55);
      const glass = type === 'radiant-glass' || type === 'induction';
      return [
        {
          ...top,
          kind: 'cooktop',
          outline,
          surface: glass ? 'glass-ceramic' : 'enamel',
          burners: burnersAt(i, type, gas ? undefined : supply),
        },
        {
          ...oven,
          kind: 'oven',
          outline,
          cleaning,
          heat: gas && cleaning !== 'pyrolytic' ? 'gas' : 'electric',
          ratedW: 3200,
          racksStayInCycle: !shares,
          ...(cleaning === 'pyrolytic' ? { cycleMin: 180 } : {}),
          ...(shares ? { sharesRangeWith: top.id } : {}),
        },
      ];
    });
}

function otherAt(i: number): fc.Arbitrary<Fixture> {
  const outline = rectangle(i * 5, 0, 1.2, 0.8);
  const shelves = [{ lengthM: 0.8, widthM: 0.3 }];
  const kinds: readonly Appliance['kind'][] = [
    'fridge',
    'freezer',
    'microwave',
    'dishwasher',
    'warming-drawer',
    'hood',
  ];
  return fc
    .tuple(
      base(`other-${i}`),
      fc.constantFrom('table', 'cupboard', 'drawer', ...kinds),
      material,
      condition,
    )
    .map(([b, kind, m, c]): Fixture => {
      if (kind === 'table') return { ...b, kind, outline, material: m, condition: c };
      if (kind === 'cupboard') return { ...b, kind, outline, material: m, condition: c, shelves };
      if (kind === 'drawer') return { ...b, kind, material: m, condition: c, shelves: [] };
      return { ...b, kind, outline, ratedW: 900, material: m };
    });
}

function vessels(
  circuits: readonly Circuit[],
  burner: string | undefined,
): fc.Arbitrary<readonly Vessel[]> {
  const volts = circuits[0]?.voltsV ?? 230;
  const electric = fc
    .tuple(
      fc.constantFrom('plastic', 'steel', 'glass', 'double-wall'),
      metres(0.8, 2),
      fc.integer({ min: 1, max: 3 }),
    )
    .map(([body, maxFillL, count]): Vessel => ({
      id: 'kettle',
      name: 'Kettle',
      kind: 'electric-kettle',
      body,
      maxFillL,
      ratedW: volts < 200 ? 1500 : 2200,
      ratedV: volts,
      ...(circuits[0] ? { circuit: circuits[0].id } : {}),
      count,
    }));
  if (burner === undefined) return electric.map((kettle) => [kettle]);
  const onStove: Vessel = {
    id: 'pot',
    name: 'Pot',
    kind: 'pot',
    body: 'steel',
    maxFillL: 5,
    ratedW: 0,
    ratedV: volts,
    burner,
    count: 1,
  };
  return fc
    .tuple(electric, fc.boolean())
    .map(([kettle, both]) => (both ? [kettle, onStove] : [kettle]));
}

function circuitsFor(supplyV: number, count: number): readonly Circuit[] {
  return Array.from({ length: count }, (_, i) => ({
    id: `circuit-${i}`,
    name: `Sockets ${i + 1}`,
    ratingA: supplyV < 200 ? 20 : 16,
    voltsV: supplyV,
  }));
}

function fixtures(circuits: readonly Circuit[]): fc.Arbitrary<readonly Fixture[]> {
  const one = (i: number): fc.Arbitrary<readonly Fixture[]> =>
    fc.oneof(
      counterAt(i).map((f) => [f]),
      sinkAt(i).map((f) => [f]),
      rangeAt(i, circuits),
      otherAt(i).map((f) => [f]),
    );
  return fc
    .integer({ min: 1, max: 6 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => one(i))))
    .map((groups) => groups.flat());
}

function around(
  circuits: readonly Circuit[],
  all: readonly Fixture[],
  supplyV: number,
): fc.Arbitrary<Kitchen> {
  const top = all.find((f) => f.kind === 'cooktop');
  const first = all[0]?.id ?? '';
  return fc.record({
    format: fc.constant('glowpour-kitchen'),
    version: fc.constant(1),
    name: fc.constant('Random kitchen'),
    country: fc.constant(supplyV < 200 ? 'US' : 'FR'),
    altitudeM: fc.integer({ min: -400, max: 3000 }),
    supplyV: fc.constant(supplyV),
    tapColdC: fc.integer({ min: 5, max: 25 }),
    household: households(first),
    room: rooms(),
    circuits: fc.constant(circuits),
    vessels: vessels(circuits, top?.kind === 'cooktop' ? top.burners[0]?.id : undefined),
    fixtures: fc.constant(all),
  });
}

/** Kitchens that hold together: every id exists, every outline is simple. */
export function kitchens(): fc.Arbitrary<Kitchen> {
  return fc
    .tuple(fc.constantFrom(120, 230), fc.integer({ min: 0, max: 3 }))
    .chain(([supplyV, count]) => {
      const circuits = circuitsFor(supplyV, count);
      return fixtures(circuits).chain((all) => around(circuits, all, supplyV));
    })
    .chain((kitchen) =>
      fc.oneof(
        fc.constant(kitchen),
        utensils().map((some): Kitchen => ({ ...kitchen, utensils: some })),
      ),
    );
}
