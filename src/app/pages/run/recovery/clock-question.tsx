import { createSignal, Show } from 'solid-js';
import type { Request } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { timeOfDay } from '../../../labels/time.ts';
import { localDateTime } from '../timers/local-time.ts';

/** "Is 21:40 the right time now?": the one question that narrows what a sleep left open. */
export function ClockQuestion(props: { nowMs: number; send: (request: Request) => void }) {
  const [wrong, setWrong] = createSignal(false);
  const [actual, setActual] = createSignal(localDateTime(props.nowMs));
  const correct = () => {
    const actualWallMs = new Date(actual()).getTime();
    if (Number.isFinite(actualWallMs))
      props.send({ kind: 'answer-clock', right: false, actualWallMs });
  };
  return (
    <div class="review-question clock-question" role="group" aria-label="The clock">
      <Show
        when={!wrong()}
        fallback={
          <>
            <label class="field">
              <span>What time is it really?</span>
              <input
                type="datetime-local"
                value={actual()}
                onInput={(event) => setActual(event.currentTarget.value)}
              />
            </label>
            <div class="button-row">
              <Action class="button button--ember" onPress={correct}>
                This is the right time
              </Action>
              <Action class="button button--plain" onPress={() => setWrong(false)}>
                Back
              </Action>
            </div>
          </>
        }
      >
        <p class="review-ask">Is {timeOfDay(props.nowMs)} the right time now?</p>
        <div class="button-row">
          <Action
            class="button button--ember"
            onPress={() => props.send({ kind: 'answer-clock', right: true })}
          >
            Yes, it is {timeOfDay(props.nowMs)}
          </Action>
          <Action class="button" onPress={() => setWrong(true)}>
            No, it is not
          </Action>
        </div>
        <p class="quiet">
          The tablet slept or its clock was changed. Waits count the missing time only after you say
          so.
        </p>
      </Show>
    </div>
  );
}
