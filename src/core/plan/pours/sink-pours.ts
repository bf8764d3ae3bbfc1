import { unkeyed } from '../../messages/temporary.ts';
import type { Sink } from '../../kitchen/index.ts';
import { sinkLanes, type SinkPart } from '../../pouring/index.ts';
import type { KettlePour } from './kettle-pour.ts';
import { deckM2, fittings, type PourEstimate } from '../estimates/index.ts';

/** Sides of a bowl, in the order in which it is gone round. */
const SIDES = ['back', 'right', 'front', 'left'] as const;
const NUMBERED = ['first', 'second', 'third', 'fourth'] as const;

/** A part small enough that a kettle seldom ends inside it. */
type Small = SinkPart & { readonly whole: string; readonly side: string };

function cut(part: SinkPart, side: string, lengthM: number): Small {
  return { ...part, lengthM, whole: part.name, side, name: `${part.name}/${side}` };
}

function rimSides(part: SinkPart): readonly Small[] {
  const points = part.lanes[0]?.points ?? [];
  return SIDES.map((side, at) => {
    const [a, b] = [points[at], points[at + 1]];
    return cut(part, side, a && b ? Math.hypot(b[0] - a[0], b[1] - a[1]) : 0);
  });
}

function fittingsOf(part: SinkPart): readonly Small[] {
  return Array.from({ length: part.pieces }, (_, at) => ({
    ...cut(part, NUMBERED[at] ?? String(at + 1), 0),
    pieces: 1,
  }));
}

function smallParts(part: SinkPart): readonly Small[] {
  switch (part.kind) {
    case 'fitting':
      return fittingsOf(part);
    case 'rim':
      return rimSides(part);
    case 'wall':
      return part.lanes.map((lane, at) => cut(part, SIDES[at % SIDES.length] ?? '', lane.lengthM));
    case 'floor':
      return part.lanes.length > 1
        ? part.lanes.map((lane, at) => cut(part, `lane ${at + 1}`, lane.lengthM))
        : [cut(part, '', part.lengthM)];
  }
}

/** Deck and drainboard are poured after the fittings over them and before the rims below. */
function withDeck(parts: readonly SinkPart[], sink: Sink, laneM: number): readonly SinkPart[] {
  const deck = deckM2(sink);
  if (deck === 0) return parts;
  const at = parts.findIndex(({ kind }) => kind !== 'fitting');
  const part: SinkPart = {
    kind: 'floor',
    name: sink.drainboard ? 'Deck and drainboard' : 'Deck round the bowls',
    pieces: 0,
    outlines: [],
    lanes: [],
    areaM2: deck,
    lengthM: deck / laneM,
  };
  return [...parts.slice(0, at), part, ...parts.slice(at)];
}

type Named = { readonly name: string; readonly kettle: number };
type Share = { readonly part: Small; readonly litres: number; readonly kettle: number };

/** Cut finer than this share of a kettle, the parts fill kettles evenly. */
const FINE_SHARE = 0.1;
/** Rounding that is not worth another kettle, L. */
const ROUNDING_L = 1e-9;

/** Kettle after kettle in the order of the parts, none with more than `mostL` unless one part alone is more. */
function filled(parts: readonly Portion[], mostL: number): readonly Share[] {
  let kettle = 1;
  let held = 0;
  return parts.map(({ part, litres }) => {
    if (held > 0 && held + litres > mostL + ROUNDING_L) [kettle, held] = [kettle + 1, 0];
    held += litres;
    return { part, litres, kettle };
  });
}

/** Steps between an even share and a full kettle that are tried. */
const TRIES = 20;

/** Shares the parts out in their order: the fewest kettles, and those as evenly filled as whole parts allow. */
function sharedOut(parts: readonly Portion[], filledL: number): readonly Share[] {
  const totalL = parts.reduce((sum, { litres }) => sum + litres, 0);
  const fullest = filled(parts, filledL);
  const count = fullest.at(-1)?.kettle ?? 1;
  const evenL = totalL / count;
  for (let step = 0; step < TRIES; step += 1) {
    const tried = filled(parts, evenL + ((filledL - evenL) * step) / TRIES);
    if (tried.at(-1)?.kettle === count) return tried;
  }
  return fullest;
}

/** What each kettle pours, part by part; a part that two kettles share names its sides. */
function named(shares: readonly Share[]): readonly Named[] {
  const rows: { whole: string; kettle: number; sides: string[] }[] = [];
  for (const { part, kettle } of shares) {
    const last = rows.at(-1);
    if (last?.whole === part.whole && last.kettle === kettle) last.sides.push(part.side);
    else rows.push({ whole: part.whole, kettle, sides: [part.side] });
  }
  return rows.map(({ whole, kettle, sides }) => {
    const shared = rows.some((row) => row.whole === whole && row.kettle !== kettle);
    const text = sides.filter((side, at) => side !== '' && sides.indexOf(side) === at).join(', ');
    return { name: shared && text !== '' ? `${whole} (${text})` : whole, kettle };
  });
}

type Portion = { readonly part: Small; readonly litres: number };

/** A long part as several, from its back to its front. */
function fine({ part, litres }: Portion, filledL: number): readonly Portion[] {
  const count = part.kind === 'fitting' ? 1 : Math.ceil(litres / (FINE_SHARE * filledL));
  if (count <= 1) return [{ part, litres }];
  return Array.from({ length: count }, (_, at) => ({
    part: part.side === '' ? { ...part, side: at < count / 2 ? 'back' : 'front' } : part,
    litres: litres / count,
  }));
}

function litresOfPart(part: Small, perM: Readonly<Record<SinkPart['kind'], number>>): number {
  return part.kind === 'fitting' ? part.pieces * perM.fitting : part.lengthM * perM[part.kind];
}

/** "Spout and tap" for the two that are one piece; "Walls" where there is one bowl only. */
function plainName(name: string, sink: Sink): string {
  if (name === 'Spout') return 'Spout and tap';
  if (sink.bowls.length > 1) return name;
  const own = name.replace(/^Bowl 1: /, '');
  return own.charAt(0).toUpperCase() + own.slice(1);
}

/** Which kettle pours which part of a sink: spout and tap, handles, deck, rims, walls, floors. */
export function sinkPours(sink: Sink, need: PourEstimate, filledL: number): readonly KettlePour[] {
  const options = { swathM: need.laneM, tap: false, handles: sink.tap.handles };
  const whole = sinkLanes(sink.bowls, options).map((part) => ({
    ...part,
    name: plainName(part.name, sink),
  }));
  const parts = withDeck(whole, sink, need.laneM).flatMap(smallParts);
  const metresOf = (kind: SinkPart['kind']): number =>
    parts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.lengthM, 0);
  const perM = {
    fitting: need.litresOf.fitting / fittings(sink),
    rim: need.litresOf.edge / metresOf('rim'),
    wall: need.litresOf.upright / metresOf('wall'),
    floor: need.litresOf.level / metresOf('floor'),
  };
  const shares = sharedOut(
    parts.flatMap((part) => fine({ part, litres: litresOfPart(part, perM) }, filledL)),
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
    picture: {
      kind: 'sink',
      parts: rows.map((row) => ({ ...row, name: unkeyed(row.name) })),
      kettle,
    },
  }));
}
