import { For, Show } from 'solid-js';
import type { Point } from '../../../../../core/geometry/index.ts';
import {
  atWall,
  wallOf,
  wallsOf,
  type Kitchen,
  type Opening,
} from '../../../../../core/kitchen/index.ts';
import { moveWall, roomOutline } from '../../../../../core/editing/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { say, t } from '../../../../context/language.ts';
import type { Frame } from '../../../../pictures/kitchen-frame.ts';
import { WALL_M } from '../../room/extent.ts';
import { OpeningAbove } from '../../room/shell.tsx';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import { quantity } from '../../survey/inputs/quantities.ts';
import { wallName } from '../hand/faces.ts';
import { actionOfKey } from '../hand/keys.ts';

/** Half of the least touch target, px: 48 px across. */
const HALF_TOUCH_PX = 24;

/** A door, window or passage from above, to be pressed, pulled and gone to by Tab. */
export function OpeningPiece(props: {
  kitchen: Kitchen;
  opening: Opening;
  frame: Frame;
  pxPerCm: number;
  selected: boolean;
  onFocus: () => void;
  onKey: (event: KeyboardEvent) => void;
}) {
  const outline = () => roomOutline(props.kitchen);
  const wall = () => wallOf(outline(), props.opening.wall);
  const cm = (px: number) => px / props.pxPerCm;
  /** A wall is thinner than a finger. */
  const hit = () => {
    const at = wall();
    if (!at) return '';
    const reachM = Math.max(WALL_M, cm(HALF_TOUCH_PX) / 100);
    const { atM, widthM } = props.opening;
    const corners: readonly Point[] = [
      atWall(at, atM, reachM - WALL_M / 2),
      atWall(at, atM + widthM, reachM - WALL_M / 2),
      atWall(at, atM + widthM, -reachM - WALL_M / 2),
      atWall(at, atM, -reachM - WALL_M / 2),
    ];
    return `M${corners.map((corner) => props.frame.at(corner).join(' ')).join('L')}Z`;
  };
  const spoken = () =>
    t('survey.opening.spoken', {
      name: message(`survey.opening.${props.opening.kind}`),
      wall: wallName(outline(), props.opening.wall),
      left: quantity('length', props.opening.atM),
      width: quantity('length', props.opening.widthM),
    });
  return (
    <g
      class="ed-piece ed-opening"
      classList={{ 'ed-opening--selected': props.selected }}
      role="button"
      tabindex={0}
      aria-pressed={props.selected}
      aria-label={spoken()}
      aria-describedby="editor-keys"
      data-grip="opening"
      data-id={props.opening.id}
      onFocus={() => props.onFocus()}
      onKeyDown={(e) => props.onKey(e)}
    >
      <path class="ed-hit" d={hit()} />
      <OpeningAbove opening={props.opening} outline={outline()} frame={props.frame} />
    </g>
  );
}

/** The two sides of a chosen opening, to be pulled, and how wide it is. */
export function OpeningHandles(props: {
  kitchen: Kitchen;
  opening: Opening;
  frame: Frame;
  pxPerCm: number;
  /** False where other words stand in the picture. */
  sized: boolean;
}) {
  const wall = () => wallOf(roomOutline(props.kitchen), props.opening.wall);
  const cm = (px: number) => px / props.pxPerCm;
  return (
    <Show when={wall()}>
      {(at) => {
        const { atM, widthM } = props.opening;
        const middle = () => props.frame.at(atWall(at(), atM + widthM / 2, -WALL_M - cm(16) / 100));
        return (
          <g class="ed-handles" aria-hidden="true">
            <For each={[atM, atM + widthM]}>
              {(alongM, n) => {
                const [x, y] = props.frame.at(atWall(at(), alongM, -WALL_M / 2));
                return (
                  <g class="ed-corner" data-grip="corner" data-id={props.opening.id} data-n={n()}>
                    <circle class="ed-hit" cx={x} cy={y} r={cm(HALF_TOUCH_PX)} />
                    <circle class="ed-knob" cx={x} cy={y} r={cm(10)} />
                  </g>
                );
              }}
            </For>
            <Show when={props.sized}>
              <text
                class="ed-number"
                font-size={String(cm(15))}
                x={middle()[0]}
                y={middle()[1]}
                text-anchor="middle"
                dominant-baseline="central"
              >
                {say(quantity('length', widthM))}
              </text>
            </Show>
          </g>
        );
      }}
    </Show>
  );
}

/** A knob on each wall, to push it out or in by finger or arrows. */
export function WallKnobs(props: { survey: SurveyController; frame: Frame; pxPerCm: number }) {
  const outline = () => roomOutline(props.survey.kitchen());
  const cm = (px: number) => px / props.pxPerCm;
  const push = (event: KeyboardEvent, index: number): void => {
    const wall = wallsOf(outline())[index];
    const action = actionOfKey({ key: event.key, shift: false, ctrl: event.ctrlKey });
    if (!wall || action?.do !== 'move') return;
    event.preventDefault();
    const outM = -(action.dxM * wall.inward[0] + action.dyM * wall.inward[1]);
    const next = moveWall(props.survey.kitchen(), wall.edge, outM);
    props.survey.change(next, message('survey.done.walls'), `wall-${index}`);
  };
  return (
    <For each={Array.from({ length: outline().length }, (_, i) => i)}>
      {(index) => (
        <Show when={wallsOf(outline())[index]}>
          {(wall) => {
            const at = () => props.frame.at(atWall(wall(), wall().lengthM / 2, -WALL_M / 2));
            return (
              <g
                class="ed-corner ed-wall-knob"
                role="button"
                tabindex={0}
                aria-label={t('survey.face.push', {
                  wall: wallName(outline(), wall().edge),
                  length: quantity('length', wall().lengthM),
                })}
                data-grip="wall"
                data-n={index}
                onKeyDown={(e) => push(e, index)}
              >
                <circle class="ed-hit" cx={at()[0]} cy={at()[1]} r={cm(HALF_TOUCH_PX)} />
                <circle class="ed-plus" cx={at()[0]} cy={at()[1]} r={cm(13)} />
                <path
                  class="ed-plus-sign"
                  transform={`translate(${at().join(' ')}) rotate(${wall().inward[0] === 0 || Math.abs(wall().inward[1]) > 0.7 ? 0 : 90}) scale(${cm(1)})`}
                  d="M0-8V8M-4-4 0-8 4-4M-4 4 0 8 4 4"
                />
              </g>
            );
          }}
        </Show>
      )}
    </For>
  );
}
