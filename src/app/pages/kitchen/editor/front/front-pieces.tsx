import { For, Show } from 'solid-js';
import { boxCorners } from '../../../../../core/geometry/index.ts';
import { outlineOf, type Fixture } from '../../../../../core/kitchen/index.ts';
import {
  canHang,
  elevationOf,
  hangFixture,
  roomOutline,
  type FrontBox,
  type FrontOf,
  type OpeningFront,
} from '../../../../../core/editing/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { say, t, written } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { FromFront, OpeningFromFront } from '../../room/from-front.tsx';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import { quantity } from '../../survey/inputs/quantities.ts';
import { edgeOf } from '../hand/faces.ts';

export const CM_PER_M = 100;
const HALF_TOUCH_PX = 24;
const FONT_PX = 15;
/** About as wide as a letter of that size. */
const LETTER_PX = 8;
const KNOB_PX = 12;

/** What stands in the plan view is made wider there. */
export function isPullable(fixtures: readonly Fixture[], id: string): boolean {
  const fixture = fixtures.find((one) => one.id === id);
  return !fixture || ('wallPlace' in fixture && fixture.wallPlace !== undefined);
}

export function Front(props: { box: FrontOf | OpeningFront; patterns: string }) {
  const widthCm = () => props.box.widthM * CM_PER_M;
  const heightCm = () => (props.box.toM - props.box.fromM) * CM_PER_M;
  const opening = () => ('opening' in props.box ? props.box.opening : undefined);
  const fixture = () => ('fixture' in props.box ? props.box.fixture : undefined);
  return (
    <>
      <Show when={opening()}>
        {(one) => (
          <OpeningFromFront
            kind={one().kind}
            hinge={one().hinge}
            widthCm={widthCm()}
            heightCm={heightCm()}
            told={props.box.told}
          />
        )}
      </Show>
      <Show when={fixture()}>
        {(one) => (
          <FromFront
            fixture={one()}
            widthCm={widthCm()}
            heightCm={heightCm()}
            told={props.box.told}
            patterns={props.patterns}
          />
        )}
      </Show>
    </>
  );
}

/** Corners to pull of what hangs or opens, and what a tape would say of the chosen. */
export function BoxHandles(props: {
  box: FrontBox;
  pullable: boolean;
  highCm: number;
  cm: (px: number) => number;
}) {
  const corners = () =>
    boxCorners({
      xMinM: props.box.atM,
      xMaxM: props.box.atM + props.box.widthM,
      yMinM: props.box.fromM,
      yMaxM: props.box.toM,
    }).map(([x, y]) => [x * CM_PER_M, props.highCm - y * CM_PER_M] as const);
  const middleX = () => (props.box.atM + props.box.widthM / 2) * CM_PER_M;
  const widthWords = () => say(quantity('length', props.box.widthM));
  const heightWords = () =>
    t('survey.front.heights', {
      from: quantity('length', props.box.fromM),
      to: quantity('length', props.box.toM),
    });
  /** In the box where it has room between its handles, else over it, else under it. */
  const wordsY = () => {
    const topCm = props.highCm - props.box.toM * CM_PER_M;
    const bottomCm = props.highCm - props.box.fromM * CM_PER_M;
    const longest = Math.max(widthWords().length, heightWords().length);
    const hasRoom =
      longest * LETTER_PX + 2 * KNOB_PX < (props.box.widthM * CM_PER_M) / props.cm(1) &&
      bottomCm - topCm > props.cm(3 * FONT_PX);
    if (hasRoom) return (topCm + bottomCm) / 2;
    return topCm > props.cm(4 * FONT_PX)
      ? topCm - props.cm(2 * FONT_PX)
      : bottomCm + props.cm(2 * FONT_PX);
  };
  return (
    <g class="ed-handles" aria-hidden="true">
      <g class="ed-sizes" font-size={String(props.cm(FONT_PX))} text-anchor="middle">
        <text x={middleX()} y={wordsY() - props.cm(4)}>
          {widthWords()}
        </text>
        <text x={middleX()} y={wordsY() + props.cm(14)}>
          {heightWords()}
        </text>
      </g>
      <Show when={props.pullable}>
        <For each={corners()}>
          {([x, y], n) => (
            <g class="ed-corner" data-grip="corner" data-id={props.box.id} data-n={n()}>
              <circle class="ed-hit" cx={x} cy={y} r={props.cm(HALF_TOUCH_PX)} />
              <circle class="ed-knob" cx={x} cy={y} r={props.cm(9)} />
            </g>
          )}
        </For>
      </Show>
    </g>
  );
}

/** Below the picture of a wall: what could be put there, and what its broken lines mean. */
export function BelowFront(props: {
  survey: SurveyController;
  wall: number;
  onSelect: (id: string) => void;
}) {
  const untold = () => {
    const kitchen = props.survey.kitchen();
    const seen = elevationOf(kitchen, edgeOf(roomOutline(kitchen), props.wall));
    return [...(seen?.fronts ?? []), ...(seen?.openings ?? [])].some(({ told }) => !told);
  };
  return (
    <>
      <Unhung {...props} />
      <Show when={untold()}>
        <p class="quiet editor-note">{t('survey.front.untold')}</p>
      </Show>
    </>
  );
}

/** What nobody drew anywhere, to be hung on this wall or built in at it. */
function Unhung(props: { survey: SurveyController; wall: number; onSelect: (id: string) => void }) {
  const rest = () =>
    props.survey
      .kitchen()
      .fixtures.filter((fixture) => canHang(fixture) && !fixture.wallPlace && !outlineOf(fixture));
  const hang = (fixture: Fixture): void => {
    const now = props.survey.kitchen();
    const next = hangFixture(now, fixture.id, edgeOf(roomOutline(now), props.wall));
    const done = message('survey.done.hung', { fixture: fixture.name });
    if (!props.survey.change(next, done)) props.onSelect(fixture.id);
  };
  return (
    <Show when={rest().length > 0}>
      <div class="editor-unhung" role="group" aria-label={t('survey.front.unhung')}>
        <p class="quiet">{t('survey.front.unhung')}</p>
        <For each={rest()}>
          {(fixture) => (
            <Action class="tool tool--word" onPress={() => hang(fixture)}>
              {written(fixture.name)}
            </Action>
          )}
        </For>
      </div>
    </Show>
  );
}
