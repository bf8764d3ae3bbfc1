import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import type { Kitchen } from '../../../../../core/kitchen/index.ts';
import {
  elevationOf,
  roomOutline,
  type Elevation,
  type FrontBox,
} from '../../../../../core/editing/index.ts';
import { t } from '../../../../context/language.ts';
import { MaterialPatterns } from '../../room/materials.tsx';
import type { SurveyController } from '../../survey/controller/survey-controller.ts';
import { quantity } from '../../survey/inputs/quantities.ts';
import { carryFront, nameOf, type Guides } from '../hand/carry.ts';
import { edgeOf, wallName } from '../hand/faces.ts';
import { gripUnder } from '../hand/gesture.ts';
import { Chain, marksAlong } from '../view/lengths.tsx';
import { onPieceKey } from '../hand/piece-keys.ts';
import { PointerController } from '../hand/pointer-controller.ts';
import { onScreenSize } from '../view/viewport.ts';
import { BoxHandles, CM_PER_M, Front, isPullable } from './front-pieces.tsx';

/** Free paper round the wall, cm: for lengths below and handles. */
const MARGIN_CM = { side: 24, above: 12, below: 46 } as const;
const FONT_PX = 13;

type FrontProps = {
  survey: SurveyController;
  wall: number;
  selected: string | undefined;
  lengths: boolean;
  onSelect: (id: string | undefined) => void;
  onOpen: () => void;
};

/** One wall as one stands before it: what hangs and stands there is moved along it and up. */
export function FrontEditor(props: FrontProps) {
  const patterns = createUniqueId();
  let svg: SVGSVGElement | undefined;
  const size = onScreenSize(() => svg);
  const [, setGuides] = createSignal<Guides>([]);
  const kitchen = () => props.survey.kitchen();
  const edge = () => edgeOf(roomOutline(kitchen()), props.wall);
  const seen = createMemo(() => elevationOf(kitchen(), edge()));
  const longCm = () => (seen()?.wall.lengthM ?? 1) * CM_PER_M;
  const highCm = () => (seen()?.heightM ?? 1) * CM_PER_M;
  const pxPerCm = () =>
    Math.min(
      size().widthPx / (longCm() + 2 * MARGIN_CM.side),
      size().heightPx / (highCm() + MARGIN_CM.above + MARGIN_CM.below),
    );
  const cm = (px: number) => px / pxPerCm();
  const boxes = () => [...(seen()?.openings ?? []), ...(seen()?.fronts ?? [])];
  const boxOf = (id: string) => boxes().find((one) => one.id === id);
  const ids = createMemo(() => boxes().map(({ id }) => id), [], {
    equals: (a, b) => a.length === b.length && a.every((id, i) => id === b[i]),
  });
  const chosen = () => (props.selected === undefined ? undefined : boxOf(props.selected));
  const pointer = new PointerController({
    survey: props.survey,
    selected: () => props.selected,
    select: (id) => {
      props.onSelect(id);
      if (id) svg?.querySelector<SVGGElement>(`g[data-id="${id}"]`)?.focus();
    },
    carry: (base, grip, byM) => carryFront(edge())(base, grip, byM),
    pan: () => undefined,
    pxPerCm,
    showGuides: setGuides,
  });
  const spoken = (box: FrontBox): string =>
    t('survey.front.spoken', {
      name: nameOf(kitchen(), box.id),
      left: quantity('length', box.atM),
      from: quantity('length', box.fromM),
      to: quantity('length', box.toM),
    });
  return (
    <>
      <svg
        ref={(element) => (svg = element)}
        class="editor-plan editor-front"
        viewBox={`${-MARGIN_CM.side} ${-MARGIN_CM.above} ${longCm() + 2 * MARGIN_CM.side} ${highCm() + MARGIN_CM.above + MARGIN_CM.below}`}
        role="group"
        aria-label={t('survey.front.label', { wall: wallName(roomOutline(kitchen()), edge()) })}
        onPointerDown={(e) => pointer.down(e, gripUnder(e))}
        onPointerMove={(e) => pointer.move(e)}
        onPointerUp={(e) => pointer.up(e)}
        onPointerCancel={(e) => pointer.cancel(e)}
        onMouseDown={(e) => e.preventDefault()}
      >
        <MaterialPatterns prefix={patterns} />
        <rect class="rm-front-wall" width={longCm()} height={highCm()} aria-hidden="true" />
        <For each={ids()}>
          {(id) => (
            <Show when={boxOf(id)}>
              {(box) => (
                <g
                  class="ed-piece kp-fixture"
                  classList={{ 'kp-fixture--selected': props.selected === id }}
                  role="button"
                  tabindex={0}
                  aria-pressed={props.selected === id}
                  aria-label={spoken(box())}
                  aria-describedby="editor-keys"
                  data-grip={'opening' in box() ? 'opening' : 'fixture'}
                  data-id={id}
                  onFocus={() => props.onSelect(id)}
                  onKeyDown={(e) => onPieceKey(e, id, { ...props, face: props.wall })}
                  transform={`translate(${box().atM * CM_PER_M} ${highCm() - box().toM * CM_PER_M})`}
                >
                  <Front box={box()} patterns={patterns} />
                </g>
              )}
            </Show>
          )}
        </For>
        <path class="rm-front-floor" d={`M-14 ${highCm()}h${longCm() + 28}`} aria-hidden="true" />
        <Show when={props.lengths && seen()}>
          {(now) => <FrontLengths kitchen={kitchen()} seen={now()} cm={cm} />}
        </Show>
        <Show when={chosen()}>
          {(box) => (
            <BoxHandles
              box={box()}
              pullable={isPullable(kitchen().fixtures, box().id)}
              highCm={highCm()}
              cm={cm}
            />
          )}
        </Show>
      </svg>
      <p class="visually-hidden" role="status">
        <Show when={chosen()}>{(box) => spoken(box())}</Show>
      </p>
    </>
  );
}

/** Lengths below the wall, and its height. */
function FrontLengths(props: { kitchen: Kitchen; seen: Elevation; cm: (px: number) => number }) {
  const longCm = () => props.seen.wall.lengthM * CM_PER_M;
  const highCm = () => props.seen.heightM * CM_PER_M;
  const marks = () =>
    marksAlong(props.kitchen, props.seen.wall).map((at) => at / props.seen.wall.lengthM);
  const row = (px: number) => ({
    from: [0, highCm() + props.cm(px)] as const,
    to: [longCm(), highCm() + props.cm(px)] as const,
    lengthM: props.seen.wall.lengthM,
    cm: props.cm,
    fontPx: FONT_PX,
  });
  return (
    <g aria-hidden="true">
      <Show when={marks().length > 2}>
        <Chain {...row(16)} marks={marks()} />
      </Show>
      <Chain {...row(marks().length > 2 ? 36 : 16)} marks={[0, 1]} />
      <Chain
        from={[-props.cm(14), highCm()]}
        to={[-props.cm(14), 0]}
        marks={[0, 1]}
        lengthM={props.seen.heightM}
        cm={props.cm}
        fontPx={FONT_PX}
      />
    </g>
  );
}
