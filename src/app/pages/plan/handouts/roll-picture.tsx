import { For } from 'solid-js';
import type { RollDrawing, Stretch } from '../../../../core/covering/index.ts';
import type { Rect } from '../../../../core/cutting/index.ts';
import { unfenced } from '../../../../core/messages/index.ts';
import { t, translator } from '../../../context/language.ts';

const CM_PER_M = 100;
/** Below this two places on a roll are one, m. */
const SAME_M = 1e-6;
/** Round the drawing, its share of the length that is drawn. */
const MARGIN_SHARE = 0.006;
/** Letters, their share of the length that is drawn: 2.7 mm on a page. */
const LETTER_SHARE = 0.0145;
/** A size is written into a piece this many letters high, and as wide as its words: one is about this share of a letter. */
const SIZE_ROOM = { high: 3.4, eachWide: 0.52 } as const;
/** A cut's number stands this far along it, so that two that begin at one corner do not meet. */
const NUMBER_AT = 0.28;

/** A stretch of a roll to scale, its length to the right; pieces and cuts by their numbers in the lists under it. */
export function RollPicture(props: {
  drawing: RollDrawing;
  stretch: Stretch;
  /** What the whole width of the page shows, m: all stretches of a handout have one scale. */
  fullM: number;
}) {
  const fromM = () => props.stretch.fromM;
  const lengthM = () => props.stretch.toM - fromM();
  const letter = () => props.fullM * CM_PER_M * LETTER_SHARE;
  const margin = () => props.fullM * CM_PER_M * MARGIN_SHARE;
  const along = (yM: number) => (yM - fromM()) * CM_PER_M;
  const across = (xM: number) => xM * CM_PER_M;
  const lies = (yM: number) => yM > fromM() - SAME_M && yM < props.stretch.toM + SAME_M;
  const pieces = () =>
    props.drawing.pieces
      .map((piece, at) => ({ ...piece, number: at + 1 }))
      .filter(({ at }) => lies(at.yM + at.lengthM / 2));
  const lines = () =>
    props.drawing.lines.filter(
      ({ from, to }) => lies((from[1] + to[1]) / 2) && to[1] > fromM() + SAME_M,
    );
  const size = ({ widthM, lengthM: alongM }: Rect) => {
    const { format } = translator();
    return `${format.tape(alongM, { isFirst: true })} × ${format.tape(widthM)}`;
  };
  const sayIt = () =>
    t('handouts.covers.picture', {
      widthM: props.drawing.widthM,
      fromM: fromM(),
      toM: props.stretch.toM,
    });
  return (
    <svg
      class="roll-picture"
      role="img"
      aria-label={sayIt()}
      viewBox={`${-margin()} ${-margin()} ${lengthM() * CM_PER_M + 2 * margin()} ${across(props.drawing.widthM) + 2 * margin()}`}
      style={{ width: `${(100 * lengthM()) / props.fullM}%` }}
      font-size={String(letter())}
      text-anchor="middle"
    >
      <rect class="roll-sheet" width={lengthM() * CM_PER_M} height={across(props.drawing.widthM)} />
      <For each={pieces()}>
        {({ at, cutOuts, number }) => {
          const middle = [along(at.yM + at.lengthM / 2), across(at.xM + at.widthM / 2)] as const;
          const isRoomy =
            at.lengthM * CM_PER_M > unfenced(size(at)).length * SIZE_ROOM.eachWide * letter() &&
            at.widthM * CM_PER_M > SIZE_ROOM.high * letter();
          return (
            <g>
              <rect
                class="roll-piece"
                x={along(at.yM)}
                y={across(at.xM)}
                width={at.lengthM * CM_PER_M}
                height={at.widthM * CM_PER_M}
              />
              <For each={cutOuts}>
                {(hole) => (
                  <rect
                    class="roll-hole"
                    x={along(hole.yM)}
                    y={across(hole.xM)}
                    width={hole.lengthM * CM_PER_M}
                    height={hole.widthM * CM_PER_M}
                  />
                )}
              </For>
              <text
                class="roll-number"
                x={middle[0]}
                y={middle[1] + (isRoomy ? -0.1 : 0.35) * letter()}
              >
                {number}
              </text>
              {isRoomy && (
                <text x={middle[0]} y={middle[1] + 1.2 * letter()}>
                  {size(at)}
                </text>
              )}
            </g>
          );
        }}
      </For>
      <For each={lines()}>
        {({ number, from, to }) => {
          const x = along(from[1] + (to[1] - from[1]) * NUMBER_AT);
          const y = across(from[0] + (to[0] - from[0]) * NUMBER_AT);
          return (
            <g>
              <line
                class="roll-cut"
                x1={along(from[1])}
                y1={across(from[0])}
                x2={along(to[1])}
                y2={across(to[0])}
              />
              <circle class="roll-cut-mark" cx={x} cy={y} r={0.78 * letter()} />
              <text x={x} y={y + 0.34 * letter()} font-size={String(0.92 * letter())}>
                {number}
              </text>
            </g>
          );
        }}
      </For>
    </svg>
  );
}
