import { createSignal, For, Show } from 'solid-js';
import type { ChosenQuestion } from '../../../../core/custom/index.ts';
import type { AnswerChange } from '../../../../core/plan/index.ts';
import { t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';

/** What each known answer would make of the plan, worked out once somebody wants to know. */
export function AnswerChanges(props: {
  question: ChosenQuestion;
  changes: (question: ChosenQuestion) => Promise<readonly AnswerChange[]>;
}) {
  const [found, setFound] = createSignal<readonly AnswerChange[]>();
  return (
    <Show
      when={found()}
      fallback={
        <Action
          class="word-button"
          name="what-it-changes"
          onPress={() => void props.changes(props.question).then(setFound)}
        >
          {t('plan-page.questions.changes')}
        </Action>
      }
    >
      {(changes) => (
        <ul class="question-changes" aria-live="polite">
          <For each={changes()}>
            {({ answer, finishS, kettles }) => (
              <li data-answer={answer.method}>
                {t('plan-page.questions.change', { answer: answer.text, finishS, kettles })}
              </li>
            )}
          </For>
        </ul>
      )}
    </Show>
  );
}
