/**
 * The kitchen file, version 1: what a household tells about its kitchen.
 * SI units, unit last in every name. Lengths in metres in one plan-view frame (x to
 * the right, y away from the viewer); polygons list their corners once, either way.
 */
import type { Point, Polygon } from '../../geometry/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import type { Override, OwnCustom } from './answers.ts';
import type {
  Condition,
  CustomId,
  Designation,
  Material,
  PartId,
  Purpose,
  SurfaceFacts,
} from './words.ts';
import type { Utensil } from './utensil.ts';

export type * from './answers.ts';
export type * from './words.ts';

/** Pouring lanes along the back edge, or in the shortest direction. */
export type LaneDirection = 'back-to-front' | 'shortest';

/** When a spot counts as poured. reached: the stream itself meets it; heated: what it falls on has time to follow the water. */
export type PourUntil = 'reached' | 'heated';
/** Between what the twelve hours of the eve of Passover are counted. */
export type LeavenDay = 'dawn-nightfall' | 'sunrise-sunset';

export type Household = {
  readonly purpose: Purpose;
  readonly custom: CustomId;
  readonly ownCustom?: OwnCustom;
  /** People working at once, 1 to 8. */
  readonly people: number;
  /** What those who work are called, in their order; whoever holds the tablet first. More than work are no fault. */
  readonly names?: readonly string[];
  readonly keepsRestDays: boolean;
  /** Candles are lit this long before sunset, min, 0 to 90. Absent: 18, as most have it. */
  readonly lightingMin?: number;
  /** Absent: back to front, as custom has it. */
  readonly laneDirection?: LaneDirection;
  /** Absent: reached. */
  readonly pourUntil?: PourUntil;
  /** Absent: from dawn to nightfall, the earlier hour. */
  readonly leavenDay?: LeavenDay;
  /** How far a hand with a kettle reaches over the edge of a counter, m, 0.4 to 1. Absent: 0.65. */
  readonly armM?: number;
  /** Sizes are told in these; the file stays metric. Absent: as usual in the country. */
  readonly units?: UnitSystem;
  /** When anything here was last used hot, unless told of itself: local date and time, yyyy-mm-ddThh:mm. Absent: not told. */
  readonly lastHotAt?: string;
  readonly overrides: readonly Override[];
  readonly comment?: string;
};

export type Place = {
  readonly latDeg: number;
  readonly lonDeg: number;
  /** IANA time-zone name */
  readonly zone: string;
  readonly land: 'israel' | 'diaspora';
};

/** `unknown`: nobody told yet. It takes nothing away, as none, but it is asked about. */
export type HoodKind = 'none' | 'recirculating' | 'vented' | 'unknown';

/** Two neighbouring corners of an outline, by number: one of its edges. */
export type Edge = readonly [from: number, to: number];

/** Lower and upper edge above the floor, m. */
export type Heights = { readonly fromM: number; readonly toM: number };

export type OpeningKind = 'door' | 'window' | 'passage';

/** What a wall of the room is open at. Left and right are as seen from inside, before the wall. */
export type Opening = {
  readonly id: string;
  readonly kind: OpeningKind;
  /** Corner numbers of the wall in the outline of the room. */
  readonly wall: Edge;
  /** From the left end of the wall to its left side, m. */
  readonly atM: number;
  readonly widthM: number;
  readonly heights?: Heights;
  /** The side a door hangs on. Absent: not told; its swing is not drawn. */
  readonly hinge?: 'left' | 'right';
  /** Where a door opens to. Absent: into the room. */
  readonly swing?: 'in' | 'out';
};

export type Room = {
  readonly floorAreaM2: number;
  readonly heightM: number;
  /** The walls, from inside. Absent: not told; pictures draw a likely room. It only draws: the air is reckoned by `floorAreaM2`. */
  readonly outline?: Polygon;
  /** Doors, windows and passages in those walls. Absent: not told. */
  readonly openings?: readonly Opening[];
  readonly hood: { readonly kind: HoodKind; readonly flowLS: number };
  /** Openable window; area 0 when there is none, absent when nobody told. */
  readonly window?: { readonly areaM2: number; readonly heightM: number };
  /** Air outside when the work is done; absent: expected by place and season. */
  readonly outdoorC?: number;
  readonly comment?: string;
};

export type Circuit = {
  readonly id: string;
  readonly name: string;
  readonly ratingA: number;
  readonly voltsV: number;
  readonly comment?: string;
};

export type VesselKind = 'electric-kettle' | 'stove-kettle' | 'urn' | 'pot';
export type VesselBody = 'plastic' | 'steel' | 'glass' | 'double-wall' | 'enamel';

/** What boiling water comes from. */
export type Vessel = {
  readonly id: string;
  readonly name: string;
  readonly kind: VesselKind;
  readonly body: VesselBody;
  /** Never filled past this mark. */
  readonly maxFillL: number;
  readonly ratedW: number;
  readonly ratedV: number;
  /** Circuit id for an electric one. */
  readonly circuit?: string;
  /** Burner id for one that stands on the stove. */
  readonly burner?: string;
  readonly count: number;
  /** When it was last used hot: local date and time. Absent: as `Household.lastHotAt`. */
  readonly lastHotAt?: string;
  readonly comment?: string;
};

export type FixtureBase = {
  readonly id: string;
  readonly name: string;
  readonly comment?: string;
  readonly designation: Designation;
  /** When it was last used hot, hot cleaning included: local date and time. Absent: as `Household.lastHotAt`. */
  readonly lastHotAt?: string;
  /** Absent: the parts that such a fixture usually has. */
  readonly parts?: readonly PartId[];
  /** Absent: not told. It only draws. */
  readonly heights?: Heights;
};

/**
 * Where something that the plan view leaves out hangs at a wall or is built in
 * below: a hood, a wall cupboard, a dishwasher. It only draws.
 */
export type WallPlace = {
  /** Corner numbers of the wall in the outline of the room. */
  readonly wall: Edge;
  /** From the left end of the wall, as seen from inside, m. */
  readonly atM: number;
  readonly widthM: number;
  readonly depthM: number;
};

export type Counter = FixtureBase &
  SurfaceFacts & {
    readonly kind: 'counter';
    readonly outline: Polygon;
    readonly holes: readonly Polygon[];
    /** Corner numbers of the edges that stand at a wall, as pairs [from, to]. */
    readonly backEdges: readonly (readonly [number, number])[];
    /** Corner numbers of the edges at which one can stand. Absent: those in front of walls; without walls, all. */
    readonly openSides?: readonly (readonly [number, number])[];
    readonly material: Material;
    readonly condition: Condition;
    readonly backsplashHeightM: number;
  };

export type Bowl = { readonly lengthM: number; readonly widthM: number; readonly depthM: number };

export type Sink = FixtureBase &
  Pick<SurfaceFacts, 'varnished'> & {
    readonly kind: 'sink';
    readonly outline: Polygon;
    readonly material: Material;
    readonly condition: Condition;
    readonly bowls: readonly Bowl[];
    readonly rimWidthM: number;
    readonly tap: { readonly handles: number; readonly sprayer: boolean };
    readonly drainboard: boolean;
  };

export type BurnerType =
  | 'electric-coil'
  | 'solid-plate'
  | 'radiant-glass'
  | 'induction'
  | 'gas-sealed'
  | 'gas-open'
  | 'gas-wok'
  | 'commercial-open'
  | 'portable-plate';

export type Burner = {
  readonly id: string;
  /** What the household calls it: "front left". */
  readonly name: string;
  readonly type: BurnerType;
  readonly at: Point;
  readonly diameterM: number;
  readonly ratedW: number;
  /** Voltage on its plate, which `ratedW` is for. Absent: by its circuit (`burnerVolts`). */
  readonly ratedV?: number;
  /** It limits itself by what it senses of a pan, and may never redden bare. Absent: not known to. */
  readonly sensing?: boolean;
  readonly circuit?: string;
  readonly comment?: string;
};

export type Cooktop = FixtureBase & {
  readonly kind: 'cooktop';
  readonly outline: Polygon;
  readonly surface: 'metal' | 'enamel' | 'glass-ceramic';
  /** A lamp shows that it is still hot. Absent: hob glass has one, others have none. */
  readonly residualHeatLamp?: boolean;
  readonly burners: readonly Burner[];
};

export type OvenCleaning = 'pyrolytic' | 'steam' | 'catalytic' | 'none';

export type Oven = FixtureBase & {
  readonly kind: 'oven';
  readonly outline: Polygon;
  readonly cleaning: OvenCleaning;
  readonly heat: 'electric' | 'gas';
  readonly ratedW: number;
  /** From the owner's manual; absent: the usual length is planned. */
  readonly cycleMin?: number;
  readonly racksStayInCycle: boolean;
  /** The cooktop in the same appliance: it may not be used during the cycle. */
  readonly sharesRangeWith?: string;
  readonly circuit?: string;
};

export type Table = FixtureBase &
  SurfaceFacts & {
    readonly kind: 'table';
    readonly outline: Polygon;
    /** Corner numbers of the edges at which one can stand. Absent: all. */
    readonly openSides?: readonly (readonly [number, number])[];
    readonly material: Material;
    readonly condition: Condition;
  };

export type Cupboard = FixtureBase &
  Pick<SurfaceFacts, 'hotFood'> & {
    readonly kind: 'cupboard' | 'drawer';
    /** Where it hangs or stands; absent: not told. */
    readonly place?: 'over-counter' | 'under-counter';
    readonly outline?: Polygon;
    readonly wallPlace?: WallPlace;
    readonly material: Material;
    readonly condition: Condition;
    readonly shelves: readonly { readonly lengthM: number; readonly widthM: number }[];
  };

export type Appliance = FixtureBase & {
  readonly kind: 'fridge' | 'freezer' | 'microwave' | 'dishwasher' | 'warming-drawer' | 'hood';
  readonly outline?: Polygon;
  readonly wallPlace?: WallPlace;
  readonly ratedW?: number;
  readonly circuit?: string;
  /** Inside lining, where it matters (dishwasher tub, microwave cavity). */
  readonly material: Material;
};

export type Fixture = Counter | Sink | Cooktop | Oven | Table | Cupboard | Appliance;
export type FixtureKind = Fixture['kind'];

export type Kitchen = {
  readonly format: 'glowpour-kitchen';
  readonly version: 1;
  readonly name: string;
  readonly comment?: string;
  /** ISO 3166-1 alpha-2 */
  readonly country: string;
  readonly altitudeM: number;
  readonly supplyV: number;
  readonly tapColdC: number;
  readonly place?: Place;
  readonly household: Household;
  readonly room: Room;
  readonly circuits: readonly Circuit[];
  readonly vessels: readonly Vessel[];
  readonly fixtures: readonly Fixture[];
  /** Absent: nobody told of any. */
  readonly utensils?: readonly Utensil[];
};
