import type { Sink } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { fittings, type PourEstimate } from '../estimates/index.ts';
import type { KettlePour } from './kettle-pour.ts';
import { sinkPieces, type Piece } from './sink-pieces.ts';

type Portion = { readonly piece: Piece; readonly litres: number };
type Share = Portion & { readonly kettle: number };
type Named = { readonly name: Message; readonly kettle: number };

/** Cut finer than this share of a kettle, the pieces fill kettles evenly. */
const FINE_SHARE = 0.1;
/** Rounding that is not worth another kettle, L. */
const ROUNDING_L = 1e-9;

/** Kettle after kettle in the order of the pieces, none with more than `mostL` unless one piece alone is more. */
function filled(portions: readonly Portion[], mostL: number): readonly Share[] {
  let kettle = 1;
  let held = 0;
  return portions.map((portion) => {
    const { litres } = portion;
    if (held > 0 && held + litres > mostL + ROUNDING_L) [kettle, held] = [kettle + 1, 0];
    held += litres;
    return { ...portion, kettle };
  });
}

/** Steps between an even share and a full kettle that are tried. */
const TRIES = 20;

/** Shares the pieces out in their order: the fewest kettles, and those as evenly filled as whole pieces allow. */
function sharedOut(portions: readonly Portion[], filledL: number): readonly Share[] {
  const totalL = portions.reduce((sum, { litres }) => sum + litres, 0);
  const fullest = filled(portions, filledL);
  const count = fullest.at(-1)?.kettle ?? 1;
  const evenL = totalL / count;
  for (let step = 0; step < TRIES; step += 1) {
    const tried = filled(portions, evenL + ((filledL - evenL) * step) / TRIES);
    if (tried.at(-1)?.kettle === count) return tried;
  }
  return fullest;
}

function whichOf(kind: Piece['kind'], which: NonNullable<Piece['which']>): Message {
  if (typeof which !== 'number') return message(`steps.sink.piece.${which}`);
  return kind === 'fitting'
    ? message('steps.sink.piece.handle', { number: which })
    : message('steps.sink.piece.lane', { number: which });
}

/** What each kettle pours, part by part; a part that several kettles share names its pieces. */
function named(shares: readonly Share[]): readonly Named[] {
  const rows: { piece: Piece; kettle: number; which: NonNullable<Piece['which']>[] }[] = [];
  for (const { piece, kettle } of shares) {
    const which = piece.which === undefined ? [] : [piece.which];
    const last = rows.at(-1);
    if (last?.piece.part === piece.part && last.kettle === kettle) last.which.push(...which);
    else rows.push({ piece, kettle, which });
  }
  return rows.map(({ piece, kettle, which }) => {
    const shared = rows.some((row) => row.piece.part === piece.part && row.kettle !== kettle);
    const pieces = [...new Set(which)].map((one) => whichOf(piece.kind, one));
    const name =
      shared && pieces.length > 0
        ? message('steps.sink.shared', { part: piece.name, pieces })
        : piece.name;
    return { name, kettle };
  });
}

/** A long piece as several, from its back to its front. */
function fine({ piece, litres }: Portion, filledL: number): readonly Portion[] {
  const count = piece.kind === 'fitting' ? 1 : Math.ceil(litres / (FINE_SHARE * filledL));
  if (count <= 1) return [{ piece, litres }];
  return Array.from({ length: count }, (_, at) => ({
    piece:
      piece.which === undefined
        ? { ...piece, which: at < count / 2 ? ('back' as const) : ('front' as const) }
        : piece,
    litres: litres / count,
  }));
}

/**
 * Which kettle pours which part of a sink: spout and tap, handles, deck, rims,
 * walls, floors.
 * @param filledL what a kettle is filled with, L
 * @param upwards the last of them first, as a household was told
 * @throws LanesRefusal
 */
export function sinkPours(
  sink: Sink,
  need: PourEstimate,
  filledL: number,
  upwards: boolean,
): readonly KettlePour[] {
  const pieces = sinkPieces(sink, need.laneM, upwards);
  const metresOf = (kind: Piece['kind']): number =>
    pieces.filter((piece) => piece.kind === kind).reduce((sum, piece) => sum + piece.lengthM, 0);
  const { edge, upright, level } = need.litresOf;
  const perM = {
    rim: edge / metresOf('rim'),
    wall: upright / metresOf('wall'),
    floor: level / metresOf('floor'),
  };
  const fittingL = need.litresOf.fitting / fittings(sink);
  const litresOf = ({ kind, fittings: count, lengthM }: Piece): number =>
    kind === 'fitting' ? count * fittingL : lengthM * perM[kind];
  const shares = sharedOut(
    pieces.flatMap((piece) => fine({ piece, litres: litresOf(piece) }, filledL)),
    filledL,
  );
  const rows = named(shares);
  const kettles = [...new Set(shares.map(({ kettle }) => kettle))];
  return kettles.map((kettle) => ({
    kettle,
    litres: shares
      .filter((share) => share.kettle === kettle)
      .reduce((sum, { litres }) => sum + litres, 0),
    parts: rows.filter((row) => row.kettle === kettle).map(({ name }) => name),
    picture: { kind: 'sink', parts: rows, kettle },
  }));
}
