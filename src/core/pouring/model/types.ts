/** A place on a surface, metres. */
export type LanePoint = readonly [xM: number, yM: number];

/** Corners in order, the last joined to the first; either way round. */
export type Ring = readonly LanePoint[];

/** A level surface: an outline with cut-outs (sink, hob). */
export type Surface = { readonly outer: Ring; readonly holes: readonly Ring[] };

/** Corner numbers of the outline between which a back edge runs. */
export type EdgeOfOuter = readonly [from: number, to: number];

/** One unbroken pour: between two lanes the kettle is lifted. */
export type Lane = { readonly points: readonly LanePoint[]; readonly lengthM: number };

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
};

export type LanesQuality = {
  /** All lanes with the turns between their rows, edges apart. */
  readonly pathLengthM: number;
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
  /** The surface after repair: what the lanes cover. */
  readonly pieces: readonly Surface[];
  readonly repairs: readonly Repair[];
  readonly quality: LanesQuality;
};
