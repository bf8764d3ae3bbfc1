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
import { message } from '../../messages/index.ts';
import { LIMITS } from '../model/limits.ts';
import {
  edgeCodec,
  idCodec,
  localTimeCodec,
  nameCodec,
  pointCodec,
  polygonCodec,
  powerCodec,
  wordsCodec,
} from './common-codecs.ts';
import { choice, number, whole, yesNo } from './primitives.ts';
import { byKind, list, may, must, orElse, object } from './object.ts';
import { heightsCodec, wallPlaceCodec } from './wall-codecs.ts';
import { named } from './codec.ts';
import {
  burnerTypeCodec,
  conditionCodec,
  cooktopSurfaceCodec,
  designationCodec,
  materialCodec,
  ovenCleaningCodec,
  partCodec,
} from './choices.ts';

const undecided: Designation = 'undecided';

/** Fields that every fixture has. */
const base = {
  id: must(idCodec),
  name: must(nameCodec),
  comment: may(wordsCodec),
  designation: orElse(designationCodec, undecided, message('problems.filled.designation')),
  lastHotAt: may(localTimeCodec),
  parts: may(list(partCodec, LIMITS.parts)),
  heights: may(heightsCodec),
} satisfies { [K in keyof FixtureBase]: unknown };

const unknownMaterial: Material = 'unknown';
const material = orElse(materialCodec, unknownMaterial, message('problems.filled.plan-asks'));
const condition = orElse(conditionCodec, 'unknown', message('problems.filled.plan-asks'));
const outline = must(polygonCodec);
const facts = { varnished: may(yesNo), kneaded: may(yesNo), hotFood: may(yesNo) };

export const holesCodec = list(polygonCodec, LIMITS.holes);
export const backEdgesCodec = list(edgeCodec, LIMITS.backEdges);
const openSidesCodec = list(edgeCodec, LIMITS.openSides);

const counter = named(
  'counter',
  object<Counter>({
    kind: must(choice(['counter'])),
    ...base,
    outline,
    holes: orElse(holesCodec, [], message('problems.filled.holes')),
    backEdges: orElse(backEdgesCodec, [], message('problems.filled.back-edges')),
    openSides: may(openSidesCodec),
    material,
    condition,
    ...facts,
    backsplashHeightM: orElse(number(LIMITS.backsplashM), 0, message('problems.filled.backsplash')),
  }),
);

const bowl = object<Bowl>({
  lengthM: must(number(LIMITS.bowlLengthM)),
  widthM: must(number(LIMITS.bowlWidthM)),
  depthM: must(number(LIMITS.bowlDepthM)),
});

export const bowlsCodec = list(bowl, LIMITS.bowls);

const sink = named(
  'sink',
  object<Sink>({
    kind: must(choice(['sink'])),
    ...base,
    outline,
    material,
    condition,
    varnished: may(yesNo),
    bowls: must(bowlsCodec),
    rimWidthM: must(number(LIMITS.rimM)),
    tap: orElse(
      object<Sink['tap']>({
        handles: must(whole(LIMITS.tapHandles)),
        sprayer: orElse(yesNo, false, message('problems.filled.not-told')),
      }),
      { handles: 1, sprayer: false },
      message('problems.filled.tap'),
    ),
    drainboard: orElse(yesNo, false, message('problems.filled.drainboard')),
  }),
);

const burner = object<Burner>({
  id: must(idCodec),
  name: must(nameCodec),
  type: must(burnerTypeCodec),
  at: must(pointCodec),
  diameterM: must(number(LIMITS.burnerDiameterM)),
  ratedW: must(number(LIMITS.burnerW)),
  ratedV: may(number(LIMITS.voltsV)),
  sensing: may(yesNo),
  circuit: may(idCodec),
  comment: may(wordsCodec),
});

const cooktop = named(
  'cooktop',
  object<Cooktop>({
    kind: must(choice(['cooktop'])),
    ...base,
    outline,
    surface: must(cooktopSurfaceCodec),
    residualHeatLamp: may(yesNo),
    burners: must(list(burner, LIMITS.burners)),
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
    ratedW: must(number(LIMITS.ovenW)),
    cycleMin: may(number(LIMITS.cycleMin)),
    racksStayInCycle: orElse(yesNo, false, message('problems.filled.racks')),
    sharesRangeWith: may(idCodec),
    circuit: may(idCodec),
  }),
);

const table = named(
  'table',
  object<Table>({
    kind: must(choice(['table'])),
    ...base,
    outline,
    openSides: may(openSidesCodec),
    material,
    condition,
    ...facts,
  }),
);

const shelf = object<Cupboard['shelves'][number]>({
  lengthM: must(number(LIMITS.shelfLengthM)),
  widthM: must(number(LIMITS.shelfWidthM)),
});

const cupboard = named(
  'cupboard',
  object<Cupboard>({
    kind: must(choice(['cupboard', 'drawer'])),
    place: may(choice(['over-counter', 'under-counter'])),
    hotFood: may(yesNo),
    ...base,
    outline: may(polygonCodec),
    wallPlace: may(wallPlaceCodec),
    material,
    condition,
    shelves: orElse(list(shelf, LIMITS.shelves), [], message('problems.filled.shelves')),
  }),
);

const appliance = named(
  'appliance',
  object<Appliance>({
    kind: must(choice(['fridge', 'freezer', 'microwave', 'dishwasher', 'warming-drawer', 'hood'])),
    ...base,
    outline: may(polygonCodec),
    wallPlace: may(wallPlaceCodec),
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

/** Codecs that the published schema names. */
export const FIXTURE_CODECS = [counter, sink, cooktop, oven, table, cupboard, appliance];
