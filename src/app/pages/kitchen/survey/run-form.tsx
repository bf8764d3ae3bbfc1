import { createSignal, For, Show } from 'solid-js';
import { counterRun, type RunPiece } from '../../../../core/editing/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Pick } from './fields/pick.tsx';
import type { SurveyController } from './survey-controller.ts';
import { Typed } from './fields/typed.tsx';

const PIECE_M = { least: 0.2, most: 20 } as const;
const FIRST_M = 2.4;
const MOST_PIECES = 6;

/** A counter along the walls, said as one walks it: 2.4 m, turn right, 1.8 m. */
export function RunForm(props: {
  survey: SurveyController;
  onDone: (id: string | undefined) => void;
}) {
  const [pieces, setPieces] = createSignal<readonly RunPiece[]>([
    { lengthM: FIRST_M, turn: 'right' },
    { lengthM: FIRST_M, turn: 'straight' },
  ]);
  const set = (index: number, change: Partial<RunPiece>) =>
    setPieces((old) => old.map((piece, i) => (i === index ? { ...piece, ...change } : piece)));
  const [crossed, setCrossed] = createSignal(false);
  const draw = (): void => {
    const { kitchen, id } = counterRun(props.survey.kitchen(), pieces());
    setCrossed(id === '');
    if (id !== '' && !props.survey.change(kitchen, 'Counter along the walls drawn'))
      props.onDone(id);
  };
  return (
    <section class="run-form" aria-label="Counter along the walls">
      <header class="sheet-head">
        <h2>Counter along the walls</h2>
        <Action class="button button--plain" onPress={() => props.onDone(undefined)}>
          Leave it
        </Action>
      </header>
      <p class="tell">
        Begin in the far left corner and walk with the wall at your left hand. In a corner of the
        room you turn right.
      </p>
      <ol class="run-pieces">
        <For each={pieces().map((_, i) => i)}>
          {(i) => (
            <li>
              <Typed
                label={`Piece ${i + 1}`}
                quantity="length"
                value={pieces()[i]?.lengthM}
                allowed={PIECE_M}
                onValue={(lengthM) => {
                  set(i, { lengthM });
                }}
              />
              <Show when={i < pieces().length - 1}>
                <Pick
                  label="then"
                  value={pieces()[i]?.turn}
                  choices={[
                    { id: 'left', name: 'turn left' },
                    { id: 'straight', name: 'straight on' },
                    { id: 'right', name: 'turn right' },
                  ]}
                  onPick={(turn) => set(i, { turn })}
                />
              </Show>
            </li>
          )}
        </For>
      </ol>
      <Show when={crossed()}>
        <p class="trap" role="alert">
          Such a counter would lie over itself. Make the pieces longer, or turn the other way.
        </p>
      </Show>
      <div class="button-row">
        <Action
          class="button button--plain"
          disabled={pieces().length >= MOST_PIECES}
          onPress={() =>
            setPieces((old) => [
              ...old.map((p, i) => (i === old.length - 1 ? { ...p, turn: 'right' as const } : p)),
              { lengthM: FIRST_M, turn: 'straight' as const },
            ])
          }
        >
          One more piece
        </Action>
        <Action
          class="button button--plain"
          disabled={pieces().length <= 1}
          onPress={() => setPieces((old) => old.slice(0, -1))}
        >
          One piece less
        </Action>
        <Action class="button button--ember" onPress={draw}>
          Draw it
        </Action>
      </div>
    </section>
  );
}
