import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import { lowerLeft, type Polygon } from '../../../../core/geometry/index.ts';
import type { Fixture } from '../../../../core/kitchen/index.ts';
import { moveFixture, removeFixture } from '../../../../core/editing/index.ts';
import { message } from '../../../../core/messages/index.ts';
import { t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { inDrawOrder } from '../../../pictures/kitchen-plan.tsx';
import { PhasePatterns } from '../../../pictures/phase-patterns.tsx';
import type { SurveyController } from '../survey/controller/survey-controller.ts';
import { quantity } from '../survey/inputs/quantities.ts';
import { fixtureOutline, PointerController, type Guides } from './pointer-controller.ts';
import { GuideLines, Handles } from './handles.tsx';
import { Floor, Piece, Words } from './plan-pieces.tsx';
import { actionOfKey } from './keys.ts';
import { createViewport } from './viewport.ts';

type EditorProps = {
  survey: SurveyController;
  selected: string | undefined;
  /** Corners one by one instead of length and depth. */
  shape: boolean;
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

/** The kitchen from above, to be shaped by finger, mouse or keyboard. */
export function PlanEditor(props: EditorProps) {
  const patterns = createUniqueId();
  const kitchen = () => props.survey.kitchen();
  const [guides, setGuides] = createSignal<Guides>([]);
  let svg: SVGSVGElement | undefined;
  const viewport = createViewport(kitchen, () => svg);
  const drawn = createMemo(() => inDrawOrder(kitchen().fixtures));
  const ids = createMemo(() => drawn().map((f) => f.id), [], {
    equals: (a, b) => a.length === b.length && a.every((id, i) => id === b[i]),
  });
  const byId = (id: string) => kitchen().fixtures.find((f) => f.id === id);
  const chosen = () => (props.selected ? byId(props.selected) : undefined);
  const chosenOutline = () =>
    props.selected ? fixtureOutline(kitchen(), props.selected) : undefined;

  const pointer = new PointerController({
    survey: props.survey,
    selected: () => props.selected,
    select: (id) => {
      props.onSelect(id);
      if (id) svg?.querySelector<SVGGElement>(`g[data-id="${id}"]`)?.focus();
    },
    shape: () => props.shape,
    pan: viewport.pan,
    pxPerCm: viewport.pxPerCm,
    showGuides: setGuides,
  });
  return (
    <div class="editor">
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
        <PhasePatterns prefix={patterns} />
        <Floor kitchen={kitchen()} frame={viewport.frame()} />
        <For each={ids()}>
          {(id) => (
            <Show when={byId(id)}>
              {(fixture) => (
                <Piece
                  fixture={fixture()}
                  frame={viewport.frame()}
                  patterns={patterns}
                  selected={props.selected === id}
                  onFocus={() => props.onSelect(id)}
                  onKey={(e) => onKey(e, fixture(), props)}
                />
              )}
            </Show>
          )}
        </For>
        <Words
          drawn={drawn()}
          but={props.selected}
          frame={viewport.frame()}
          fontCm={FONT_PX / viewport.pxPerCm()}
        />
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
        <GuideLines guides={guides()} frame={viewport.frame()} />
      </svg>
      <p class="visually-hidden" role="status">
        {chosenOutline() ? whereabouts(chosenOutline() ?? []) : ''}
      </p>
      <div class="editor-tools" role="group" aria-label={t('survey.editor.look')}>
        <Action
          class="tool"
          label={t('survey.editor.nearer')}
          onPress={() => viewport.zoom(1.4, chosenOutline())}
        >
          +
        </Action>
        <Action
          class="tool"
          label={t('survey.editor.farther')}
          onPress={() => viewport.zoom(1 / 1.4, chosenOutline())}
        >
          −
        </Action>
        <Action class="tool tool--word" onPress={viewport.seeAll}>
          {t('survey.editor.whole-room')}
        </Action>
      </div>
    </div>
  );
}

/** The grip written on what lies under the finger, or the floor. */
function gripUnder(event: PointerEvent) {
  const at = (event.target as Element).closest<SVGElement>('[data-grip]');
  const id = at?.dataset['id'] ?? '';
  const n = Number(at?.dataset['n'] ?? 0);
  const kind = at?.dataset['grip'];
  if (kind === 'corner') return { kind, id, corner: n } as const;
  if (kind === 'edge') return { kind, id, edge: n } as const;
  if (kind === 'fixture') return { kind, id } as const;
  return { kind: 'floor' } as const;
}

function onKey(event: KeyboardEvent, fixture: Fixture, props: EditorProps): void {
  const action = actionOfKey({
    key: event.key,
    shift: event.shiftKey,
    ctrl: event.ctrlKey || event.metaKey,
  });
  if (!action) return;
  event.preventDefault();
  const { survey } = props;
  const { id, name } = fixture;
  const outline = fixtureOutline(survey.kitchen(), id);
  if (action.do === 'leave') props.onSelect(undefined);
  else if (action.do === 'open') props.onOpen();
  else if (action.do === 'remove') {
    const row = (event.currentTarget as Element).nextElementSibling;
    if (
      survey.change(removeFixture(survey.kitchen(), id), message('survey.done.taken-out', { name }))
    )
      return;
    props.onSelect(undefined);
    if (row instanceof SVGElement && row.tabIndex === 0) row.focus();
  } else if (action.do === 'move' && outline) {
    const [x, y] = lowerLeft(outline);
    const to = [x + action.dxM, y + action.dyM] as const;
    survey.change(
      moveFixture(survey.kitchen(), id, to),
      message('survey.done.moved', { fixture: name }),
      `keys-${id}`,
    );
  }
}
