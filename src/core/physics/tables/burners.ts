import table from '../../../../shared/burners.json';
import { inRange, OutOfRangeError, type Band } from '../../units/index.ts';
import type { StillShape } from './still-shapes.ts';
import type { TouchKind } from './materials.ts';

export type BurnerRow = {
  readonly type: string;
  readonly ratedW: Band;
  /** Share of the rated power that heats the part which glows. */
  readonly absorbedShare: number;
  /** low: what stays hottest. */
  readonly areaM2: Band;
  readonly emissivity: number;
  readonly heatCapacityJK: number;
  /** While it is lit, and only then. */
  readonly filmWM2K: number;
  /** What of it glows. */
  readonly glows: 'whole' | 'part' | 'ribbon' | 'tips';
  /** The body that stays hot afterwards in still air; fromC null: at the glowing part's steady temperature. */
  readonly after: {
    readonly shape: StillShape;
    readonly sizeM: number;
    /** Ends of heat capacity over area, as shares of the typical. */
    readonly heatCapacityShare: Band;
    readonly areaM2: number;
    readonly heatCapacityJK: number;
    readonly emissivity: number;
    readonly fromC: Band | null;
    readonly kind: TouchKind;
  };
  readonly source: string;
  readonly checked: boolean;
};

const ROWS = table.rows as readonly BurnerRow[];
const LEAST_W = table.ranges.ratedW[0] ?? 0;
const MOST_W = table.ranges.ratedW[1] ?? 0;

/** Types that can glow, in the order of the table. */
export function burnerTypes(): readonly string[] {
  return ROWS.map(({ type }) => type);
}

/**
 * Row of a burner type.
 * @throws OutOfRangeError for induction, which has nothing that glows, and for an unknown type
 */
export function burnerRow(type: string): BurnerRow {
  const row = ROWS.find((found) => found.type === type);
  if (row) return row;
  const advice =
    type === 'induction'
      ? 'Nothing on an induction field glows: it heats only a pan. Ask which method it needs.'
      : 'Choose one of these.';
  throw new OutOfRangeError('burner', type, burnerTypes().join(', '), advice);
}

/** Whichever end of the bands makes the glowing part hottest, usual or coolest. */
export type GlowCorner = 'hottest' | 'typical' | 'coolest';

const AREA_AT = { hottest: 'low', typical: 'typical', coolest: 'high' } as const;

/** A lumped body that is heated and loses heat by film and radiation. */
export type GlowBody = {
  /** Heat into the body, W. */
  readonly powerW: number;
  readonly areaM2: number;
  readonly emissivity: number;
  readonly heatCapacityJK: number;
  readonly filmWM2K: number;
};

/**
 * The part of a burner that glows, at its rated power. A larger burner of one
 * type is longer, not hotter: area and heat capacity go with the power.
 * @param ratedW default: typical of the type
 * @throws OutOfRangeError
 */
export function glowBody(type: string, ratedW?: number, corner: GlowCorner = 'typical'): GlowBody {
  const row = burnerRow(type);
  const watts = inRange('ratedW', ratedW ?? row.ratedW.typical, LEAST_W, MOST_W);
  const scale = watts / row.ratedW.typical;
  return {
    powerW: watts * row.absorbedShare,
    areaM2: row.areaM2[AREA_AT[corner]] * scale,
    emissivity: row.emissivity,
    heatCapacityJK: row.heatCapacityJK * scale,
    filmWM2K: row.filmWM2K,
  };
}
