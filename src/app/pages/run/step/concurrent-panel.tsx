import { Index, Show } from 'solid-js';
import { message, type Message } from '../../../../core/messages/index.ts';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { burnerName, concurrentBurners, concurrentKettles } from './concurrent-steps.ts';
import { leadTimer, mainAction } from './main-action.ts';

/** What the other burner does, in a word or two. */
function burnerState(step: StepView): Message {
  switch (step.step.stages[step.stage]?.role) {
    case 'light':
      return message('run.burners.light');
    case 'warm-up':
      return message('run.burners.warm-up');
    case 'hold':
      return message('run.burners.hold');
    default:
      return message('run.burners.off');
  }
}

/** The burners that are heated together with this one: their timer, and their own word when it is due. */
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
      <ul class="together" aria-label={t('run.burners')}>
        <Index each={others()}>
          {(other) => (
            <li>
              <span class="together-name">{burnerName(props.view, other())}</span>
              <span class="together-state">{say(burnerState(other()))}</span>
              <Show when={leadTimer(other())}>
                {(timer) => <span class="together-left">{say(countdown(timer().leftS))}</span>}
              </Show>
              <Show when={word(other())}>
                {(action) => (
                  <Action
                    class="button"
                    name={action().request.kind}
                    onPress={() => props.send(action().request)}
                  >
                    {t('run.burners.press', {
                      burner: burnerName(props.view, other()),
                      action: action().label,
                    })}
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

/** How far a kettle on the fire is; undefined: it is not on yet. */
function kettleState(leftS: number | undefined): Message {
  if (leftS === undefined) return message('run.kettles.to-switch-on');
  return leftS > 0 ? countdown(leftS) : message('run.kettles.should-boil');
}

/** The next kettle, already on the fire on its own circuit, while this one is poured. */
export function ConcurrentKettles(props: { view: RunView; step: StepView }) {
  const kettles = () => concurrentKettles(props.view, props.step);
  return (
    <Show when={kettles().length > 0}>
      <ul class="together" aria-label={t('run.kettles')}>
        <Index each={kettles()}>
          {(kettle) => (
            <li>
              <span class="together-name">{say(kettle().title)}</span>
              <span class="together-left">{say(kettleState(kettle().leftS))}</span>
            </li>
          )}
        </Index>
      </ul>
    </Show>
  );
}
