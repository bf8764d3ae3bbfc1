import { say } from '../../../context/language.ts';
import { Index, Show } from 'solid-js';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { OUTCOME_NAMES } from '../../../labels/names.ts';

const STATUS_WORDS: Readonly<Record<StepView['status'], string>> = {
  waiting: 'waits',
  ready: 'can begin',
  active: 'in work',
  checking: 'your word is needed',
  stalled: 'stuck',
  unwinding: 'being made safe',
  settled: 'over',
};

/** The whole run as a list; a step that can begin is taken to the stage from here. */
export function StepsSheet(props: {
  view: RunView;
  onChoose: (stepId: string) => void;
  onClose: () => void;
}) {
  const choosable = (step: StepView) =>
    props.view.currentSteps.some((s) => s.step.id === step.step.id);
  return (
    <Sheet label="All steps" onClose={props.onClose}>
      <div class="sheet-head">
        <h2>All steps</h2>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
      <ol class="steps-sheet">
        <Index each={props.view.steps}>
          {(step) => (
            <li>
              <span>
                {say(step().step.title)}
                <span class="quiet step-state">
                  {step().outcome
                    ? OUTCOME_NAMES[step().outcome!].toLowerCase()
                    : STATUS_WORDS[step().status]}
                  {step().blockedBy[0] && step().status === 'waiting'
                    ? `: ${step().blockedBy[0]}`
                    : ''}
                </span>
              </span>
              <Show when={choosable(step())}>
                <Action class="button" onPress={() => props.onChoose(step().step.id)}>
                  Show
                </Action>
              </Show>
            </li>
          )}
        </Index>
      </ol>
    </Sheet>
  );
}
