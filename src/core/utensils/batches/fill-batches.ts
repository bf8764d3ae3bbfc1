import type { Designation } from '../../kitchen/index.ts';
import { dipDrop, dipRecovery } from '../../physics/index.ts';
import { addBands, exactly, mapBand, type Band } from '../../units/index.ts';
import { TABLE } from '../model/table.ts';
import type { Batch, BatchItem, DipWay, UtensilChoice } from '../model/types.ts';
import { wayInto } from './fit.ts';
import { boxLitres, type UtensilPiece } from './pieces.ts';
import type { HeatedPot } from './pots.ts';

/** One line of utensils that are immersed. */
export type Line = {
  readonly choice: UtensilChoice;
  readonly piece: UtensilPiece;
};

/** The water the things go into. */
export type Bath = {
  readonly pot: HeatedPot;
  readonly boilingC: number;
  readonly altitudeM: number;
  /** Of what is dipped: the room, °C. */
  readonly itemC: number;
};

/** Dairy before meat, and what is neutral after them, in fresh water each. */
const GROUPS: readonly Designation[] = ['dairy', 'meat', 'pareve', 'undecided'];
/** In tongs a piece goes under twice: turned, or one half after the other. */
const TONG_DIPS = 2;
const HALVES = 2;
/** One piece alone may displace this share of the pot. */
const MOST_DISPLACED_SHARE = 0.5;

/** Whether the pot takes one piece, and how: by its sides, and without losing most of its water. */
export function wayFor({ sides, displacedL }: UtensilPiece, pot: HeatedPot): DipWay | undefined {
  const way = wayInto(sides, pot);
  const under = way === 'by-halves' ? displacedL / HALVES : displacedL;
  return under <= MOST_DISPLACED_SHARE * pot.volumeL ? way : undefined;
}

/** A batch while it is filled: what is in tongs goes in one by one, what is in a net together. */
type Open = {
  readonly group: Designation;
  readonly way: DipWay;
  readonly hold: Batch['hold'];
  readonly items: Map<string, { readonly line: Line; count: number }>;
  pieces: number;
  boxL: number;
  /** Under water at once. */
  displacedL: number;
  heatJK: Band;
};

/** A half is held at its other end. */
function holdOf({ piece }: Line, way: DipWay): Batch['hold'] {
  return way === 'by-halves' ? 'tongs' : piece.hold;
}

function opened(line: Line, way: DipWay): Open {
  return {
    group: line.piece.group,
    way,
    hold: holdOf(line, way),
    items: new Map(),
    pieces: 0,
    boxL: 0,
    displacedL: 0,
    heatJK: exactly(0),
  };
}

/** The water left when the things are under it and it stands at the mark, L. */
function fillL({ pot }: Bath, displacedL: number): number {
  return pot.volumeL - displacedL;
}

/** What goes into the water. */
function dipOf(bath: Bath, displacedL: number, heatJK: Band) {
  const { pot, boilingC, itemC } = bath;
  return {
    waterL: fillL(bath, displacedL),
    waterC: boilingC,
    itemJK: heatJK,
    itemC,
    potWaterL: pot.potWaterL,
  };
}

/** What a batch does to its water. */
function cooled(bath: Bath, displacedL: number, heatJK: Band) {
  const { pot, altitudeM } = bath;
  return dipRecovery({
    ...dipOf(bath, displacedL, heatJK),
    powerW: pot.powerW,
    efficiency: pot.efficiency,
    lossW: pot.lossW,
    altitudeM,
  });
}

/** Whether one more piece may go in: loose in its net, with water over everything, and the water hot. */
function takes(batch: Open, line: Line, way: DipWay, bath: Bath): boolean {
  const { piece } = line;
  const { volumeL } = bath.pot;
  const { looseShare, displacedShare, mostDropK, mostPieces } = TABLE.pot;
  if (batch.group !== piece.group || batch.way !== way) return false;
  if (batch.hold !== holdOf(line, way) || batch.pieces >= mostPieces) return false;
  if (batch.hold === 'tongs') return true;
  const displacedL = batch.displacedL + piece.displacedL;
  if (batch.boxL + boxLitres(piece) > looseShare * volumeL) return false;
  if (displacedL > displacedShare * volumeL) return false;
  const { mixedC } = dipDrop(dipOf(bath, displacedL, addBands(batch.heatJK, piece.heatJK)));
  return bath.boilingC - mixedC.typical <= mostDropK;
}

function put(batch: Open, line: Line): void {
  const { piece, choice } = line;
  const item = batch.items.get(choice.utensil);
  if (item) item.count += 1;
  else batch.items.set(choice.utensil, { line, count: 1 });
  batch.pieces += 1;
  batch.boxL += boxLitres(piece);
  if (batch.hold === 'net') {
    batch.displacedL += piece.displacedL;
    batch.heatJK = addBands(batch.heatJK, piece.heatJK);
    return;
  }
  // One by one: what the largest of them does to the water.
  const share = batch.way === 'by-halves' ? 1 / HALVES : 1;
  batch.displacedL = Math.max(batch.displacedL, piece.displacedL * share);
  if (piece.heatJK.typical * share > batch.heatJK.typical)
    batch.heatJK = mapBand(piece.heatJK, (heat) => heat * share);
}

function closed(open: Open, number: number, freshWater: boolean, bath: Bath): Batch {
  const { group, hold, way, pieces, displacedL } = open;
  const { mixedC, recoverS } = cooled(bath, displacedL, open.heatJK);
  const items: readonly BatchItem[] = [...open.items.values()].map(({ line, count }) => ({
    utensil: line.choice.utensil,
    name: line.choice.name,
    count,
    way,
  }));
  return {
    id: `batch-${number}`,
    number,
    group,
    items,
    hold,
    dips: hold === 'tongs' ? TONG_DIPS * pieces : 1,
    fillL: fillL(bath, displacedL),
    displacedL,
    mixedC,
    recoverS,
    freshWater,
  };
}

/** The pieces of one group in batches: the largest first, each in the first batch that takes it. */
function groupBatches(lines: readonly Line[], bath: Bath): readonly Open[] {
  const batches: Open[] = [];
  for (const line of lines.toSorted((a, b) => boxLitres(b.piece) - boxLitres(a.piece))) {
    const way = wayFor(line.piece, bath.pot);
    if (!way) continue;
    for (let n = 0; n < line.choice.count; n += 1) {
      let batch = batches.find((one) => takes(one, line, way, bath));
      if (!batch) {
        batch = opened(line, way);
        batches.push(batch);
      }
      put(batch, line);
    }
  }
  return batches;
}

/**
 * What is dipped at once, in order: dairy, meat, neutral, and what nobody told
 * of; fresh water where the group changes. A line that the pot does not take is left out.
 */
export function fillBatches(lines: readonly Line[], bath: Bath): readonly Batch[] {
  const groups = GROUPS.map((group) =>
    groupBatches(
      lines.filter(({ piece }) => piece.group === group),
      bath,
    ),
  ).filter((batches) => batches.length > 0);
  let number = 0;
  return groups.flatMap((batches, at) =>
    batches.map((batch, i) => {
      number += 1;
      return closed(batch, number, at > 0 && i === 0, bath);
    }),
  );
}
