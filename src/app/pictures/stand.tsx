import { createMemo, For } from 'solid-js';
import {
  between,
  distanceM,
  nearestShare,
  signedAreaM2,
  type Point,
  type Polygon,
} from '../../core/geometry/index.ts';
import type { Stretch } from '../../core/plan/index.ts';
import { t } from '../context/language.ts';
import { CM_PER_M, type Frame } from './kitchen-frame.ts';

type Stand = NonNullable<Stretch['stand']>;

/** A walk along one edge, and the place on it where the feet are. */
type Walk = { readonly stand: Stand; readonly at: Point };

/** The walk is drawn this far off the edge, and the feet's middle, cm. */
const WALK_OFF_CM = 5;
const FEET_OFF_CM = 15;
/** Room that feet take beside the surface, cm. */
const FEET_MARGIN_CM = 34;

/** What is walked along each edge for some stretches, with the feet where it begins. */
function walksOf(stretches: readonly Stretch[]): readonly Walk[] {
  const walks = new Map<string, Walk>();
  for (const { stand } of stretches) {
    if (!stand) continue;
    const key = stand.edge.join('-');
    const known = walks.get(key);
    if (!known) {
      walks.set(key, { stand, at: stand.at });
      continue;
    }
    const ends = [known.stand.from, known.stand.to, stand.from, stand.to];
    const pairs = ends.flatMap((a) => ends.map((b) => [a, b] as const));
    const [from, to] = pairs.reduce((far, pair) =>
      distanceM(...pair) > distanceM(...far) ? pair : far,
    );
    walks.set(key, { ...known, stand: { ...stand, from, to } });
  }
  return [...walks.values()];
}

/** Unit vector out of a surface at an edge of it, on the screen. */
function outOf({ edge: [i, j] }: Stand, outline: Polygon): Point {
  const a = outline[i] ?? [0, 0];
  const b = outline[j] ?? [0, 0];
  const turn = Math.sign(signedAreaM2(outline)) / distanceM(a, b);
  return [(b[1] - a[1]) * turn, (b[0] - a[0]) * turn];
}

/** Points that a picture must hold so that the feet beside the surface are in it, m; only where somebody stands. */
export function roomForFeet(
  stretches: readonly Stretch[],
  outline: Polygon,
  scale: number,
): readonly Point[] {
  const farM = (FEET_MARGIN_CM * scale) / CM_PER_M;
  return stretches.flatMap(({ stand }) => {
    if (!stand) return [];
    const [x, y] = outOf(stand, outline);
    return [stand.from, stand.to].map((p): Point => [p[0] + x * farM, p[1] - y * farM]);
  });
}

/** From where it is poured: the stretch that one walks along each edge, and a pair of feet on it. */
export function Stands(props: {
  stretches: readonly Stretch[];
  outline: Polygon;
  frame: Frame;
  /** Feet in their own size, times this. */
  scale: number;
  /** The stretch that is being poured and where the stream is; the feet go with it. */
  now: { readonly stretch: Stretch; readonly at: Point } | undefined;
  /** Feet in the middle of each walk: no kettle is begun. */
  middle: boolean;
}) {
  const walks = createMemo(() => walksOf(props.stretches));
  const feetAt = ({ stand, at }: Walk): Point => {
    if (props.middle) return between(stand.from, stand.to, 0.5);
    const now = props.now;
    if (now?.stretch.stand?.edge.join() !== stand.edge.join()) return at;
    return between(stand.from, stand.to, nearestShare(now.at, stand.from, stand.to));
  };
  const off = (p: Point, out: Point, cm: number): Point => {
    const [x, y] = props.frame.at(p);
    return [x + out[0] * cm * props.scale, y + out[1] * cm * props.scale];
  };
  return (
    <For each={walks()}>
      {(walk) => {
        const out = () => outOf(walk.stand, props.outline);
        const ends = () => [walk.stand.from, walk.stand.to].map((p) => off(p, out(), WALK_OFF_CM));
        const feet = () => off(feetAt(walk), out(), FEET_OFF_CM);
        const turnDeg = () => (Math.atan2(out()[0], -out()[1]) * 180) / Math.PI + 180;
        return (
          <g class="stand">
            <polyline
              class="stand-walk"
              points={ends()
                .map((p) => p.join(','))
                .join(' ')}
            />
            <g
              class="stand-feet"
              transform={`translate(${feet().join(' ')}) rotate(${turnDeg()}) scale(${props.scale})`}
            >
              <title>{t('run.picture.stand')}</title>
              <For each={[-1, 1]}>
                {(side) => (
                  <g transform={`translate(${side * 5} 0) rotate(${side * 8})`}>
                    <ellipse cx="0" cy="-3" rx="3.6" ry="6" />
                    <ellipse cx="0" cy="6.5" rx="2.7" ry="3" />
                  </g>
                )}
              </For>
            </g>
          </g>
        );
      }}
    </For>
  );
}
