import { For, Show } from 'solid-js';
import {
  edgesOf,
  signedAreaM2,
  type Counter,
  type Point,
} from '../../../../../core/kitchen/index.ts';
import {
  addCorner,
  moveCorner,
  removeCorner,
  toggleBackEdge,
} from '../../../../../core/editing/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { Toggle } from './pick.tsx';
import { quantityText } from './quantities.ts';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from './typed.tsx';

const WHERE_M = { least: -100, most: 100 } as const;
const FEWEST_CORNERS = 3;

/** A counter of any shape: its corners typed, its edges told apart by whether a wall stands there. */
export function ShapeFields(props: {
  survey: SurveyController;
  counter: Counter;
  open: boolean;
  onOpen: (open: boolean) => void;
}) {
  const { survey } = props;
  const id = () => props.counter.id;
  const act = (next: ReturnType<typeof survey.kitchen>, what: string) =>
    survey.change(next, `${props.counter.name}: ${what}`);
  const edges = () => edgesOf(props.counter.outline);
  const atWall = (edge: number) => {
    const to = (edge + 1) % props.counter.outline.length;
    return props.counter.backEdges.some(
      ([a, b]) => (a === edge && b === to) || (a === to && b === edge),
    );
  };
  const place = (corner: number, x: number, y: number) => {
    const before = survey.kitchen();
    const next = moveCorner(before, id(), corner, [x, y]);
    if (next === before) return 'Then the outline would cross itself.';
    return act(next, 'corner moved');
  };
  return (
    <section class="sheet-part" aria-label="Shape">
      <p class="pick-label">Which edges stand at a wall?</p>
      <div class="pick-row">
        <For each={edges()}>
          {([a, b], edge) => (
            <Toggle
              pressed={atWall(edge())}
              onPress={() => act(toggleBackEdge(survey.kitchen(), id(), edge()), 'wall')}
            >
              {props.open ? `${edge() + 1}–${((edge() + 1) % edges().length) + 1}, ` : ''}
              {sideName(a, b, props.counter)},{' '}
              {quantityText('length', Math.hypot(b[0] - a[0], b[1] - a[1]))}
            </Toggle>
          )}
        </For>
      </div>
      <Action class="button button--plain" onPress={() => props.onOpen(!props.open)}>
        {props.open ? 'Done with the corners' : 'Corners one by one'}
      </Action>
      <Show when={props.open}>
        <ol class="corner-list">
          <For each={props.counter.outline}>
            {(corner, i) => (
              <li>
                <Typed
                  label={`${i() + 1} from the left`}
                  quantity="length"
                  value={corner[0]}
                  allowed={WHERE_M}
                  onValue={(x) => place(i(), x, corner[1])}
                />
                <Typed
                  label={`${i() + 1} from the front`}
                  quantity="length"
                  value={corner[1]}
                  allowed={WHERE_M}
                  onValue={(y) => place(i(), corner[0], y)}
                />
                <Action
                  class="word-button"
                  label={`Add after corner ${i() + 1}`}
                  onPress={() => act(addCorner(survey.kitchen(), id(), i()), 'corner added')}
                >
                  Add after
                </Action>
                <Action
                  class="word-button"
                  label={`Take out corner ${i() + 1}`}
                  disabled={props.counter.outline.length <= FEWEST_CORNERS}
                  onPress={() => act(removeCorner(survey.kitchen(), id(), i()), 'corner taken out')}
                >
                  Take out
                </Action>
              </li>
            )}
          </For>
        </ol>
      </Show>
    </section>
  );
}

/** "Far side", "left side": by which way the edge looks. */
function sideName(a: Point, b: Point, counter: Counter): string {
  const turn = Math.sign(signedAreaM2(counter.outline)) || 1;
  const outX = turn * (b[1] - a[1]);
  const outY = turn * (a[0] - b[0]);
  if (Math.abs(outY) >= Math.abs(outX)) return outY > 0 ? 'far side' : 'near side';
  return outX > 0 ? 'right side' : 'left side';
}
