import { sequence } from './random.ts';
import { SectionFiller, type Item, type Section } from './section.ts';

export type PackOptions = {
  /** How often a few sections are taken apart and packed anew. */
  readonly rounds: number;
  /** No section is longer than this. */
  readonly mostLength: number;
};

/** Sections taken apart at once. */
const FEWEST = 2;
const MOST = 4;
/** How far an item may slip in the order of sizes, as a share of the number of items. */
const SLIP_SHARE = 0.6;
/** Share of the sections that are two or three items long instead of one. */
const LONG_SHARE = 0.5;
/** Ways each start of a section is tried. */
const TRIES = 3;
/** How strongly sections with much waste are taken apart before others. */
const WASTE_BIAS = 2;

function lengthOf(sections: readonly Section[]): number {
  return sections.reduce((sum, { length }) => sum + length, 0);
}

/** Packs items into sections across a roll and improves on it by packing a few sections anew. */
class Packer {
  private readonly items: readonly Item[];
  private readonly width: number;
  private readonly options: PackOptions;
  private readonly random = sequence(1);
  private readonly filler: SectionFiller;

  constructor(items: readonly Item[], width: number, options: PackOptions) {
    this.items = items;
    this.width = width;
    this.options = options;
    this.filler = new SectionFiller(items, this.random);
  }

  private waste({ length, area }: Section): number {
    return length * this.width - area;
  }

  /** Items in order of size, each slipped a little. */
  private order(numbers: readonly number[], slip: number): number[] {
    const bySize = (one: Item) => one.width * one.length;
    const sorted = numbers.toSorted((a, b) => bySize(this.items[b]!) - bySize(this.items[a]!));
    const rank = new Map(
      sorted.map((number, at) => [number, at + slip * sorted.length * this.random()]),
    );
    return sorted.toSorted((a, b) => rank.get(a)! - rank.get(b)!);
  }

  /** How long a section may be that begins with this item: as long as it, or with others behind it. */
  private sectionLength(along: number, left: readonly number[]): number {
    const { mostLength } = this.options;
    let length = along;
    const more = this.random() < LONG_SHARE ? 0 : this.random() < 0.7 ? 1 : 2;
    for (let i = 0; i < more && left.length > 1; i += 1) {
      const other = this.items[left[1 + Math.floor(this.random() * (left.length - 1))]!]!;
      const side = other.turns && this.random() < 0.5 ? other.width : other.length;
      if (length + side <= mostLength) length += side;
    }
    return length;
  }

  /** The section with the least waste a unit of length, of those that begin with the item first in order. */
  private section(left: readonly number[], plain: boolean): Section {
    const first = this.items[left[0]!]!;
    let best: { section: Section; share: number; leftOver: readonly number[] } | undefined;
    for (let turn = 0; turn < TRIES; turn += 1) {
      for (const turned of first.turns ? [false, true] : [false]) {
        const across = turned ? first.length : first.width;
        const along = turned ? first.width : first.length;
        if (across > this.width || along > this.options.mostLength) continue;
        this.filler.begin(left);
        const length = plain ? along : this.sectionLength(along, left);
        const section = this.filler.fill(this.width, length, turned);
        const share = section.area / (section.length * this.width);
        if (!best || share > best.share) {
          best = { section, share, leftOver: this.filler.leftOver };
        }
      }
    }
    if (!best) throw new RangeError('an item is larger than the roll; allowed: items that fit.');
    this.filler.begin(best.leftOver);
    return best.section;
  }

  private sections(order: readonly number[], plain: boolean): Section[] {
    const found: Section[] = [];
    let left = order;
    while (left.length > 0) {
      found.push(this.section(left, plain));
      left = this.filler.leftOver;
    }
    return found;
  }

  /** Some sections to take apart, those with much waste first. */
  private chosen(sections: readonly Section[]): ReadonlySet<number> {
    const most = Math.min(MOST, sections.length);
    const count = Math.min(
      sections.length,
      FEWEST + Math.floor(this.random() * (most - FEWEST + 1)),
    );
    const byWaste = sections
      .map((section, at) => ({ at, key: this.random() ** WASTE_BIAS / (1 + this.waste(section)) }))
      .toSorted((a, b) => a.key - b.key);
    return new Set(byWaste.slice(0, count).map(({ at }) => at));
  }

  run(): Section[] {
    const all = this.items.map((_, at) => at);
    let best = this.sections(this.order(all, 0), true);
    const area = this.items.reduce((sum, { width, length }) => sum + width * length, 0);
    for (let round = 0; round < this.options.rounds; round += 1) {
      // Every length is a whole number: when not one less would hold the area, there is no better.
      if ((lengthOf(best) - 1) * this.width < area) break;
      const chosen = this.chosen(best);
      const apart = best.filter((_, at) => chosen.has(at));
      const numbers = apart.flatMap(({ spots }) => spots.map(({ item }) => item));
      const slip = SLIP_SHARE * this.random();
      const anew = this.sections(this.order(numbers, slip), this.random() < 0.3);
      if (lengthOf(anew) <= lengthOf(apart)) {
        best = [...best.filter((_, at) => !chosen.has(at)), ...anew];
      }
    }
    return best;
  }
}

/**
 * Sections across a roll from which all items can be cut straight through,
 * with little waste. The same input gives the same sections.
 * @param width of the roll; every item must fit it
 */
export function pack(items: readonly Item[], width: number, options: PackOptions): Section[] {
  return items.length === 0 ? [] : new Packer(items, width, options).run();
}
