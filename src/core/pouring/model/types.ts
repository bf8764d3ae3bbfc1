/** A place on a surface, metres. */
export type LanePoint = readonly [xM: number, yM: number];

/** Corners in order, the last joined to the first; either way round. */
export type Ring = readonly LanePoint[];

/** A level surface: an outline with cut-outs (sink, hob). */
export type Surface = { readonly outer: Ring; readonly holes: readonly Ring[] };

/** Corner numbers of the outline between which a back edge runs. */
export type EdgeOfOuter = readonly [from: number, to: number];

/** A stretch of the outline's edge from corner to corner, along which one can stand. */
export type StandSide = {
  readonly edge: EdgeOfOuter;
  readonly a: LanePoint;
  readonly b: LanePoint;
};

/** From where a lane is poured: one begins at `at` and walks no farther than the stretch `from` to `to` of the edge. */
export type Stand = {
  readonly edge: EdgeOfOuter;
  readonly at: LanePoint;
  readonly from: LanePoint;
  readonly to: LanePoint;
};

/** One unbroken pour: between two lanes the kettle is lifted. */
export type Lane = {
  readonly points: readonly LanePoint[];
  readonly lengthM: number;
  /** Present when it was told where one can stand. */
  readonly stand?: Stand;
};

/** A spot of the surface that no hand reaches from where one can stand. */
export type Unreached = {
  readonly areaM2: number;
  /** A place well inside it. */
  readonly at: LanePoint;
  readonly outline: Ring;
};

/** An edge poured along its length: the lip at the front or the rim of a cut-out. */
export type EdgeLane = Lane & { readonly kind: 'front' | 'rim' };

/** What was put right in a surface before it was planned. */
export type Repair =
  | 'duplicate-points'
  | 'self-crossing'
  | 'hole-crosses-edge'
  | 'hole-outside'
  | 'holes-overlap'
  | 'sliver-dropped'
  | 'several-pieces';

export type LanesOptions = {
  /** Width that one pass wets well, metres, 0.01 to 1. */
  readonly swathM: number;
  /** Edges that stand at a wall, one for each leg; absent: the longest edge. */
  readonly backEdges?: readonly EdgeOfOuter[];
  /** Which side is poured first; custom says the back. */
  readonly startAt?: 'back' | 'front';
  /** Lanes along the back edges (custom), or along whatever direction makes the path shortest. */
  readonly direction?: 'back-to-front' | 'shortest';
  /** Where one can stand; absent: not told, every place counts as in reach. */
  readonly sides?: readonly StandSide[];
  /** How far a hand reaches over the edge, metres, 0.3 to 1.2; absent: `ARM_M`. */
  readonly armM?: number;
};

export type LanesQuality = {
  /** All lanes with the turns between their rows, edges apart. */
  readonly pathLengthM: number;
  /** What the lanes cover, m². */
  readonly areaM2: number;
  /** Area / swath: the length of a path that wets nothing twice. */
  readonly idealLengthM: number;
  readonly lengthRatio: number;
  /** Share of the path's wetting that falls on what is wet already, 0 to 1. */
  readonly overlap: number;
  readonly lifts: number;
  /** Metres the lifted kettle is carried. */
  readonly carriedM: number;
  readonly turns: number;
};

export type LanesPlan = {
  readonly lanes: readonly Lane[];
  readonly edgeLanes: readonly EdgeLane[];
  /** The surface after repair: what the lanes cover, but for what is unreached. */
  readonly pieces: readonly Surface[];
  /** What nobody reaches; empty when it was not told where one can stand. */
  readonly unreached: readonly Unreached[];
  readonly repairs: readonly Repair[];
  readonly quality: LanesQuality;
};
