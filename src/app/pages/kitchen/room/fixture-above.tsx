import { createMemo, Show } from 'solid-js';
import type { Polygon } from '../../../../core/geometry/index.ts';
import {
  atWall,
  outlineOf,
  wallOf,
  type Cooktop,
  type Fixture,
  type WallPlace,
} from '../../../../core/kitchen/index.ts';
import { pathOf, type Frame } from '../../../pictures/kitchen-frame.ts';
import { Burners } from '../../../pictures/kitchen-plan.tsx';
import { FromAbove, HobFront, OvenAbove } from './from-above.tsx';
import { paintOf } from './materials.tsx';
import { stanceOf } from './stance.ts';

/** Hangs over what stands below it: one sees under it. */
export function isOverhead(fixture: Fixture): boolean {
  return fixture.kind === 'hood' || ('place' in fixture && fixture.place === 'over-counter');
}

/** A fixture of the plan view as it looks from above. */
export function FixtureAbove(props: {
  fixture: Fixture;
  room: Polygon;
  frame: Frame;
  patterns: string;
  /** Outlines of all that stands in the room. */
  others: readonly Polygon[];
  /** The hob that stands in the same place as this oven is drawn over it. */
  inRange: boolean;
}) {
  const outline = () => outlineOf(props.fixture) ?? [];
  const path = () =>
    pathOf(props.frame, outline()) +
    (props.fixture.kind === 'counter'
      ? props.fixture.holes.map((hole) => pathOf(props.frame, hole)).join('')
      : '');
  const stance = createMemo(() => stanceOf(outline(), props.room, props.frame, props.others));
  const paint = () =>
    isOverhead(props.fixture) ? 'transparent' : paintOf(props.fixture, props.patterns);
  return (
    <>
      <path
        class={`kp-shape kp-shape--${props.fixture.kind}`}
        classList={{ 'rm-overhead': isOverhead(props.fixture) }}
        d={path()}
        fill-rule="evenodd"
        style={paint() ? { fill: paint() } : undefined}
      />
      <g transform={stance().transform}>
        <FromAbove fixture={props.fixture} widthCm={stance().widthCm} depthCm={stance().depthCm} />
        <Show when={props.fixture.kind === 'oven'}>
          <OvenAbove
            widthCm={stance().widthCm}
            depthCm={stance().depthCm}
            inRange={props.inRange}
          />
        </Show>
        <Show when={props.fixture.kind === 'cooktop' && props.fixture}>
          {(top) => (
            <HobFront
              widthCm={stance().widthCm}
              depthCm={stance().depthCm}
              count={(top() as Cooktop).burners.length}
              glass={(top() as Cooktop).surface === 'glass-ceramic'}
            />
          )}
        </Show>
      </g>
      <Show when={props.fixture.kind === 'cooktop' && props.fixture}>
        {(top) => (
          <g classList={{ 'rm-on-glass': (top() as Cooktop).surface === 'glass-ceramic' }}>
            <Burners frame={props.frame} cooktop={top() as Cooktop} lit={[]} />
          </g>
        )}
      </Show>
    </>
  );
}

/** The outline of what hangs at a wall or is built in below. */
function hangingOutline(room: Polygon, { wall, atM, widthM, depthM }: WallPlace): Polygon {
  const at = wallOf(room, wall);
  if (!at) return [];
  return [
    atWall(at, atM, 0),
    atWall(at, atM + widthM, 0),
    atWall(at, atM + widthM, depthM),
    atWall(at, atM, depthM),
  ];
}

/** What the plan view leaves out, as a broken line where it hangs or is built in. */
export function HangingAbove(props: {
  fixture: Fixture;
  place: WallPlace;
  room: Polygon;
  frame: Frame;
}) {
  const outline = () => hangingOutline(props.room, props.place);
  const stance = createMemo(() => stanceOf(outline(), props.room, props.frame, []));
  const isHood = () => props.fixture.kind === 'hood';
  return (
    <>
      <path class="kp-shape rm-overhead" d={pathOf(props.frame, outline())} />
      <Show when={isHood()}>
        <g class="rm-faint" transform={stance().transform}>
          <FromAbove
            fixture={props.fixture}
            widthCm={stance().widthCm}
            depthCm={stance().depthCm}
          />
        </g>
      </Show>
    </>
  );
}
