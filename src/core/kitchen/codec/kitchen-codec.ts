import type {
  Circuit,
  Household,
  Kitchen,
  Override,
  OwnCustom,
  OwnRow,
  Place,
  Room,
  Vessel,
} from '../model/kitchen.ts';
import { COUNTRY_CODES } from '../model/country.ts';
import {
  dateCodec,
  idCodec,
  nameCodec,
  powerCodec,
  voltsCodec,
  wordsCodec,
} from './common-codecs.ts';
import { fixtureCodec } from './fixture-codecs.ts';
import { choice, form, number, only, whole, yesNo } from './primitives.ts';
import { list, may, must, orElse, orEstimate, object } from './object.ts';
import type { Codec } from './codec.ts';
import {
  customCodec,
  hoodKindCodec,
  methodCodec,
  purposeCodec,
  vesselBodyCodec,
  vesselKindCodec,
} from './choices.ts';

export const FILE_FORMAT = 'glowpour-kitchen';
export const FILE_VERSION = 1;

/** Most of each kind of thing: far above a hall kitchen, low enough for a tablet. */
const MOST = { overrides: 200, ownRows: 60, circuits: 60, vessels: 60, fixtures: 300 } as const;

const override = object<Override>({
  fixture: must(idCodec),
  method: must(methodCodec),
  minutes: may(number(1, 1440)),
  cover: may(yesNo),
  saidBy: must(nameCodec),
  saidOn: must(dateCodec),
  text: may(wordsCodec),
  comment: may(wordsCodec),
});

const ownRow = object<OwnRow>({
  row: must(idCodec),
  method: must(methodCodec),
  minutes: may(number(1, 600)),
  cover: may(yesNo),
  why: must(wordsCodec),
  saidBy: must(nameCodec),
  saidOn: must(dateCodec),
});

const ownCustom = object<OwnCustom>({
  name: must(nameCodec),
  basedOn: must(customCodec),
  changedRows: orElse(list(ownRow, 0, MOST.ownRows), [], 'no row was changed'),
});

const household = object<Household>({
  purpose: must(purposeCodec),
  custom: must(customCodec),
  ownCustom: may(ownCustom),
  people: orElse(whole(1, 8), 1, 'one person works unless more are told'),
  keepsRestDays: orElse(yesNo, true, 'nothing is planned on Sabbaths and festivals unless told'),
  lightingMin: may(number(0, 90)),
  laneDirection: may(choice(['back-to-front', 'shortest'])),
  overrides: orElse(list(override, 0, MOST.overrides), [], 'no answer of a rabbi was entered'),
  comment: may(wordsCodec),
});

const place = object<Place>({
  latDeg: must(number(-90, 90)),
  lonDeg: must(number(-180, 180)),
  zone: must(
    form(
      '^[A-Za-z][A-Za-z0-9_+-]*(/[A-Za-z0-9_+-]+){0,2}$',
      'an IANA time-zone name in quotes',
      'Write it like "Europe/Paris": area, slash, city.',
    ),
  ),
  land: must(choice(['israel', 'diaspora'])),
});

const room = object<Room>({
  floorAreaM2: must(number(1, 1000)),
  heightM: orElse(number(1.8, 10), 2.5, 'a usual ceiling height'),
  hood: orElse(
    object<Room['hood']>({
      kind: must(hoodKindCodec),
      flowLS: orElse(number(0, 5000), 0, 'not told'),
    }),
    { kind: 'none', flowLS: 0 },
    'no hood was told: the careful side',
  ),
  window: orElse(
    object<Room['window']>({ areaM2: must(number(0, 50)), heightM: must(number(0, 6)) }),
    { areaM2: 0, heightM: 0 },
    'no window was told: the careful side',
  ),
  comment: may(wordsCodec),
});

const circuit = object<Circuit>({
  id: must(idCodec),
  name: must(nameCodec),
  ratingA: must(number(1, 200)),
  voltsV: orEstimate(voltsCodec, ({ supplyV }) => supplyV, 'the mains voltage of the kitchen'),
  comment: may(wordsCodec),
});

function kettlePowerW(typicalKettleW: number, kind: unknown): number {
  return kind === 'electric-kettle' ? typicalKettleW : 0;
}

const vessel = object<Vessel>({
  id: must(idCodec),
  name: must(nameCodec),
  kind: must(vesselKindCodec),
  body: must(vesselBodyCodec),
  maxFillL: must(number(0.2, 200)),
  ratedW: orEstimate(
    powerCodec,
    ({ kettleW }, siblings) => kettlePowerW(kettleW, siblings['kind']),
    'usual for an electric kettle in this country; 0 for what stands on the stove',
  ),
  ratedV: orEstimate(voltsCodec, ({ supplyV }) => supplyV, 'the mains voltage of the kitchen'),
  circuit: may(idCodec),
  burner: may(idCodec),
  count: orElse(whole(1, 20), 1, 'one unless more are told'),
  comment: may(wordsCodec),
});

const countryShape = form(
  '^[A-Z]{2}$',
  'a country as two capital letters (ISO 3166-1)',
  'Write the two-letter code, such as "US", "GB" or "IL".',
);

const kitchenFields = object<Kitchen>({
  format: must(
    only(FILE_FORMAT, 'This marks a kitchen file; without it the file is another kind.'),
  ),
  version: must(only(FILE_VERSION, 'Write 1: the version of this format.')),
  name: must(nameCodec),
  comment: may(wordsCodec),
  country: must(countryShape),
  altitudeM: orElse(number(-430, 5000), 0, 'sea level: water boils lower in the mountains'),
  supplyV: orEstimate(voltsCodec, ({ supplyV }) => supplyV, 'the mains voltage of the country'),
  tapColdC: orElse(number(0.5, 40), 15, 'usual for mains water and for kettle tests'),
  place: may(place),
  household: must(household),
  room: must(room),
  circuits: orElse(list(circuit, 0, MOST.circuits), [], 'no circuit was told'),
  vessels: orElse(list(vessel, 0, MOST.vessels), [], 'no kettle was told'),
  fixtures: must(list(fixtureCodec, 0, MOST.fixtures)),
});

/**
 * The kitchen file. Without a known country there is no mains voltage to fill
 * in, which the schema says too; the reader leaves 0 for the checks to refuse.
 */
export const kitchenCodec: Codec<Kitchen> = {
  ...kitchenFields,
  schema: {
    ...kitchenFields.schema,
    anyOf: [{ properties: { country: { enum: COUNTRY_CODES } } }, { required: ['supplyV'] }],
  },
};
