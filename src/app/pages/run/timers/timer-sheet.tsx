import { createSignal, Show } from 'solid-js';
import type { TimerView, Request, RunView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { dayAndTime, lengthInWords } from '../../../labels/time.ts';
import { localDateTime } from './local-time.ts';

/** A wait, seen close: until when, and what a person can say about it. */
export function TimerSheet(props: {
  view: RunView;
  clock: TimerView;
  nowMs: number;
  send: (request: Request) => void;
  onClose: () => void;
}) {
  const [part, setPart] = createSignal<'look' | 'earlier' | 'used'>('look');
  const isRest = () =>
    props.view.steps.find((one) => one.step.id === props.clock.step)?.step.kind === 'rest';
  const done = (request: Request) => {
    props.send(request);
    props.onClose();
  };
  return (
    <Sheet label={props.clock.label} onClose={props.onClose}>
      <h2>{props.clock.label}</h2>
      <p class="clock-sheet-until">
        Over {dayAndTime(props.nowMs + props.clock.leftS * 1000, props.nowMs)}, in{' '}
        {lengthInWords(Math.ceil(props.clock.leftS / 60) * 60)}.
      </p>
      <Show when={part() === 'look'}>
        <div class="button-row">
          <Show when={isRest()}>
            <Action class="button" onPress={() => setPart('earlier')}>
              It was last hot earlier
            </Action>
            <Show when={props.clock.fixture}>
              <Action class="button" onPress={() => setPart('used')}>
                It was used
              </Action>
            </Show>
          </Show>
          <Action class="button button--plain" onPress={props.onClose}>
            Back
          </Action>
        </div>
      </Show>
      <Show when={part() === 'earlier'}>
        <LastHot {...props} onDone={done} onBack={() => setPart('look')} />
      </Show>
      <Show when={part() === 'used'}>
        <Used {...props} onDone={done} onBack={() => setPart('look')} />
      </Show>
    </Sheet>
  );
}

type PartProps = {
  readonly clock: TimerView;
  readonly nowMs: number;
  readonly onDone: (request: Request) => void;
  readonly onBack: () => void;
};

/** "It was last hot at …": the rest counts from then, on a person's word with how they know. */
function LastHot(props: PartProps) {
  const beganMs = () => props.nowMs - props.clock.atLeastS * 1000;
  const [at, setAt] = createSignal(localDateTime(beganMs()));
  const [reason, setReason] = createSignal('');
  const sinceMs = () => new Date(at()).getTime();
  const earlier = () => Number.isFinite(sinceMs()) && sinceMs() < beganMs();
  return (
    <>
      <label class="field">
        <span>It was last hot at</span>
        <input
          type="datetime-local"
          value={at()}
          max={localDateTime(beganMs())}
          onInput={(event) => setAt(event.currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>How do you know? It goes into the record.</span>
        <input
          value={reason()}
          onInput={(event) => setReason(event.currentTarget.value)}
          maxLength={300}
        />
      </label>
      <p class="quiet">
        Only when you are sure. Hot cleaning counts as hot use. In doubt leave the rest as it is.
      </p>
      <div class="button-row">
        <Action
          class="button button--ember"
          disabled={reason().trim() === '' || !earlier()}
          onPress={() =>
            props.onDone({
              kind: 'correct-time',
              timer: props.clock.id,
              sinceWallMs: sinceMs(),
              reason: reason().trim(),
            })
          }
        >
          Count from then
        </Action>
        <Action class="button button--plain" onPress={props.onBack}>
          Back
        </Action>
      </div>
    </>
  );
}

/** Used during its rest, or a doubt of it: the rest begins again. */
function Used(props: PartProps) {
  const [text, setText] = createSignal('');
  return (
    <>
      <label class="field">
        <span>
          What happened? Its 24-hour rest starts again, and what came after is done again.
        </span>
        <input
          value={text()}
          onInput={(event) => setText(event.currentTarget.value)}
          maxLength={300}
        />
      </label>
      <div class="button-row">
        <Action
          class="button button--ember"
          disabled={text().trim() === ''}
          onPress={() =>
            props.onDone({
              kind: 'report-recheck',
              fixture: props.clock.fixture ?? '',
              text: text().trim(),
            })
          }
        >
          Begin the rest again
        </Action>
        <Action class="button button--plain" onPress={props.onBack}>
          Back
        </Action>
      </div>
    </>
  );
}
