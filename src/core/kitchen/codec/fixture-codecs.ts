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
} from '../model/kitchen.ts';
import {
  edgeCodec,
  idCodec,
  nameCodec,
  pointCodec,
  polygonCodec,
  powerCodec,
  wordsCodec,
} from './common-codecs.ts';
import { choice, number, whole, yesNo } from './primitives.ts';
import { byKind, list, may, must, orElse, object } from './object.ts';
import { named } from './codec.ts';
import {
  burnerTypeCodec,
  conditionCodec,
  designationCodec,
  materialCodec,
  ovenCleaningCodec,
} from './choices.ts';

const MOST_HOLES = 20;
const MOST_BOWLS = 6;
const MOST_BURNERS = 16;
const MOST_SHELVES = 60;

const undecided: Designation = 'undecided';

/** Fields that every fixture has. */
const base = {
  id: must(idCodec),
  name: must(nameCodec),
  comment: may(wordsCodec),
  designation: orElse(designationCodec, undecided, 'nobody has said where it is to belong'),
} satisfies { [K in keyof FixtureBase]: unknown };

const unknownMaterial: Material = 'unknown';
const material = orElse(materialCodec, unknownMaterial, 'not told: the plan asks');
const condition = orElse(conditionCodec, 'unknown', 'not told: the plan asks');
const outline = must(polygonCodec);

const counter = named(
  'counter',
  object<Counter>({
    kind: must(choice(['counter'])),
    ...base,
    outline,
    holes: orElse(list(polygonCodec, 0, MOST_HOLES), [], 'no cut-out was drawn'),
    backEdges: orElse(list(edgeCodec, 0, MOST_HOLES), [], 'no edge stands at a wall'),
    material,
    condition,
    backsplashHeightM: orElse(number(0, 3), 0, 'no backsplash was told'),
  }),
);

const bowl = object<Bowl>({
  lengthM: must(number(0.1, 3)),
  widthM: must(number(0.1, 1.5)),
  depthM: must(number(0.03, 1)),
});

const sink = named(
  'sink',
  object<Sink>({
    kind: must(choice(['sink'])),
    ...base,
    outline,
    material,
    condition,
    bowls: must(list(bowl, 1, MOST_BOWLS)),
    rimWidthM: must(number(0, 0.3)),
    tap: orElse(
      object<Sink['tap']>({
        handles: must(whole(0, 6)),
        sprayer: orElse(yesNo, false, 'not told'),
      }),
      { handles: 1, sprayer: false },
      'one handle without a sprayer is usual',
    ),
    drainboard: orElse(yesNo, false, 'no drainboard was told'),
  }),
);

const burner = object<Burner>({
  id: must(idCodec),
  name: must(nameCodec),
  type: must(burnerTypeCodec),
  at: must(pointCodec),
  diameterM: must(number(0.04, 0.6)),
  ratedW: must(number(200, 60_000)),
  circuit: may(idCodec),
  comment: may(wordsCodec),
});

const cooktop = named(
  'cooktop',
  object<Cooktop>({
    kind: must(choice(['cooktop'])),
    ...base,
    outline,
    surface: must(choice(['metal', 'enamel', 'glass-ceramic'])),
    burners: must(list(burner, 1, MOST_BURNERS)),
  }),
);

const oven = named(
  'oven',
  object<Oven>({
    kind: must(choice(['oven'])),
    ...base,
    outline,
    cleaning: must(ovenCleaningCodec),
    heat: must(choice(['electric', 'gas'])),
    ratedW: must(number(200, 60_000)),
    cycleMin: may(number(30, 600)),
    racksStayInCycle: orElse(yesNo, false, 'racks come out unless the maker allows them in'),
    sharesRangeWith: may(idCodec),
    circuit: may(idCodec),
  }),
);

const table = named(
  'table',
  object<Table>({ kind: must(choice(['table'])), ...base, outline, material, condition }),
);

const shelf = object<Cupboard['shelves'][number]>({
  lengthM: must(number(0.05, 6)),
  widthM: must(number(0.05, 3)),
});

const cupboard = named(
  'cupboard',
  object<Cupboard>({
    kind: must(choice(['cupboard', 'drawer'])),
    ...base,
    outline: may(polygonCodec),
    material,
    condition,
    shelves: orElse(list(shelf, 0, MOST_SHELVES), [], 'no shelf was measured'),
  }),
);

const appliance = named(
  'appliance',
  object<Appliance>({
    kind: must(choice(['fridge', 'freezer', 'microwave', 'dishwasher', 'warming-drawer', 'hood'])),
    ...base,
    outline: may(polygonCodec),
    ratedW: may(powerCodec),
    circuit: may(idCodec),
    material,
  }),
);

export const fixtureCodec = byKind<Fixture>({
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
export const FIXTURE_CODECS = [counter, sink, cooktop, oven, table, cupboard, appliance];
