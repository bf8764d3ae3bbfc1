import { createMemo, For, Show } from 'solid-js';
import type { Point } from '../../../../../core/geometry/index.ts';
import { atWall, wallsOf, type Kitchen, type Wall } from '../../../../../core/kitchen/index.ts';
import { elevationOf, roomOutline } from '../../../../../core/editing/index.ts';
import { say } from '../../../../context/language.ts';
import type { Frame } from '../../../../pictures/kitchen-frame.ts';
import { WALL_M } from '../../room/extent.ts';
import { quantity } from '../../survey/inputs/quantities.ts';

/** Marks nearer than this are one, m. */
const SAME_M = 0.01;
/** A figure takes this share of its size in width. */
const LETTER_WIDTH = 0.56;
const TICK_PX = 5;

/** Where along a wall its things begin and end, with the ends of the wall. What is let into a counter is left out. */
export function marksAlong(kitchen: Kitchen, wall: Wall): readonly number[] {
  const seen = elevationOf(kitchen, wall.edge);
  const standing = (seen?.fronts ?? []).filter(
    ({ fixture }) => !['sink', 'microwave', 'cupboard', 'drawer', 'hood'].includes(fixture.kind),
  );
  const ends = [...standing, ...(seen?.openings ?? [])].flatMap(({ atM, widthM }) => [
    atM,
    atM + widthM,
  ]);
  const sorted = [0, wall.lengthM, ...ends].toSorted((a, b) => a - b);
  return sorted.filter((at, i) => i === 0 || at - (sorted[i - 1] ?? 0) > SAME_M);
}

/** A line with a tick at each mark and the length between; a length without room for its figure stays away. */
export function Chain(props: {
  from: readonly [number, number];
  to: readonly [number, number];
  /** Shares of the way from one to the other. */
  marks: readonly number[];
  lengthM: number;
  cm: (px: number) => number;
  fontPx: number;
}) {
  const way = () => [props.to[0] - props.from[0], props.to[1] - props.from[1]] as const;
  const longCm = () => Math.hypot(...way());
  const at = (share: number): readonly [number, number] => [
    props.from[0] + way()[0] * share,
    props.from[1] + way()[1] * share,
  ];
  const tick = () => {
    const [x, y] = way();
    const size = props.cm(TICK_PX) / (longCm() || 1);
    return [-y * size, x * size] as const;
  };
  const turn = () => {
    const degrees = (Math.atan2(way()[1], way()[0]) * 180) / Math.PI;
    return degrees > 91 || degrees < -89 ? degrees + 180 : degrees;
  };
  const pieces = () =>
    props.marks.slice(1).flatMap((end, i) => {
      const start = props.marks[i] ?? 0;
      const words = say(quantity('length', (end - start) * props.lengthM));
      const isRoomy =
        words.length * LETTER_WIDTH * props.cm(props.fontPx) < (end - start) * longCm() * 0.94;
      return isRoomy ? [{ words, at: at((start + end) / 2) }] : [];
    });
  return (
    <g class="ed-lengths">
      <path
        class="ed-length"
        d={`M${props.from.join(' ')}L${props.to.join(' ')}${props.marks
          .map((share) => {
            const [x, y] = at(share);
            const [dx, dy] = tick();
            return `M${x - dx} ${y - dy}L${x + dx} ${y + dy}`;
          })
          .join('')}`}
      />
      <For each={pieces()}>
        {(piece) => (
          <text
            font-size={String(props.cm(props.fontPx))}
            text-anchor="middle"
            dominant-baseline="central"
            transform={`translate(${piece.at.join(' ')}) rotate(${turn()})`}
          >
            {piece.words}
          </text>
        )}
      </For>
    </g>
  );
}

const ROW_PX = [13, 31] as const;
const FONT_PX = 13;

/** Lengths along each wall: of what stands there and of the whole. */
export function WallLengths(props: { kitchen: Kitchen; frame: Frame; pxPerCm: number }) {
  const cm = (px: number) => px / props.pxPerCm;
  const walls = createMemo(() => wallsOf(roomOutline(props.kitchen)));
  const row = (wall: Wall, px: number) => {
    const outM = WALL_M + cm(px) / 100;
    const end = (alongM: number): Point => props.frame.at(atWall(wall, alongM, -outM));
    return { from: end(0), to: end(wall.lengthM) };
  };
  return (
    <g aria-hidden="true">
      <For each={walls()}>
        {(wall) => {
          const marks = () => marksAlong(props.kitchen, wall).map((at) => at / wall.lengthM);
          return (
            <>
              <Show when={marks().length > 2}>
                <Chain
                  {...row(wall, ROW_PX[0])}
                  marks={marks()}
                  lengthM={wall.lengthM}
                  cm={cm}
                  fontPx={FONT_PX}
                />
              </Show>
              <Chain
                {...row(wall, marks().length > 2 ? ROW_PX[1] : ROW_PX[0])}
                marks={[0, 1]}
                lengthM={wall.lengthM}
                cm={cm}
                fontPx={FONT_PX}
              />
            </>
          );
        }}
      </For>
    </g>
  );
}
