import { say } from '../../../context/language.ts';
import { Index, Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { lengthInWords } from '../../../labels/time.ts';
import { ClockQuestion } from './clock-question.tsx';

/** After an interruption: plain questions, answered by the person; nothing resumes by itself. */
export function Review(props: { view: RunView; nowMs: number; send: (request: Request) => void }) {
  return (
    <section class="stage review" aria-label="What happened meanwhile">
      <h1 class="stage-sentence">Here is where you were</h1>
      <Show when={props.view.askClock}>
        <ClockQuestion nowMs={props.nowMs} send={props.send} />
      </Show>
      <Index each={props.view.review}>
        {(question) => (
          <div class="review-question">
            <p class="quiet">
              {stepTitle(props.view, question().step)} The tablet was away for{' '}
              {lengthInWords(question().gapS)}.
            </p>
            <p class="review-ask">{question().ask}</p>
            <div class="button-row">
              <Action
                class="button button--ember"
                onPress={() => answer(props.send, question().id, 'went-on')}
              >
                Yes, I saw it
              </Action>
              <Action class="button" onPress={() => answer(props.send, question().id, 'broke-off')}>
                No, it stopped
              </Action>
              <Action
                class="button button--plain"
                onPress={() => answer(props.send, question().id, 'unknown')}
              >
                Nobody saw
              </Action>
            </div>
          </div>
        )}
      </Index>
      <Show when={!props.view.askClock && props.view.review.length === 0}>
        <div class="main-bar">
          <Action class="main-action" onPress={() => props.send({ kind: 'resume' })}>
            Go on
          </Action>
        </div>
      </Show>
    </section>
  );
}

function stepTitle(view: RunView, stepId: string): string {
  const title = view.steps.find((s) => s.step.id === stepId)?.step.title;
  const text = title ? say(title) : '';
  return text.endsWith('.') ? text : `${text}.`;
}

function answer(
  send: (request: Request) => void,
  question: string,
  word: 'went-on' | 'broke-off' | 'unknown',
): void {
  send({ kind: 'answer-review', question, answer: word });
}
