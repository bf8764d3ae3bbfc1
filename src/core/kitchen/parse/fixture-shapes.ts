import type {
  Appliance,
  Bowl,
  Burner,
  Cooktop,
  Counter,
  Cupboard,
  Designation,
  Fixture,
  FixtureBase,
  Material,
  Oven,
  Sink,
  Table,
} from '../types.ts';
import {
  edgeShape,
  idShape,
  nameShape,
  pointShape,
  polygonShape,
  powerShape,
  wordsShape,
} from './common-shapes.ts';
import { choice, number, whole, yesNo } from './leaves.ts';
import { byKind, list, may, must, orElse, record } from './record.ts';
import { named } from './shape.ts';
import {
  burnerTypeShape,
  conditionShape,
  designationShape,
  materialShape,
  ovenCleaningShape,
} from './words.ts';

const MOST_HOLES = 20;
const MOST_BOWLS = 6;
const MOST_BURNERS = 16;
const MOST_SHELVES = 60;

const undecided: Designation = 'undecided';

/** Fields that every fixture has. */
const base = {
  id: must(idShape),
  name: must(nameShape),
  comment: may(wordsShape),
  designation: orElse(designationShape, undecided, 'nobody has said where it is to belong'),
} satisfies { [K in keyof FixtureBase]: unknown };

const unknownMaterial: Material = 'unknown';
const material = orElse(materialShape, unknownMaterial, 'not told: the plan asks');
const condition = orElse(conditionShape, 'unknown', 'not told: the plan asks');
const outline = must(polygonShape);

const counter = named(
  'counter',
  record<Counter>({
    kind: must(choice(['counter'])),
    ...base,
    outline,
    holes: orElse(list(polygonShape, 0, MOST_HOLES), [], 'no cut-out was drawn'),
    backEdges: orElse(list(edgeShape, 0, MOST_HOLES), [], 'no edge stands at a wall'),
    material,
    condition,
    backsplashHeightM: orElse(number(0, 3), 0, 'no backsplash was told'),
  }),
);

const bowl = record<Bowl>({
  lengthM: must(number(0.1, 3)),
  widthM: must(number(0.1, 1.5)),
  depthM: must(number(0.03, 1)),
});

const sink = named(
  'sink',
  record<Sink>({
    kind: must(choice(['sink'])),
    ...base,
    outline,
    material,
    condition,
    bowls: must(list(bowl, 1, MOST_BOWLS)),
    rimWidthM: must(number(0, 0.3)),
    tap: orElse(
      record<Sink['tap']>({
        handles: must(whole(0, 6)),
        sprayer: orElse(yesNo, false, 'not told'),
      }),
      { handles: 1, sprayer: false },
      'one handle without a sprayer is usual',
    ),
    drainboard: orElse(yesNo, false, 'no drainboard was told'),
  }),
);

const burner = record<Burner>({
  id: must(idShape),
  name: must(nameShape),
  type: must(burnerTypeShape),
  at: must(pointShape),
  diameterM: must(number(0.04, 0.6)),
  ratedW: must(number(200, 60_000)),
  circuit: may(idShape),
  comment: may(wordsShape),
});

const cooktop = named(
  'cooktop',
  record<Cooktop>({
    kind: must(choice(['cooktop'])),
    ...base,
    outline,
    surface: must(choice(['metal', 'enamel', 'glass-ceramic'])),
    burners: must(list(burner, 1, MOST_BURNERS)),
  }),
);

const oven = named(
  'oven',
  record<Oven>({
    kind: must(choice(['oven'])),
    ...base,
    outline,
    cleaning: must(ovenCleaningShape),
    heat: must(choice(['electric', 'gas'])),
    ratedW: must(number(200, 60_000)),
    cycleMin: may(number(30, 600)),
    racksStayInCycle: orElse(yesNo, false, 'racks come out unless the maker allows them in'),
    sharesRangeWith: may(idShape),
    circuit: may(idShape),
  }),
);

const table = named(
  'table',
  record<Table>({ kind: must(choice(['table'])), ...base, outline, material, condition }),
);

const shelf = record<Cupboard['shelves'][number]>({
  lengthM: must(number(0.05, 6)),
  widthM: must(number(0.05, 3)),
});

const cupboard = named(
  'cupboard',
  record<Cupboard>({
    kind: must(choice(['cupboard', 'drawer'])),
    ...base,
    outline: may(polygonShape),
    material,
    condition,
    shelves: orElse(list(shelf, 0, MOST_SHELVES), [], 'no shelf was measured'),
  }),
);

const appliance = named(
  'appliance',
  record<Appliance>({
    kind: must(choice(['fridge', 'freezer', 'microwave', 'dishwasher', 'warming-drawer', 'hood'])),
    ...base,
    outline: may(polygonShape),
    ratedW: may(powerShape),
    circuit: may(idShape),
    material,
  }),
);

export const fixtureShape = byKind<Fixture>({
  counter,
  sink,
  cooktop,
  oven,
  table,
  cupboard,
  drawer: cupboard,
  fridge: appliance,
  freezer: appliance,
  microwave: appliance,
  dishwasher: appliance,
  'warming-drawer': appliance,
  hood: appliance,
});

/** Shapes that the published schema names. */
export const FIXTURE_SHAPES = [counter, sink, cooktop, oven, table, cupboard, appliance];
