import {
  BURNER_TYPES,
  CONDITIONS,
  COOKTOP_SURFACES,
  CUSTOMS,
  DESIGNATIONS,
  HOOD_KINDS,
  LANE_DIRECTIONS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PARTS,
  PURPOSES,
  VESSEL_BODIES,
  VESSEL_KINDS,
} from '../model/ids.ts';
import { named } from './codec.ts';
import { choice } from './primitives.ts';

export const materialCodec = named('material', choice(MATERIALS));
export const conditionCodec = named('condition', choice(CONDITIONS));
export const methodCodec = named('method', choice(METHODS));
export const burnerTypeCodec = named('burnerType', choice(BURNER_TYPES));
export const designationCodec = named('designation', choice(DESIGNATIONS));
export const partCodec = named('part', choice(PARTS));
export const purposeCodec = choice(PURPOSES);
export const customCodec = choice(CUSTOMS);
export const hoodKindCodec = choice(HOOD_KINDS);
export const laneDirectionCodec = choice(LANE_DIRECTIONS);
export const vesselKindCodec = choice(VESSEL_KINDS);
export const vesselBodyCodec = choice(VESSEL_BODIES);
export const ovenCleaningCodec = choice(OVEN_CLEANINGS);
export const cooktopSurfaceCodec = choice(COOKTOP_SURFACES);
