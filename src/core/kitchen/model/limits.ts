/** Least and most that may be written, both allowed. */
export type Range = { readonly least: number; readonly most: number };

/**
 * What a kitchen file may hold. The reader refuses what lies outside, the
 * published schema says so, and whoever edits a kitchen stops here.
 */
export const LIMITS = {
  /** Letters of a name shown in lists and on labels. */
  nameLetters: { least: 1, most: 80 },
  /** Letters of a comment or of what a rabbi said. */
  textLetters: { least: 1, most: 2000 },
  idLetters: { least: 1, most: 40 },

  // How many of each: far above a hall kitchen, low enough for a tablet.
  overrides: { least: 0, most: 200 },
  ownRows: { least: 0, most: 60 },
  circuits: { least: 0, most: 60 },
  vessels: { least: 0, most: 60 },
  fixtures: { least: 0, most: 300 },
  /** Corners of one outline: rounded ends of a hall counter included. */
  corners: { least: 3, most: 500 },
  /** Cut-outs of one counter. */
  holes: { least: 0, most: 20 },
  /** Edges of one counter that stand at walls. */
  backEdges: { least: 0, most: 20 },
  /** Edges of one surface at which one can stand. */
  openSides: { least: 0, most: 60 },
  bowls: { least: 1, most: 6 },
  burners: { least: 1, most: 16 },
  shelves: { least: 0, most: 60 },
  /** Lines of utensils: kinds, not pieces. */
  utensils: { least: 0, most: 150 },
  utensilCount: { least: 1, most: 500 },
  /** Vessels of one kind told as one. */
  vesselCount: { least: 1, most: 20 },

  /** Parts of one fixture. */
  parts: { least: 0, most: 12 },
  /** How often one surface is poured over. */
  pourTimes: { least: 1, most: 5 },

  overrideMin: { least: 1, most: 1440 },
  ownRowMin: { least: 1, most: 600 },
  people: { least: 1, most: 8 },
  /** Candles before sunset, min. */
  lightingMin: { least: 0, most: 90 },
  /** A hand over the edge of a counter, m. */
  armM: { least: 0.4, most: 1 },

  latDeg: { least: -90, most: 90 },
  lonDeg: { least: -180, most: 180 },
  /** From the shore of the Dead Sea to the highest towns, m. */
  altitudeM: { least: -430, most: 5000 },
  tapColdC: { least: 0.5, most: 40 },
  /** Mains voltages in use, from 100 V nominal to a three-phase 400 V supply, with slack. */
  voltsV: { least: 90, most: 440 },
  circuitA: { least: 1, most: 200 },
  /** Electric power of an appliance; a hall urn included, W. */
  powerW: { least: 0, most: 60_000 },

  floorAreaM2: { least: 1, most: 1000 },
  ceilingM: { least: 1.8, most: 10 },
  hoodFlowLS: { least: 0, most: 5000 },
  /** Doors, windows and passages of one room. */
  openings: { least: 0, most: 40 },
  openingWidthM: { least: 0.1, most: 20 },
  /** Along a wall from its end. */
  alongWallM: { least: 0, most: 100 },
  aboveFloorM: { least: 0, most: 10 },
  wallPlaceDepthM: { least: 0.02, most: 2 },
  windowAreaM2: { least: 0, most: 50 },
  windowHeightM: { least: 0, most: 6 },
  /** Air outside where people live, °C. */
  outdoorC: { least: -40, most: 50 },

  maxFillL: { least: 0.2, most: 200 },
  /** Farthest corner from the origin of the plan view: larger than any hall kitchen, m. */
  planM: { least: -200, most: 200 },
  backsplashM: { least: 0, most: 3 },
  bowlLengthM: { least: 0.1, most: 3 },
  bowlWidthM: { least: 0.1, most: 1.5 },
  bowlDepthM: { least: 0.03, most: 1 },
  rimM: { least: 0, most: 0.3 },
  tapHandles: { least: 0, most: 6 },
  burnerDiameterM: { least: 0.04, most: 0.6 },
  /** A large gas burner included, W. */
  burnerW: { least: 200, most: 60_000 },
  ovenW: { least: 200, most: 60_000 },
  cycleMin: { least: 30, most: 600 },
  shelfLengthM: { least: 0.05, most: 6 },
  shelfWidthM: { least: 0.05, most: 3 },
  /** Each side of a utensil: a thin blade to a hall's tray, m. */
  utensilM: { least: 0.001, most: 2 },
  utensilKg: { least: 0.001, most: 60 },
} as const satisfies Readonly<Record<string, Range>>;
