import { Index, Show } from 'solid-js';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { countdownText } from '../../../labels/time.ts';
import { burnerName, concurrentBurners, concurrentKettles } from './concurrent-steps.ts';
import { leadTimer, mainAction } from './main-action.ts';

/** What the other burner does, in a word or two. */
function burnerState(step: StepView): string {
  switch (step.step.stages[step.stage]?.id) {
    case 'light':
      return 'to be lit';
    case 'warm-up':
      return 'warms up';
    case 'hold':
      return 'glows, unbroken';
    default:
      return 'to be turned off';
  }
}

/** The burners that are heated together with this one: their clock, and their own word when it is due. */
export function BurnersTogether(props: {
  view: RunView;
  step: StepView;
  send: (request: Request) => void;
}) {
  const others = () => concurrentBurners(props.view, props.step);
  const word = (step: StepView) => {
    const action = mainAction(props.view, step);
    return action.kind === 'press' ? action : undefined;
  };
  return (
    <Show when={others().length > 0}>
      <ul class="together" aria-label="Burners together with this one">
        <Index each={others()}>
          {(other) => (
            <li>
              <span class="together-name">{burnerName(props.view, other())}</span>
              <span class="together-state">{burnerState(other())}</span>
              <Show when={leadTimer(other())}>
                {(clock) => <span class="together-left">{countdownText(clock().leftS)}</span>}
              </Show>
              <Show when={word(other())}>
                {(action) => (
                  <Action class="button" onPress={() => props.send(action().request)}>
                    {burnerName(props.view, other())}: {action().label.toLowerCase()}
                  </Action>
                )}
              </Show>
            </li>
          )}
        </Index>
      </ul>
    </Show>
  );
}

/** The next kettle, already on the fire on its own circuit, while this one is poured. */
export function ConcurrentKettles(props: { view: RunView; step: StepView }) {
  const kettles = () => concurrentKettles(props.view, props.step);
  return (
    <Show when={kettles().length > 0}>
      <ul class="together" aria-label="Kettles on the fire">
        <Index each={kettles()}>
          {(kettle) => (
            <li>
              <span class="together-name">{kettle().title}</span>
              <span class="together-left">
                {kettle().leftS === undefined
                  ? 'to be switched on'
                  : (kettle().leftS ?? 0) > 0
                    ? countdownText(kettle().leftS ?? 0)
                    : 'should boil'}
              </span>
            </li>
          )}
        </Index>
      </ul>
    </Show>
  );
}
