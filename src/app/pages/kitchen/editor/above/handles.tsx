import { For, Show } from 'solid-js';
import {
  edgesOf,
  isUpright,
  sizeOf,
  type Point,
  type Polygon,
} from '../../../../../core/geometry/index.ts';
import { outlineOf, type Fixture } from '../../../../../core/kitchen/index.ts';
import { say } from '../../../../context/language.ts';
import type { Frame } from '../../../../pictures/kitchen-frame.ts';
import { quantity } from '../../survey/inputs/quantities.ts';
import type { Guides } from '../hand/carry.ts';

/** Half of the least touch target, px: 48 px across. */
const HALF_TOUCH_PX = 24;
/** A handle stands this far off its corner, so that the finger does not hide it, px. */
const STAND_OFF_PX = 16;

/** Mean of the corners: which way is outwards for each of them. */
function centreOf(outline: Polygon): Point {
  const n = outline.length;
  return [
    outline.reduce((sum, p) => sum + p[0], 0) / n,
    outline.reduce((sum, p) => sum + p[1], 0) / n,
  ];
}

/** Corners to pull, sizes to read, and in shape mode the edges that can be broken in two. */
export function Handles(props: {
  fixture: Fixture;
  frame: Frame;
  pxPerCm: number;
  shape: boolean;
  /** False where other words stand in the picture. */
  sized: boolean;
}) {
  const outline = () => outlineOf(props.fixture) ?? [];
  const cm = (px: number) => px / props.pxPerCm;
  const off = (corner: Point): readonly [number, number] => {
    const [x, y] = props.frame.at(corner);
    const [mx, my] = props.frame.at(centreOf(outline()));
    return [
      x + (Math.sign(x - mx) * cm(STAND_OFF_PX)) / Math.SQRT2,
      y + (Math.sign(y - my) * cm(STAND_OFF_PX)) / Math.SQRT2,
    ];
  };
  return (
    <g class="ed-handles" aria-hidden="true">
      <Show when={props.shape}>
        <Numbers outline={outline()} frame={props.frame} fontCm={cm(15)} />
      </Show>
      <Show when={props.shape}>
        <For each={edgesOf(outline())}>
          {([a, b], edge) => {
            const at = () => props.frame.at([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
            return (
              <g class="ed-edge" data-grip="edge" data-id={props.fixture.id} data-n={edge()}>
                <circle class="ed-hit" cx={at()[0]} cy={at()[1]} r={cm(HALF_TOUCH_PX)} />
                <circle class="ed-plus" cx={at()[0]} cy={at()[1]} r={cm(11)} />
                <path
                  class="ed-plus-sign"
                  d={`M${at()[0] - cm(6)} ${at()[1]}h${cm(12)}M${at()[0]} ${at()[1] - cm(6)}v${cm(12)}`}
                />
              </g>
            );
          }}
        </For>
      </Show>
      <Show when={props.sized && !props.shape && isUpright(outline())}>
        <Sizes outline={outline()} frame={props.frame} fontCm={cm(17)} />
      </Show>
      <For each={outline()}>
        {(corner, i) => {
          const at = () => off(corner);
          const foot = () => props.frame.at(corner);
          return (
            <g class="ed-corner" data-grip="corner" data-id={props.fixture.id} data-n={i()}>
              <circle class="ed-hit" cx={at()[0]} cy={at()[1]} r={cm(HALF_TOUCH_PX)} />
              <path class="ed-stem" d={`M${foot().join(' ')}L${at().join(' ')}`} />
              <circle class="ed-knob" cx={at()[0]} cy={at()[1]} r={cm(10)} />
            </g>
          );
        }}
      </For>
    </g>
  );
}

/** Length above, depth at the side: what a tape would say. */
function Sizes(props: { outline: Polygon; frame: Frame; fontCm: number }) {
  const at = () => {
    const points = props.outline.map(props.frame.at);
    const xs = points.map((p) => p[0]);
    const ys = points.map((p) => p[1]);
    return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
  };
  return (
    <g class="ed-sizes" font-size={String(props.fontCm)}>
      <text x={(at().x0 + at().x1) / 2} y={at().y1 + props.fontCm * 1.25} text-anchor="middle">
        {say(quantity('length', sizeOf(props.outline).lengthM))}
      </text>
      <text x={at().x1 + props.fontCm * 0.5} y={(at().y0 + at().y1) / 2 + props.fontCm * 0.35}>
        {say(quantity('length', sizeOf(props.outline).depthM))}
      </text>
    </g>
  );
}

/** The numbers by which the sheet calls the corners. */
function Numbers(props: { outline: Polygon; frame: Frame; fontCm: number }) {
  return (
    <For each={props.outline}>
      {(corner, i) => {
        const at = () => {
          const [x, y] = props.frame.at(corner);
          const [mx, my] = props.frame.at(centreOf(props.outline));
          return [x + Math.sign(mx - x) * props.fontCm, y + Math.sign(my - y) * props.fontCm];
        };
        return (
          <text
            class="ed-number"
            font-size={String(props.fontCm)}
            x={at()[0]}
            y={at()[1]}
            text-anchor="middle"
            dominant-baseline="central"
          >
            {i() + 1}
          </text>
        );
      }}
    </For>
  );
}

/** The lines that what is dragged has caught on. */
export function GuideLines(props: { guides: Guides; frame: Frame }) {
  return (
    <g class="ed-guides" aria-hidden="true">
      <For each={props.guides}>
        {([a, b]) => <path d={`M${props.frame.at(a).join(' ')}L${props.frame.at(b).join(' ')}`} />}
      </For>
    </g>
  );
}
