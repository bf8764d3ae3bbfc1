import { type JSX, Show, Suspense } from 'solid-js';
import type { StepView } from '../../../core/run/index.ts';
import { lazyPage, say, t } from '../../context/language.ts';
import type { Trouble } from '../../controllers/run/trouble.ts';
import { Action } from '../../parts/press/action.tsx';
import { Guarded } from '../../parts/guarded.tsx';
import type { RunPageProps } from './run-page-props.ts';
import type { OpenSheet } from './run-sheets.tsx';
import { canRunOut } from './step/progress.ts';
import { PlainTimers } from './timers/plain-timers.tsx';
import { TimerList } from './timers/timer-list.tsx';

// Timers and buttons first, the picture right after them, in a room that is kept for it.
const KitchenGlance = lazyPage(
  ['run-later', 'pictures'],
  async () => (await import('./kitchen/kitchen-glance.tsx')).KitchenGlance,
);

type RunSideProps = RunPageProps & {
  /** Shown now; undefined where a fault, a review or a stop takes its place. */
  readonly step: StepView | undefined;
  readonly onChoose: (stepId: string) => void;
  readonly onSheet: (sheet: OpenSheet) => void;
  readonly children: JSX.Element;
};

/** Beside the current step: the kitchen, the other timers, and what else can be done or told. */
export function RunSide(props: RunSideProps) {
  const showsStep = () => props.view.status === 'running' || props.view.status === 'held';
  return (
    <aside class="run-side" aria-label={t('run.side')}>
      <Guarded part="kitchen-picture">
        <Suspense fallback={<div class="glance-room" />}>
          <Show when={props.view.status !== 'reviewing'}>
            <KitchenGlance
              view={props.view}
              nowMs={props.nowMs}
              current={props.step?.step.id}
              tellsNext={showsStep() && !props.step}
              onOpen={() => props.onSheet({ kind: 'kitchen' })}
            />
          </Show>
        </Suspense>
      </Guarded>
      <Guarded part="timers" instead={<PlainTimers view={props.view} />}>
        <TimerList
          view={props.view}
          current={props.step?.step.id}
          onChoose={props.onChoose}
          onWait={(timer) => props.onSheet({ kind: 'timer', timer })}
          onDays={() => props.onSheet({ kind: 'days' })}
          answersHere={!showsStep()}
          onAnswer={(timer) => props.send({ kind: 'acknowledge-timer', timer })}
        />
      </Guarded>
      <Guarded part="side">
        {props.children}
        <SideActions {...props} />
      </Guarded>
    </aside>
  );
}

function SideActions(props: RunSideProps) {
  return (
    <div class="side-actions">
      <Show when={props.trouble}>
        {(trouble) => <Troubled trouble={trouble()} onExport={props.exportRun} />}
      </Show>
      <Show when={props.view.alarmsFailed[0]}>
        {(alarm) => (
          <p class="refusal" role="alert" data-key="run.alarm-failed">
            {t('run.alarm-failed', { timer: alarm().label })}
          </p>
        )}
      </Show>
      <Show when={props.refusal}>
        {(refusal) => (
          <p class="refusal" role="status" data-key={refusal().key}>
            {say(refusal())}
          </p>
        )}
      </Show>
      <Show when={props.step && canRunOut(props.step)}>
        <Action class="button" name="ran-out" onPress={() => props.onSheet({ kind: 'ran-out' })}>
          {t('run.ran-out')}
        </Action>
      </Show>
      <Action class="button" name="happened" onPress={() => props.onSheet({ kind: 'happened' })}>
        {t('run.happened')}
      </Action>
      <Show when={props.view.status === 'running'}>
        <Action
          class="button button--plain"
          name="pause"
          onPress={() => props.send({ kind: 'pause' })}
        >
          {t('run.pause')}
        </Action>
      </Show>
      <Show when={props.view.status === 'held'}>
        <Action class="button" name="resume" onPress={() => props.send({ kind: 'resume' })}>
          {t('run.resume')}
        </Action>
      </Show>
      <Action
        class="button button--plain"
        name="steps"
        onPress={() => props.onSheet({ kind: 'steps' })}
      >
        {t('run.steps', { done: props.view.doneSteps, of: props.view.allSteps })}
      </Action>
      <Action
        class="button button--plain"
        name="settings"
        onPress={() => props.onSheet({ kind: 'settings' })}
      >
        {t('run.settings')}
      </Action>
    </div>
  );
}

function Troubled(props: { trouble: Trouble; onExport: () => void }) {
  return (
    <div class="trouble" role="alert" data-trouble={props.trouble.kind}>
      <strong>{t(`shell.trouble.${props.trouble.kind}`)}</strong> {say(props.trouble.message)}
      <Action class="button" name="save-run" onPress={props.onExport}>
        {t('shell.save-run')}
      </Action>
    </div>
  );
}
