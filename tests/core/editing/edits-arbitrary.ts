import { type Point } from '../../../src/core/geometry/index.ts';
import * as fc from 'fast-check';
import type { Kitchen, VesselKind } from '../../../src/core/kitchen/index.ts';
import * as survey from '../../../src/core/editing/index.ts';
import { inEnglish } from '../../support/english.ts';

/** A change to whatever kitchen it meets: picks are shares of what is there. */
export type Edit = { readonly says: string; readonly run: (kitchen: Kitchen) => Kitchen };

const cm = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 100);
const place: fc.Arbitrary<Point> = fc.tuple(cm(-200, 600), cm(-200, 500));
const pick = fc.nat(1000);
const offer = fc.constantFrom(...survey.OFFERS.map(({ id }) => id));
const turn = fc.constantFrom('left' as const, 'right' as const, 'straight' as const);
const kinds: readonly VesselKind[] = ['electric-kettle', 'stove-kettle', 'urn', 'pot'];

function edit<T>(
  says: string,
  from: fc.Arbitrary<T>,
  run: (kitchen: Kitchen, value: T) => Kitchen,
): fc.Arbitrary<Edit> {
  return from.map((value) => ({
    says: `${says} ${JSON.stringify(value)}`,
    run: (k) => run(k, value),
  }));
}

/** An edit of one fixture, burner, circuit or vessel, if there is one. */
function onOne<T>(
  says: string,
  list: (kitchen: Kitchen) => readonly { readonly id: string }[],
  from: fc.Arbitrary<T>,
  run: (kitchen: Kitchen, id: string, value: T) => Kitchen,
): fc.Arbitrary<Edit> {
  return edit(says, fc.tuple(pick, from), (kitchen, [n, value]) => {
    const all = list(kitchen);
    const one = all[n % Math.max(1, all.length)];
    return one ? run(kitchen, one.id, value) : kitchen;
  });
}

const fixtures = (k: Kitchen) => k.fixtures;
const openings = (k: Kitchen) => k.room.openings ?? [];
const nothing = fc.constant(0);
const cooktops = (k: Kitchen) => k.fixtures.filter(({ kind }) => kind === 'cooktop');
const corner = fc.nat(9);

const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 6,
    arbitrary: edit('add', offer, (k, id) => survey.addFixture(k, id, inEnglish).kitchen),
  },
  edit(
    'add at',
    fc.tuple(offer, place),
    (k, [id, at]) => survey.addFixture(k, id, inEnglish, { at }).kitchen,
  ),
  onOne('remove', fixtures, nothing, (k, id) => survey.removeFixture(k, id)),
  onOne('copy', fixtures, nothing, (k, id) => survey.copyFixture(k, id).kitchen),
  { weight: 3, arbitrary: onOne('move', fixtures, place, survey.moveFixture) },
  onOne('turn', fixtures, nothing, (k, id) => survey.turnFixture(k, id)),
  {
    weight: 3,
    arbitrary: onOne('resize', fixtures, fc.tuple(cm(2, 400), cm(2, 200)), (k, id, [l, d]) =>
      survey.resizeFixture(k, id, l, d),
    ),
  },
  {
    weight: 3,
    arbitrary: onOne('corner', fixtures, fc.tuple(corner, place), (k, id, [n, to]) =>
      survey.moveCorner(k, id, n, to),
    ),
  },
  onOne('add corner', fixtures, corner, survey.addCorner),
  onOne('remove corner', fixtures, corner, survey.removeCorner),
  onOne('wall edge', fixtures, corner, survey.toggleBackEdge),
  onOne(
    'change',
    fixtures,
    fc.constantFrom<Record<string, unknown>>(
      { material: 'granite', condition: 'smooth', id: 'other', kind: 'table' },
      { cleaning: 'none', racksStayInCycle: true, cycleMin: 180 },
      { name: 'Left one', designation: 'dairy', outline: undefined, holes: [] },
      { sharesRangeWith: undefined, circuit: undefined, burners: [] },
    ),
    survey.changeFixture,
  ),
  edit(
    'run',
    fc.array(fc.record({ lengthM: cm(20, 400), turn }), { maxLength: 5 }),
    (k, pieces) => survey.counterRun(k, pieces, inEnglish).kitchen,
  ),
  edit(
    'vessel',
    fc.constantFrom(...kinds),
    (k, kind) => survey.addVessel(k, kind, inEnglish).kitchen,
  ),
  onOne(
    'vessel as',
    (k) => k.vessels,
    fc.constantFrom(...kinds),
    (k, id, kind) => survey.changeVessel(k, id, { kind }),
  ),
  onOne(
    'vessel off',
    (k) => k.vessels,
    nothing,
    (k, id) => survey.removeVessel(k, id),
  ),
  edit(
    'opening',
    fc.constantFrom('door' as const, 'window' as const, 'passage' as const),
    (k, kind) => survey.addOpening(k, kind).kitchen,
  ),
  onOne('opening to', openings, place, survey.moveOpening),
  onOne('opening wider', openings, fc.tuple(cm(-100, 100), cm(-50, 300)), (k, id, [by, wider]) =>
    survey.shiftOpening(k, id, by, wider),
  ),
  onOne('opening off', openings, nothing, (k, id) => survey.removeOpening(k, id)),
  edit('push wall', fc.tuple(fc.nat(3), cm(-300, 300)), (k, [n, by]) =>
    survey.moveWall(k, [n, (n + 1) % 4], by),
  ),
  onOne('hang', fixtures, fc.nat(3), (k, id, n) => survey.hangFixture(k, id, [n, (n + 1) % 4])),
  onOne(
    'along the wall',
    fixtures,
    fc.tuple(fc.nat(3), cm(-200, 200), cm(-100, 100)),
    (k, id, [n, along, up]) => survey.moveAtWall(k, id, [n, (n + 1) % 4], [along, up]),
  ),
  edit('circuit', nothing, (k) => survey.addCircuit(k, inEnglish).kitchen),
  onOne(
    'circuit off',
    (k) => k.circuits,
    nothing,
    (k, id) => survey.removeCircuit(k, id),
  ),
  onOne('plug in', cooktops, pick, (k, id, n) => {
    const top = k.fixtures.find((f) => f.id === id);
    const circuit = k.circuits[n % Math.max(1, k.circuits.length)];
    const burner = top?.kind === 'cooktop' ? top.burners[0] : undefined;
    return circuit && burner ? survey.changeBurner(k, id, burner.id, { circuit: circuit.id }) : k;
  }),
  onOne('burner', cooktops, nothing, (k, id) => survey.addBurner(k, id, inEnglish).kitchen),
  onOne('burner off', cooktops, pick, (k, id, n) => {
    const top = k.fixtures.find((f) => f.id === id);
    const burner = top?.kind === 'cooktop' ? top.burners[n % top.burners.length] : undefined;
    return burner ? survey.removeBurner(k, id, burner.id) : k;
  }),
);

export const someEdits: fc.Arbitrary<readonly Edit[]> = fc.array(anyEdit, {
  minLength: 1,
  maxLength: 25,
});
