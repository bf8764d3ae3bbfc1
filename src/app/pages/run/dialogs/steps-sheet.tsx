import { Index, Show } from 'solid-js';
import { message, type Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** Where a step stands, with why it waits. */
function stateOf({ outcome, status, blockedBy }: StepView): Message {
  if (outcome) return message(`run.outcome.${outcome}`);
  const state = message(`run.step-state.${status}`);
  const why = status === 'waiting' ? blockedBy[0] : undefined;
  return why ? message('run.all-steps.blocked', { state, why }) : state;
}

/** The whole run as a list; a step that can begin is shown from here. */
export function StepsSheet(props: {
  view: RunView;
  onChoose: (stepId: string) => void;
  onClose: () => void;
}) {
  const choosable = (step: StepView) =>
    props.view.currentSteps.some((s) => s.step.id === step.step.id);
  return (
    <Sheet label={t('run.all-steps')} onClose={props.onClose}>
      <div class="sheet-head">
        <h2>{t('run.all-steps')}</h2>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
      <ol class="steps-sheet">
        <Index each={props.view.steps}>
          {(step) => (
            <li data-step={step().step.id} data-status={step().status}>
              <span>
                {say(step().step.title)}
                <span class="quiet step-state">{say(stateOf(step()))}</span>
              </span>
              <Show when={choosable(step())}>
                <Action
                  class="button"
                  name="show-step"
                  onPress={() => props.onChoose(step().step.id)}
                >
                  {t('run.all-steps.show')}
                </Action>
              </Show>
            </li>
          )}
        </Index>
      </ol>
    </Sheet>
  );
}
