/** A piece in whole units of length, as the packer sees it. */
export type Item = {
  /** Across the roll. */
  readonly width: number;
  /** Along the roll. */
  readonly length: number;
  /** May be turned by a quarter. */
  readonly turns: boolean;
};

/** Where an item lies in its section: x across, y along the roll. */
export type Spot = {
  readonly item: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
};

/** A stretch of roll between two cuts from edge to edge, with the items cut from it. */
export type Section = { readonly length: number; readonly area: number; readonly spots: Spot[] };

/** An item of that size would fit a space in this way. */
type Fit = { readonly at: number; readonly turned: boolean };

/** How well an item fits: it fills the space, fills one side of it, or lies in it. */
const FILLS = 2;
const FILLS_ONE_SIDE = 1;
const LIES_IN = 0;
/** How often the second best of two ways is tried. */
const STRAY_SHARE = 0.15;

/**
 * Fills sections from the items that are left. A space takes an item in its
 * corner and is cut into two, straight through, so whatever it makes can be cut.
 */
export class SectionFiller {
  private readonly items: readonly Item[];
  private readonly random: () => number;
  /** Numbers of the items that are left, in the order they are tried. */
  private left: number[] = [];
  private spots: Spot[] = [];

  constructor(items: readonly Item[], random: () => number) {
    this.items = items;
    this.random = random;
  }

  /** The items to fill sections from, in the order they are tried. */
  begin(order: readonly number[]): void {
    this.left = [...order];
  }

  get leftOver(): readonly number[] {
    return this.left;
  }

  /** A section of at most this length that begins with the item first in order, turned or not. */
  fill(width: number, length: number, turned: boolean): Section {
    this.spots = [];
    this.place({ at: 0, turned }, 0, 0, width, length);
    let longest = 0;
    let area = 0;
    for (const spot of this.spots) {
      longest = Math.max(longest, spot.y + spot.length);
      area += spot.width * spot.length;
    }
    return { length: longest, area, spots: this.spots };
  }

  private fillSpace(x: number, y: number, width: number, length: number): void {
    if (width <= 0 || length <= 0) return;
    const fit = this.bestFit(width, length);
    if (fit) this.place(fit, x, y, width, length);
  }

  /** The first item that fills the space; else one that fills a side; else the first that fits. */
  private bestFit(width: number, length: number): Fit | undefined {
    let best: Fit | undefined;
    let rank = -1;
    for (let at = 0; at < this.left.length; at += 1) {
      const item = this.items[this.left[at]!]!;
      for (const turned of item.turns ? [false, true] : [false]) {
        const across = turned ? item.length : item.width;
        const along = turned ? item.width : item.length;
        if (across > width || along > length) continue;
        const one = across === width || along === length;
        const found = across === width && along === length ? FILLS : one ? FILLS_ONE_SIDE : LIES_IN;
        if (found === FILLS) return { at, turned };
        if (found > rank) {
          rank = found;
          best = { at, turned };
        }
      }
    }
    return best;
  }

  private place({ at, turned }: Fit, x: number, y: number, width: number, length: number): void {
    const number = this.left[at]!;
    this.left.splice(at, 1);
    const item = this.items[number]!;
    const across = turned ? item.length : item.width;
    const along = turned ? item.width : item.length;
    this.spots.push({ item: number, x, y, width: across, length: along });
    const restAcross = width - across;
    const restAlong = length - along;
    // The cut that leaves the larger piece whole; now and then the other.
    const wholeBeside = restAcross * length > width * restAlong;
    const beside = this.random() < STRAY_SHARE ? !wholeBeside : wholeBeside;
    const aboveFirst = this.random() < 0.5;
    const above = () => this.fillSpace(x, y + along, beside ? across : width, restAlong);
    const next = () => this.fillSpace(x + across, y, restAcross, beside ? length : along);
    if (aboveFirst) {
      above();
      next();
    } else {
      next();
      above();
    }
  }
}
