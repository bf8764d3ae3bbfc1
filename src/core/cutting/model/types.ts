/** A rectangle to be cut. */
export type Piece = {
  readonly id: string;
  /** Across the roll unless it is turned, m. */
  readonly widthM: number;
  /** Along the roll unless it is turned, m. */
  readonly lengthM: number;
  /** May it be turned by a quarter? Absent: as `rotate` of the problem says. */
  readonly turns?: boolean;
};

export type CutsProblem = {
  readonly rollWidthM: number;
  /** May pieces be turned by a quarter? Absent: they may. */
  readonly rotate?: boolean;
  readonly pieces: readonly Piece[];
  /** Longest stretch that can be cut off at once, m: the length of the roll. Absent: without end. */
  readonly rollLengthM?: number;
  /** How often a part of the plan is tried anew. Absent: enough for a tablet that waits. */
  readonly rounds?: number;
};

/** A rectangle of the roll: x across from its left edge, y along from its beginning, m. */
export type Rect = {
  readonly xM: number;
  readonly yM: number;
  readonly widthM: number;
  readonly lengthM: number;
};

/** Where a piece is cut from. Width lies across the roll; a turned piece has its own width along it. */
export type Cut = Rect & { readonly id: string; readonly turned: boolean };

/** One straight cut through all of a sheet; the first goes through the roll. */
export type CutLine = {
  /** What is cut in two. */
  readonly sheet: Rect;
  readonly direction: 'across' | 'along';
  /** y of a cut across, x of a cut along, m. */
  readonly atM: number;
};

export type CutPlan = {
  readonly rollWidthM: number;
  readonly usedLengthM: number;
  /** No plan can use less: the area of all pieces over the width, or the piece that is longest at best. */
  readonly leastLengthM: number;
  /** Share of what is used that is no piece. */
  readonly wasteShare: number;
  /** Pieces in the order they come free. */
  readonly cuts: readonly Cut[];
  /** Cuts in the order they are made. */
  readonly lines: readonly CutLine[];
};

/**
 * Pieces that cannot be cut, or an input that makes no sense. For whoever
 * writes files and code; a page says the message of `code`.
 */
export class CutsRefusal extends RangeError {
  readonly code: 'input' | 'too-large';
  readonly input: string;
  readonly found: unknown;
  readonly allowed: string;

  constructor(
    code: CutsRefusal['code'],
    input: string,
    found: unknown,
    allowed: string,
    advice: string,
  ) {
    super(`${input} is ${JSON.stringify(found) ?? 'missing'}; allowed: ${allowed}. ${advice}`);
    this.name = 'CutsRefusal';
    this.code = code;
    this.input = input;
    this.found = found;
    this.allowed = allowed;
  }
}
