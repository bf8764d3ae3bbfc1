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
  LEAVEN_DAYS,
  POUR_UNTIL,
  PURPOSES,
  UNIT_SYSTEMS,
  VESSEL_BODIES,
  UTENSIL_KINDS,
  UTENSIL_MATERIALS,
  UTENSIL_METHODS,
  UTENSIL_USES,
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
export const pourUntilCodec = choice(POUR_UNTIL);
export const leavenDayCodec = choice(LEAVEN_DAYS);
export const unitSystemCodec = choice(UNIT_SYSTEMS);
export const vesselKindCodec = choice(VESSEL_KINDS);
export const vesselBodyCodec = choice(VESSEL_BODIES);
export const ovenCleaningCodec = choice(OVEN_CLEANINGS);
export const utensilKindCodec = choice(UTENSIL_KINDS);
export const utensilMaterialCodec = choice(UTENSIL_MATERIALS);
export const utensilUseCodec = choice(UTENSIL_USES);
export const utensilMethodCodec = choice(UTENSIL_METHODS);
export const cooktopSurfaceCodec = choice(COOKTOP_SURFACES);
