import { createMemo, type JSX, Show } from 'solid-js';
import type { StepView } from '../../../core/run/index.ts';
import { Action } from '../../parts/action.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import type { Trouble } from '../../controllers/run/run-session.ts';
import { canRunOut } from './step/can-run-out.ts';
import type { RunPageProps } from './run-page.tsx';
import type { OpenSheet } from './run-sheets.tsx';
import { TimerList } from './timers/timer-list.tsx';
import { hotBurners } from './step/progress.ts';

/** Beside the stage: the kitchen, the other clocks, and what else can be done or told. */
export function RunSide(
  props: RunPageProps & {
    /** On the stage now; undefined where a fault, a review or a stop takes its place. */
    readonly step: StepView | undefined;
    readonly onChoose: (stepId: string) => void;
    readonly onSheet: (sheet: OpenSheet) => void;
    readonly children: JSX.Element;
  },
) {
  const staged = () => props.view.status === 'running' || props.view.status === 'held';
  const phases = createMemo(() =>
    Object.fromEntries(props.view.fixtures.map((f) => [f.id, f.phase])),
  );
  return (
    <aside class="run-side" aria-label="Beside the stage">
      <KitchenPlan
        kitchen={props.view.plan.kitchen}
        phases={phases()}
        lit={hotBurners(props.view)}
        size="small"
      />
      <TimerList
        view={props.view}
        onStage={props.step?.step.id}
        onChoose={props.onChoose}
        onWait={(timer) => props.onSheet({ kind: 'clock', timer })}
        onDays={() => props.onSheet({ kind: 'days' })}
        answersHere={!staged()}
        onAnswer={(timer) => props.send({ kind: 'acknowledge-timer', timer })}
      />
      {props.children}
      <div class="side-actions">
        <Show when={props.trouble}>
          {(t) => <Troubled trouble={t()} onExport={props.exportRun} />}
        </Show>
        <Show when={props.view.alarmsFailed[0]}>
          {(alarm) => (
            <p class="refusal" role="alert">
              The alarm of “{alarm().label}” could not be made to sound: watch the screen.
            </p>
          )}
        </Show>
        <Show when={props.refusal}>
          {(text) => (
            <p class="refusal" role="status">
              {text()}
            </p>
          )}
        </Show>
        <Show when={props.step && canRunOut(props.step)}>
          <Action class="button" onPress={() => props.onSheet({ kind: 'ran-out' })}>
            I ran out here
          </Action>
        </Show>
        <Action class="button" onPress={() => props.onSheet({ kind: 'happened' })}>
          Something happened
        </Action>
        <Show when={props.view.status === 'running'}>
          <Action class="button button--plain" onPress={() => props.send({ kind: 'pause' })}>
            Pause
          </Action>
        </Show>
        <Show when={props.view.status === 'held'}>
          <Action class="button" onPress={() => props.send({ kind: 'resume' })}>
            Go on
          </Action>
        </Show>
        <Action class="button button--plain" onPress={() => props.onSheet({ kind: 'steps' })}>
          Steps {props.view.doneSteps}/{props.view.allSteps}
        </Action>
        <Action class="button button--plain" onPress={() => props.onSheet({ kind: 'settings' })}>
          Settings
        </Action>
      </div>
    </aside>
  );
}

function Troubled(props: { trouble: Trouble; onExport: () => void }) {
  return (
    <div class="trouble" role="alert">
      <strong>{props.trouble.kind === 'storage' ? 'Not saved.' : 'Only showing.'}</strong>{' '}
      {props.trouble.message}
      <Action class="button" onPress={props.onExport}>
        Save the run as a file
      </Action>
    </div>
  );
}
