import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import { lowerLeft, type Polygon } from '../../../../../core/geometry/index.ts';
import { fixtureOf, outlineOf, type Fixture } from '../../../../../core/kitchen/index.ts';
import { openingOf } from '../../../../../core/editing/index.ts';
import { t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { inDrawOrder } from '../../../../pictures/kitchen-plan.tsx';
import { MaterialPatterns } from '../../room/materials.tsx';
import { ovensInRanges } from '../../room/room-picture.tsx';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import { Toggle } from '../../survey/inputs/pick.tsx';
import { quantity } from '../../survey/inputs/quantities.ts';
import { carryAbove, fixtureOutline, type Guides } from '../hand/carry.ts';
import { gripUnder } from '../hand/gesture.ts';
import { onPieceKey } from '../hand/piece-keys.ts';
import { PointerController } from '../hand/pointer-controller.ts';
import { WallLengths } from '../view/lengths.tsx';
import type { Shown } from '../view/shown.ts';
import { createViewport } from '../view/viewport.ts';
import { GuideLines, Handles } from './handles.tsx';
import { Floor, Hanging, Piece, Words } from './plan-pieces.tsx';
import { OpeningHandles, OpeningPiece, WallKnobs } from './wall-handles.tsx';

type AboveProps = {
  survey: SurveyController;
  selected: string | undefined;
  /** Corners one by one instead of length and depth. */
  shape: boolean;
  shown: Shown;
  onSelect: (id: string | undefined) => void;
  /** To the sheet of what is selected, by keyboard. */
  onOpen: () => void;
};

/** What an arrow key has done, for those who do not see it. */
function whereabouts(outline: Polygon): string {
  const [x, y] = lowerLeft(outline);
  return t('survey.editor.whereabouts', {
    left: quantity('length', x),
    front: quantity('length', y),
  });
}

const FONT_PX = 15;

/** The kitchen from above. */
export function AboveEditor(props: AboveProps) {
  const patterns = createUniqueId();
  const kitchen = () => props.survey.kitchen();
  const [guides, setGuides] = createSignal<Guides>([]);
  let svg: SVGSVGElement | undefined;
  const viewport = createViewport(
    kitchen,
    () => svg,
    () => props.shown.is('lengths'),
  );
  const drawn = createMemo(() => inDrawOrder(kitchen().fixtures));
  const ids = createMemo(() => drawn().map((f) => f.id), [], {
    equals: (a, b) => a.length === b.length && a.every((id, i) => id === b[i]),
  });
  const openingIds = () => (kitchen().room.openings ?? []).map(({ id }) => id);
  const inRange = createMemo(() => ovensInRanges(kitchen().fixtures));
  const byId = (id: string) => kitchen().fixtures.find((f) => f.id === id);
  const chosenOutline = () =>
    props.selected ? fixtureOutline(kitchen(), props.selected) : undefined;

  const pointer = new PointerController({
    survey: props.survey,
    selected: () => props.selected,
    select: (id) => {
      props.onSelect(id);
      if (id) svg?.querySelector<SVGGElement>(`g[data-id="${id}"]`)?.focus();
    },
    carry: carryAbove(() => props.shape),
    pan: viewport.pan,
    pxPerCm: viewport.pxPerCm,
    showGuides: setGuides,
  });
  const key = (event: KeyboardEvent, id: string) =>
    onPieceKey(event, id, { ...props, face: 'above' });
  return (
    <>
      <svg
        ref={(element) => (svg = element)}
        class="editor-plan"
        classList={{ 'editor-plan--named': props.shown.is('names') }}
        viewBox={viewport.frame().viewBox}
        role="group"
        aria-label={t('survey.editor.plan')}
        onPointerDown={(e) => {
          viewport.hold(true);
          pointer.down(e, gripUnder(e));
        }}
        onPointerMove={(e) => pointer.move(e)}
        onPointerUp={(e) => {
          pointer.up(e);
          viewport.hold(false);
        }}
        onPointerCancel={(e) => {
          pointer.cancel(e);
          viewport.hold(false);
        }}
        onMouseDown={(e) => e.preventDefault()}
      >
        <MaterialPatterns prefix={patterns} />
        <Floor kitchen={kitchen()} frame={viewport.frame()} />
        <For each={openingIds()}>
          {(id) => (
            <Show when={openingOf(kitchen(), id)}>
              {(opening) => (
                <OpeningPiece
                  kitchen={kitchen()}
                  opening={opening()}
                  frame={viewport.frame()}
                  pxPerCm={viewport.pxPerCm()}
                  selected={props.selected === id}
                  onFocus={() => props.onSelect(id)}
                  onKey={(e) => key(e, id)}
                />
              )}
            </Show>
          )}
        </For>
        <For each={ids()}>
          {(id) => (
            <Show when={byId(id)}>
              {(fixture) => (
                <Piece
                  fixture={fixture()}
                  kitchen={kitchen()}
                  frame={viewport.frame()}
                  patterns={patterns}
                  inRange={inRange().has(id)}
                  selected={props.selected === id}
                  onFocus={() => props.onSelect(id)}
                  onKey={(e) => key(e, id)}
                />
              )}
            </Show>
          )}
        </For>
        <Hanging kitchen={kitchen()} frame={viewport.frame()} />
        <Layers {...props} viewport={viewport} drawn={drawn()} />
        <GuideLines guides={guides()} frame={viewport.frame()} />
      </svg>
      <p class="visually-hidden" role="status">
        {chosenOutline() ? whereabouts(chosenOutline() ?? []) : ''}
      </p>
      <AboveTools shown={props.shown} viewport={viewport} chosen={chosenOutline()} />
    </>
  );
}

/** What lies over the picture: names, lengths or wall knobs, and the handles of what is chosen. */
function Layers(
  props: AboveProps & {
    viewport: ReturnType<typeof createViewport>;
    drawn: readonly Fixture[];
  },
) {
  const { viewport } = props;
  const kitchen = () => props.survey.kitchen();
  const chosen = () => (props.selected ? fixtureOf(kitchen(), props.selected) : undefined);
  const chosenOpening = () => (props.selected ? openingOf(kitchen(), props.selected) : undefined);
  return (
    <>
      <Show when={props.shown.is('names')}>
        <Words
          drawn={props.drawn}
          but={props.selected}
          frame={viewport.frame()}
          fontCm={FONT_PX / viewport.pxPerCm()}
        />
      </Show>
      <Show when={props.shown.is('lengths')}>
        <WallLengths kitchen={kitchen()} frame={viewport.frame()} pxPerCm={viewport.pxPerCm()} />
      </Show>
      <Show when={props.shown.is('walls')}>
        <WallKnobs survey={props.survey} frame={viewport.frame()} pxPerCm={viewport.pxPerCm()} />
      </Show>
      <Show when={drawnOf(chosen())}>
        {(fixture) => (
          <Handles
            fixture={fixture()}
            frame={viewport.frame()}
            pxPerCm={viewport.pxPerCm()}
            shape={props.shape}
            sized={!props.shown.any()}
          />
        )}
      </Show>
      <Show when={chosenOpening()} keyed>
        {(opening) => (
          <OpeningHandles
            kitchen={kitchen()}
            opening={opening}
            frame={viewport.frame()}
            pxPerCm={viewport.pxPerCm()}
            sized={!props.shown.any()}
          />
        )}
      </Show>
    </>
  );
}

/** A fixture that has an outline to pull at. */
function drawnOf(fixture: Fixture | undefined): Fixture | undefined {
  return fixture && outlineOf(fixture) ? fixture : undefined;
}

function AboveTools(props: {
  shown: Shown;
  viewport: ReturnType<typeof createViewport>;
  chosen: Polygon | undefined;
}) {
  const { shown, viewport } = props;
  return (
    <div class="editor-tools" role="group" aria-label={t('survey.editor.look')}>
      <Action
        class="tool"
        label={t('survey.editor.nearer')}
        onPress={() => viewport.zoom(1.4, props.chosen)}
      >
        +
      </Action>
      <Action
        class="tool"
        label={t('survey.editor.farther')}
        onPress={() => viewport.zoom(1 / 1.4, props.chosen)}
      >
        −
      </Action>
      <Action class="tool tool--word" onPress={viewport.seeAll}>
        {t('survey.editor.whole-room')}
      </Action>
      <Toggle pressed={shown.is('lengths')} onPress={() => shown.toggle('lengths')}>
        {t('survey.editor.lengths')}
      </Toggle>
      <Toggle pressed={shown.is('names')} onPress={() => shown.toggle('names')}>
        {t('survey.editor.names')}
      </Toggle>
      <Toggle pressed={shown.is('walls')} onPress={() => shown.toggle('walls')}>
        {t('survey.editor.walls')}
      </Toggle>
    </div>
  );
}
