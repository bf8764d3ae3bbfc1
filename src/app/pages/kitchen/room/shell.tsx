import { For, Show } from 'solid-js';
import type { Point, Polygon } from '../../../../core/geometry/index.ts';
import { atWall, wallOf, type Opening, type Wall } from '../../../../core/kitchen/index.ts';
import { pathOf, type Frame } from '../../../pictures/kitchen-frame.ts';
import { WALL_M } from './extent.ts';

function line(frame: Frame, ...points: readonly Point[]): string {
  return points.map((p, i) => `${i === 0 ? 'M' : 'L'}${frame.at(p).join(' ')}`).join('');
}

/** The floor and the walls round it; walls that nobody told are drawn broken. */
export function Walls(props: { outline: Polygon; told: boolean; frame: Frame }) {
  const d = () => pathOf(props.frame, props.outline);
  return (
    <g aria-hidden="true">
      <path
        class="rm-walls"
        classList={{ 'rm-walls--likely': !props.told }}
        d={d()}
        stroke-width={String(props.told ? 2 * WALL_M * 100 : 6)}
      />
      <path class="rm-floor" d={d()} />
    </g>
  );
}

/** The place of an opening in the thickness of its wall. */
function gapOf(wall: Wall, { atM, widthM }: Opening): Polygon {
  return [
    atWall(wall, atM, 0),
    atWall(wall, atM + widthM, 0),
    atWall(wall, atM + widthM, -WALL_M),
    atWall(wall, atM, -WALL_M),
  ];
}

/** A door leaf and the quarter circle it sweeps. */
function swingOf(wall: Wall, opening: Opening, frame: Frame): { leaf: string; arc: string } {
  const { atM, widthM, hinge, swing } = opening;
  const isLeft = hinge === 'left';
  const out = swing === 'out';
  const face = out ? -WALL_M : 0;
  const hung = atWall(wall, isLeft ? atM : atM + widthM, face);
  const jamb = atWall(wall, isLeft ? atM + widthM : atM, face);
  const end = atWall(wall, isLeft ? atM : atM + widthM, face + (out ? -widthM : widthM));
  const [hx, hy] = frame.at(hung);
  const [ex, ey] = frame.at(end);
  const [jx, jy] = frame.at(jamb);
  const turn = (ex - hx) * (jy - hy) - (ey - hy) * (jx - hx);
  const r = widthM * 100;
  return {
    leaf: line(frame, hung, end),
    arc: `M${ex} ${ey}A${r} ${r} 0 0 ${turn > 0 ? 1 : 0} ${jx} ${jy}`,
  };
}

/** A door, window or passage in its wall. */
export function OpeningAbove(props: { opening: Opening; outline: Polygon; frame: Frame }) {
  const wall = () => wallOf(props.outline, props.opening.wall);
  return (
    <Show when={wall()}>
      {(at) => (
        <>
          <path
            class={`rm-gap rm-gap--${props.opening.kind}`}
            d={pathOf(props.frame, gapOf(at(), props.opening))}
          />
          <Show when={props.opening.kind === 'window'}>
            <For each={[0.25, 0.5, 0.75]}>
              {(share) => (
                <path
                  class="rm-line"
                  d={line(
                    props.frame,
                    atWall(at(), props.opening.atM, -WALL_M * share),
                    atWall(at(), props.opening.atM + props.opening.widthM, -WALL_M * share),
                  )}
                />
              )}
            </For>
          </Show>
          <Show when={props.opening.kind === 'door' && props.opening.hinge}>
            <path class="rm-leaf" d={swingOf(at(), props.opening, props.frame).leaf} />
            <path class="rm-arc" d={swingOf(at(), props.opening, props.frame).arc} />
          </Show>
        </>
      )}
    </Show>
  );
}
