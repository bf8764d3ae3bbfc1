import { createSignal, For, Show } from 'solid-js';
import { counterRun, type RunPiece } from '../../../../../core/editing/index.ts';
import type { Range } from '../../../../../core/kitchen/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { t, translator } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import type { SurveyController } from '../controller/survey-controller.ts';
import { Pick } from '../inputs/pick.tsx';
import { Typed } from '../inputs/typed.tsx';

/** A piece of wall that can be typed: slips in the unit are caught here, m. */
const PIECE_M: Range = { least: 0.2, most: 20 };
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
    const { kitchen, id } = counterRun(props.survey.kitchen(), pieces(), translator());
    setCrossed(id === '');
    if (id !== '' && !props.survey.change(kitchen, message('survey.done.run-drawn')))
      props.onDone(id);
  };
  return (
    <section class="run-form" aria-label={t('survey.run.heading')}>
      <header class="sheet-head">
        <h2>{t('survey.run.heading')}</h2>
        <Action class="button button--plain" onPress={() => props.onDone(undefined)}>
          {t('survey.run.leave')}
        </Action>
      </header>
      <p class="tell">{t('survey.run.note')}</p>
      <ol class="run-pieces">
        <For each={pieces().map((_, i) => i)}>
          {(i) => (
            <li>
              <Typed
                label={t('survey.run.piece', { number: i + 1 })}
                quantity="length"
                value={pieces()[i]?.lengthM}
                allowed={PIECE_M}
                onValue={(lengthM) => {
                  set(i, { lengthM });
                }}
              />
              <Show when={i < pieces().length - 1}>
                <Pick
                  label={t('survey.run.then')}
                  value={pieces()[i]?.turn}
                  choices={[
                    { id: 'left', name: t('survey.turn.left') },
                    { id: 'straight', name: t('survey.turn.straight') },
                    { id: 'right', name: t('survey.turn.right') },
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
          {t('survey.run.crosses')}
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
          {t('survey.run.more')}
        </Action>
        <Action
          class="button button--plain"
          disabled={pieces().length <= 1}
          onPress={() => setPieces((old) => old.slice(0, -1))}
        >
          {t('survey.run.less')}
        </Action>
        <Action class="button button--ember" onPress={draw}>
          {t('survey.run.draw')}
        </Action>
      </div>
    </section>
  );
}
