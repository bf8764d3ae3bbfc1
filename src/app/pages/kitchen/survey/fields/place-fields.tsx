import { Show } from 'solid-js';
import type { Fixture } from '../../../../../core/kitchen/index.ts';
import { moveFixture } from '../../../../../core/editing/index.ts';
import { outlineOf } from '../../../../pictures/kitchen-frame.ts';
import { isUpright, lowerLeft, sizeOf } from '../../editor/outline.ts';
import { resizedAtWall } from './resize.ts';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from './typed.tsx';

/** Smallest and largest a fixture is drawn, m. */
export const SIDE_M = { least: 0.05, most: 20 } as const;
const WHERE_M = { least: -100, most: 100 } as const;
/** Every length that can be dragged, typed. */
export function PlaceFields(props: { survey: SurveyController; fixture: Fixture }) {
  const outline = () => outlineOf(props.fixture) ?? [];
  const size = () => sizeOf(outline());
  const at = () => lowerLeft(outline());
  const id = () => props.fixture.id;
  const survey = props.survey;
  const resize = (lengthM: number, depthM: number) =>
    survey.change(
      resizedAtWall(survey.kitchen(), id(), lengthM, depthM),
      `${props.fixture.name} resized`,
    );
  const move = (x: number, y: number) =>
    survey.change(moveFixture(survey.kitchen(), id(), [x, y]), `${props.fixture.name} moved`);
  return (
    <Show when={outline().length > 0}>
      <div class="typed-row">
        <Typed
          label="Length"
          quantity="length"
          value={size().lengthM}
          allowed={SIDE_M}
          path={`fixtures.${id()}.outline`}
          onValue={(value) => resize(value, size().depthM)}
        />
        <Typed
          label="Depth"
          quantity="length"
          value={size().depthM}
          allowed={SIDE_M}
          onValue={(value) => resize(size().lengthM, value)}
        />
        <Typed
          label="From the left"
          quantity="length"
          value={at()[0]}
          allowed={WHERE_M}
          onValue={(value) => move(value, at()[1])}
        />
        <Typed
          label="From the front"
          quantity="length"
          value={at()[1]}
          allowed={WHERE_M}
          onValue={(value) => move(at()[0], value)}
        />
      </div>
      <Show when={!isUpright(outline())}>
        <p class="tell">
          It has {outline().length} corners: length and depth are those of the box round it.
        </p>
      </Show>
    </Show>
  );
}
