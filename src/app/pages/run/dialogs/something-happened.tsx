import { say } from '../../../context/language.ts';
import { createSignal, For, Show } from 'solid-js';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** Faults, doubts, skips and notes: everything that is not the plan, one tap away. */
export function SomethingHappened(props: {
  view: RunView;
  step: StepView | undefined;
  send: (request: Request) => void;
  onClose: () => void;
}) {
  const [part, setPart] = createSignal<'menu' | 'doubt' | 'skip' | 'note'>('menu');
  const [text, setText] = createSignal('');
  const done = (request: Request) => {
    props.send(request);
    props.onClose();
  };
  return (
    <Sheet label="Something happened" onClose={props.onClose}>
      <h2>Something happened</h2>
      <Show when={part() === 'menu'}>
        <div class="fault-list">
          <For each={props.view.plan.faults}>
            {(fault) => (
              <Action
                class="button"
                onPress={() =>
                  done({
                    kind: 'report-fault',
                    fault: fault.kind,
                    ...(props.step ? { step: props.step.step.id } : {}),
                  })
                }
              >
                {say(fault.name)}
              </Action>
            )}
          </For>
        </div>
        <div class="button-row">
          <Action class="button button--plain" onPress={() => setPart('doubt')}>
            A fixture was used or touched
          </Action>
          <Show when={props.step}>
            <Action class="button button--plain" onPress={() => setPart('skip')}>
              Skip this step
            </Action>
          </Show>
          <Action class="button button--plain" onPress={() => setPart('note')}>
            Write a note
          </Action>
          <Action class="button button--plain" onPress={props.onClose}>
            Back
          </Action>
        </div>
      </Show>
      <Show when={part() !== 'menu'}>
        <label class="field">
          <span>
            {part() === 'skip'
              ? 'Why is this step skipped? It goes into the record.'
              : 'What happened?'}
          </span>
          <input
            value={text()}
            onInput={(event) => setText(event.currentTarget.value)}
            maxLength={300}
          />
        </label>
        <Show when={part() === 'doubt'}>
          <p class="quiet">Its 24-hour rest starts again, and what came after is done again.</p>
          <div class="fault-list">
            <For each={props.view.plan.methods}>
              {(method) => (
                <Action
                  class="button"
                  disabled={text().trim() === ''}
                  onPress={() =>
                    done({ kind: 'report-recheck', fixture: method.fixture, text: text().trim() })
                  }
                >
                  {props.view.plan.kitchen.fixtures.find((f) => f.id === method.fixture)?.name}
                </Action>
              )}
            </For>
          </div>
        </Show>
        <div class="button-row">
          <Show when={part() === 'skip' && props.step}>
            {(step) => (
              <Action
                class="button button--ember"
                disabled={text().trim() === ''}
                onPress={() =>
                  done({ kind: 'skip-step', step: step().step.id, reason: text().trim() })
                }
              >
                Skip it
              </Action>
            )}
          </Show>
          <Show when={part() === 'note'}>
            <Action
              class="button button--ember"
              disabled={text().trim() === ''}
              onPress={() => done({ kind: 'note', text: text().trim() })}
            >
              Keep the note
            </Action>
          </Show>
          <Action class="button button--plain" onPress={() => setPart('menu')}>
            Back
          </Action>
        </div>
      </Show>
    </Sheet>
  );
}
