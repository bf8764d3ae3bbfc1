import { createMemo, createUniqueId, For } from 'solid-js';
import { boundingBox } from '../../../../core/geometry/index.ts';
import { drawnOutlines, type Fixture, type Kitchen } from '../../../../core/kitchen/index.ts';
import { roomOutline } from '../../../../core/editing/index.ts';
import { frameOf, outlineOf } from '../../../pictures/kitchen-frame.ts';
import { inDrawOrder } from '../../../pictures/kitchen-plan.tsx';
import { FixtureAbove, HangingAbove, isOverhead } from './fixture-above.tsx';
import { MaterialPatterns } from './materials.tsx';
import { extentOf, WALL_M } from './extent.ts';
import { OpeningAbove, Walls } from './shell.tsx';
import '../../../styles/kitchen/room-picture.css';

/** Round the walls, cm. */
const MARGIN_CM = 4;

/** Ovens in whose place a hob stands. */
export function ovensInRanges(fixtures: readonly Fixture[]): ReadonlySet<string> {
  const tops = fixtures.filter(({ kind }) => kind === 'cooktop');
  const sameBox = (a: Fixture, b: Fixture) => {
    const [one, other] = [a, b].map((f) => boundingBox(outlineOf(f) ?? []));
    return (
      !!one &&
      !!other &&
      Math.abs(one.xMinM - other.xMinM) + Math.abs(one.yMinM - other.yMinM) < 0.1
    );
  };
  return new Set(
    fixtures
      .filter((oven) => oven.kind === 'oven' && tops.some((top) => sameBox(oven, top)))
      .map(({ id }) => id),
  );
}

/** The kitchen from above as it looks: walls, doors, windows, appliances, materials. Without words. */
export function RoomPicture(props: {
  kitchen: Kitchen;
  /** What it shows, for those who do not see it; absent where words beside it say so. */
  label?: string;
  selected?: string | undefined;
  onSelect?: (id: string) => void;
}) {
  const patterns = createUniqueId();
  const room = () => roomOutline(props.kitchen);
  const others = createMemo(() => drawnOutlines(props.kitchen));
  const frame = createMemo(() => frameOf([extentOf(props.kitchen)], WALL_M * 100 + MARGIN_CM));
  const inRange = createMemo(() => ovensInRanges(props.kitchen.fixtures));
  return (
    <svg
      class="room-picture"
      viewBox={frame().viewBox}
      role={props.label ? 'img' : undefined}
      aria-label={props.label}
      aria-hidden={props.label ? undefined : 'true'}
    >
      <MaterialPatterns prefix={patterns} />
      <Walls outline={room()} told={!!props.kitchen.room.outline} frame={frame()} />
      <For each={props.kitchen.room.openings ?? []}>
        {(opening) => <OpeningAbove opening={opening} outline={room()} frame={frame()} />}
      </For>
      <For each={inDrawOrder(props.kitchen.fixtures)}>
        {(fixture) => (
          <g
            class="kp-fixture"
            classList={{ 'kp-fixture--selected': props.selected === fixture.id }}
            onClick={() => props.onSelect?.(fixture.id)}
          >
            <FixtureAbove
              fixture={fixture}
              room={room()}
              frame={frame()}
              patterns={patterns}
              others={others()}
              inRange={inRange().has(fixture.id)}
            />
          </g>
        )}
      </For>
      <For each={props.kitchen.fixtures}>
        {(fixture) =>
          'wallPlace' in fixture &&
          fixture.wallPlace &&
          isOverhead(fixture) &&
          !outlineOf(fixture) ? (
            <HangingAbove
              fixture={fixture}
              place={fixture.wallPlace}
              room={room()}
              frame={frame()}
            />
          ) : null
        }
      </For>
    </svg>
  );
}
