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
import { message } from '../../messages/index.ts';
import { COUNTRY_CODES } from '../model/country.ts';
import { LIMITS } from '../model/limits.ts';
import {
  dateCodec,
  idCodec,
  localTimeCodec,
  nameCodec,
  polygonCodec,
  powerCodec,
  voltsCodec,
  wordsCodec,
} from './common-codecs.ts';
import { fixtureCodec } from './fixture-codecs.ts';
import { choice, form, number, only, whole, yesNo } from './primitives.ts';
import { list, may, must, orElse, orEstimate, object } from './object.ts';
import { openingCodec } from './wall-codecs.ts';
import { utensilCodec } from './utensil-codec.ts';
import type { Codec } from './codec.ts';
import {
  customCodec,
  hoodKindCodec,
  laneDirectionCodec,
  methodCodec,
  partCodec,
  leavenDayCodec,
  unitSystemCodec,
  pourUntilCodec,
  purposeCodec,
  vesselBodyCodec,
  vesselKindCodec,
} from './choices.ts';

export const FILE_FORMAT = 'glowpour-kitchen';
export const FILE_VERSION = 1;

const override = object<Override>({
  fixture: must(idCodec),
  method: must(methodCodec),
  minutes: may(number(LIMITS.overrideMin)),
  times: may(whole(LIMITS.pourTimes)),
  cover: may(yesNo),
  rest: may(yesNo),
  stone: may(yesNo),
  upwards: may(yesNo),
  row: may(idCodec),
  burner: may(idCodec),
  part: may(partCodec),
  saidBy: must(nameCodec),
  saidOn: must(dateCodec),
  text: may(wordsCodec),
  comment: may(wordsCodec),
});

const ownRow = object<OwnRow>({
  row: must(idCodec),
  method: must(methodCodec),
  minutes: may(number(LIMITS.ownRowMin)),
  cover: may(yesNo),
  why: must(wordsCodec),
  saidBy: must(nameCodec),
  saidOn: must(dateCodec),
});

const ownCustom = object<OwnCustom>({
  name: must(nameCodec),
  basedOn: must(customCodec),
  changedRows: orElse(list(ownRow, LIMITS.ownRows), [], message('problems.filled.own-rows')),
});

const household = object<Household>({
  purpose: must(purposeCodec),
  custom: must(customCodec),
  ownCustom: may(ownCustom),
  people: orElse(whole(LIMITS.people), 1, message('problems.filled.people')),
  names: may(list(nameCodec, LIMITS.people)),
  keepsRestDays: orElse(yesNo, true, message('problems.filled.rest-days')),
  lightingMin: may(number(LIMITS.lightingMin)),
  laneDirection: may(laneDirectionCodec),
  pourUntil: may(pourUntilCodec),
  leavenDay: may(leavenDayCodec),
  armM: may(number(LIMITS.armM)),
  units: may(unitSystemCodec),
  lastHotAt: may(localTimeCodec),
  overrides: orElse(list(override, LIMITS.overrides), [], message('problems.filled.overrides')),
  comment: may(wordsCodec),
});

const place = object<Place>({
  latDeg: must(number(LIMITS.latDeg)),
  lonDeg: must(number(LIMITS.lonDeg)),
  zone: must(
    form(
      '^[A-Za-z][A-Za-z0-9_+-]*(/[A-Za-z0-9_+-]+){0,2}$',
      message('problems.zone.quoted'),
      message('problems.zone.advice'),
    ),
  ),
  land: must(choice(['israel', 'diaspora'])),
});

const room = object<Room>({
  floorAreaM2: must(number(LIMITS.floorAreaM2)),
  heightM: orElse(number(LIMITS.ceilingM), 2.5, message('problems.filled.ceiling')),
  outline: may(polygonCodec),
  openings: may(list(openingCodec, LIMITS.openings)),
  hood: orElse(
    object<Room['hood']>({
      kind: must(hoodKindCodec),
      flowLS: orElse(number(LIMITS.hoodFlowLS), 0, message('problems.filled.not-told')),
    }),
    { kind: 'unknown', flowLS: 0 },
    message('problems.filled.hood'),
  ),
  window: may(
    object<NonNullable<Room['window']>>({
      areaM2: must(number(LIMITS.windowAreaM2)),
      heightM: must(number(LIMITS.windowHeightM)),
    }),
  ),
  outdoorC: may(number(LIMITS.outdoorC)),
  comment: may(wordsCodec),
});

const circuit = object<Circuit>({
  id: must(idCodec),
  name: must(nameCodec),
  ratingA: must(number(LIMITS.circuitA)),
  voltsV: orEstimate(
    voltsCodec,
    ({ supplyV }) => supplyV,
    message('problems.filled.kitchen-mains'),
  ),
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
  maxFillL: must(number(LIMITS.maxFillL)),
  ratedW: orEstimate(
    powerCodec,
    ({ kettleW }, siblings) => kettlePowerW(kettleW, siblings['kind']),
    message('problems.filled.vessel-power'),
  ),
  ratedV: orEstimate(
    voltsCodec,
    ({ supplyV, kettleV }, siblings) =>
      siblings['kind'] === 'electric-kettle' ? kettleV : supplyV,
    message('problems.filled.kitchen-mains'),
  ),
  circuit: may(idCodec),
  burner: may(idCodec),
  count: orElse(whole(LIMITS.vesselCount), 1, message('problems.filled.vessel-count')),
  lastHotAt: may(localTimeCodec),
  comment: may(wordsCodec),
});

const countryCodec = form(
  '^[A-Z]{2}$',
  message('problems.country.allowed'),
  message('problems.country.advice'),
);

const kitchenFields = object<Kitchen>({
  format: must(only(FILE_FORMAT, message('problems.format.advice'))),
  version: must(only(FILE_VERSION, message('problems.version.advice', { version: FILE_VERSION }))),
  name: must(nameCodec),
  comment: may(wordsCodec),
  country: must(countryCodec),
  altitudeM: orElse(number(LIMITS.altitudeM), 0, message('problems.filled.altitude')),
  supplyV: orEstimate(
    voltsCodec,
    ({ supplyV }) => supplyV,
    message('problems.filled.country-mains'),
  ),
  tapColdC: orElse(number(LIMITS.tapColdC), 15, message('problems.filled.tap-cold')),
  place: may(place),
  household: must(household),
  room: must(room),
  circuits: orElse(list(circuit, LIMITS.circuits), [], message('problems.filled.circuits')),
  vessels: orElse(list(vessel, LIMITS.vessels), [], message('problems.filled.vessels')),
  fixtures: must(list(fixtureCodec, LIMITS.fixtures)),
  utensils: may(list(utensilCodec, LIMITS.utensils)),
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
