import type { Sink } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { sinkLanes, type SinkPart } from '../../pouring/index.ts';
import { deckM2 } from '../estimates/index.ts';

/** Sides of a bowl, in the order in which it is gone round. */
const SIDES = ['back', 'right', 'front', 'left'] as const;
type Side = (typeof SIDES)[number];

/** A piece of a part, small enough that a kettle seldom ends inside it. */
export type Piece = {
  readonly kind: SinkPart['kind'];
  /** Number of the part it is of, in the order of pouring. */
  readonly part: number;
  readonly name: Message;
  /** A side of the part, or the number of a handle or lane; absent: the whole part. */
  readonly which?: Side | number;
  /** Fittings in it. */
  readonly fittings: number;
  readonly lengthM: number;
};

type Part = Pick<SinkPart, 'kind' | 'pieces' | 'lanes' | 'lengthM'> & { readonly name: Message };

function nameOf({ kind, fitting, bowl, pieces }: SinkPart, bowls: number): Message {
  if (fitting === 'handles') return message('steps.sink.handles', { count: pieces });
  if (kind === 'fitting') return message('steps.sink.spout-and-tap');
  return bowls > 1 && bowl !== undefined
    ? message(`steps.sink.bowl.${kind}`, { bowl })
    : message(`steps.sink.${kind}`);
}

/** Deck and drainboard are poured after the fittings over them and before the rims below. */
function withDeck(parts: readonly Part[], sink: Sink, laneM: number): readonly Part[] {
  const deck = deckM2(sink);
  if (deck === 0) return parts;
  const at = parts.findIndex(({ kind }) => kind !== 'fitting');
  const part: Part = {
    kind: 'floor',
    name: message(sink.drainboard ? 'steps.sink.deck-and-drainboard' : 'steps.sink.deck'),
    pieces: 0,
    lanes: [],
    lengthM: deck / laneM,
  };
  return [...parts.slice(0, at), part, ...parts.slice(at)];
}

function piecesOf({ kind, name, pieces, lanes, lengthM }: Part, part: number): readonly Piece[] {
  const cut = (which: Side | number, longM: number): Piece => ({
    kind,
    part,
    name,
    which,
    fittings: 0,
    lengthM: longM,
  });
  switch (kind) {
    case 'fitting':
      return Array.from({ length: pieces }, (_, at) => ({ ...cut(at + 1, 0), fittings: 1 }));
    case 'rim': {
      const points = lanes[0]?.points ?? [];
      return SIDES.map((side, at) => {
        const [a, b] = [points[at], points[at + 1]];
        return cut(side, a && b ? Math.hypot(b[0] - a[0], b[1] - a[1]) : 0);
      });
    }
    case 'wall':
      return lanes.map((lane, at) => cut(SIDES[at % SIDES.length] ?? 'back', lane.lengthM));
    case 'floor':
      return lanes.length > 1
        ? lanes.map((lane, at) => cut(at + 1, lane.lengthM))
        : [{ kind, part, name, fittings: 0, lengthM }];
  }
}

/**
 * Everything of a sink in the order of pouring: spout and tap, handles, deck,
 * rims, walls, floors.
 * @param laneM distance between neighbouring lanes
 * @param upwards the last part first: the floors, up to the spout
 * @throws LanesRefusal
 */
export function sinkPieces(sink: Sink, laneM: number, upwards: boolean): readonly Piece[] {
  const options = { swathM: laneM, tap: false, handles: sink.tap.handles };
  const parts = sinkLanes(sink.bowls, options).map((part): Part => ({
    ...part,
    name: nameOf(part, sink.bowls.length),
  }));
  const down = withDeck(parts, sink, laneM);
  return (upwards ? down.toReversed() : down).flatMap(piecesOf);
}
