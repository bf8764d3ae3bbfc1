import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import { lowerLeft, type Polygon } from '../../../../core/geometry/index.ts';
import { openingOf, roomOutline } from '../../../../core/editing/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { inDrawOrder } from '../../../pictures/kitchen-plan.tsx';
import { MaterialPatterns } from '../../../pictures/room/materials.tsx';
import { ovensInRanges } from '../../../pictures/room/room-picture.tsx';
import type { SurveyController } from '../survey/controller/survey-controller.ts';
import { Toggle } from '../survey/inputs/pick.tsx';
import { quantity } from '../survey/inputs/quantities.ts';
import { carryAbove, fixtureOutline, type Guides } from './carry.ts';
import { edgeOf, wallName, type Face } from './faces.ts';
import { FrontEditor } from './front/front-editor.tsx';
import { gripUnder } from './gesture.ts';
import { GuideLines, Handles } from './handles.tsx';
import { WallLengths } from './lengths.tsx';
import { onPieceKey } from './piece-keys.ts';
import { Floor, Hanging, Piece, Words } from './plan-pieces.tsx';
import { PointerController } from './pointer-controller.ts';
import { createViewport } from './viewport.ts';
import { OpeningHandles, OpeningPiece, WallKnobs } from './wall-handles.tsx';

type EditorProps = {
  survey: SurveyController;
  selected: string | undefined;
  /** Corners one by one instead of length and depth. */
  shape: boolean;
  face: Face;
  onFace: (face: Face) => void;
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

/** What is shown in the picture besides the kitchen: one at a time, so that nothing lies over another. */
type Layer = 'lengths' | 'names' | 'walls';

function createShown() {
  const [layer, setLayer] = createSignal<Layer>();
  return {
    is: (one: Layer) => layer() === one,
    toggle: (one: Layer) => setLayer(layer() === one ? undefined : one),
  };
}
type Shown = ReturnType<typeof createShown>;

/** The kitchen from above or one wall from the front, to be shaped by finger, mouse or keyboard. */
export function PlanEditor(props: EditorProps) {
  const shown = createShown();
  const outline = () => roomOutline(props.survey.kitchen());
  const wall = () => (props.face === 'above' ? undefined : props.face % outline().length);
  return (
    <div class="editor">
      <div class="editor-faces" role="group" aria-label={t('survey.face')}>
        <Toggle pressed={props.face === 'above'} onPress={() => props.onFace('above')}>
          {t('survey.face.above')}
        </Toggle>
        <For each={outline().map((_, i) => i)}>
          {(i) => (
            <Toggle pressed={wall() === i} onPress={() => props.onFace(i)}>
              {say(wallName(outline(), edgeOf(outline(), i)))}
            </Toggle>
          )}
        </For>
      </div>
      <p id="editor-keys" class="visually-hidden">
        {t('survey.editor.keys')}
      </p>
      <Show when={wall() !== undefined} fallback={<AboveEditor {...props} shown={shown} />}>
        <FrontEditor {...props} wall={wall() ?? 0} lengths={shown.is('lengths')} />
        <div class="editor-tools" role="group" aria-label={t('survey.editor.look')}>
          <Toggle pressed={shown.is('lengths')} onPress={() => shown.toggle('lengths')}>
            {t('survey.editor.lengths')}
          </Toggle>
        </div>
      </Show>
    </div>
  );
}

function AboveEditor(props: EditorProps & { shown: Shown }) {
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
  const chosen = () => (props.selected ? byId(props.selected) : undefined);
  const chosenOutline = () =>
    props.selected ? fixtureOutline(kitchen(), props.selected) : undefined;
  const chosenOpening = () => (props.selected ? openingOf(kitchen(), props.selected) : undefined);

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
  const key = (event: KeyboardEvent, id: string) => onPieceKey(event, id, props);
  return (
    <>
      <svg
        ref={(element) => (svg = element)}
        class="editor-plan"
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
        <Show when={props.shown.is('names')}>
          <Words
            drawn={drawn()}
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
        <Show when={chosenOutline() && chosen()}>
          {(fixture) => (
            <Handles
              fixture={fixture()}
              frame={viewport.frame()}
              pxPerCm={viewport.pxPerCm()}
              shape={props.shape}
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
            />
          )}
        </Show>
        <GuideLines guides={guides()} frame={viewport.frame()} />
      </svg>
      <p class="visually-hidden" role="status">
        {chosenOutline() ? whereabouts(chosenOutline() ?? []) : ''}
      </p>
      <AboveTools shown={props.shown} viewport={viewport} chosen={chosenOutline()} />
    </>
  );
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
