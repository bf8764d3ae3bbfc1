import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import type { Request, RunView, StepView } from '../../core/run/index.ts';
import type { Persistence } from '../../host/persist/index.ts';
import { Action } from '../parts/action.tsx';
import { KitchenPlan } from '../pictures/kitchen-plan.tsx';
import { PlacesLine, ThemeSwitch } from '../shell.tsx';
import type { Theme } from '../state/theme.ts';
import type { Trouble } from '../state/run-session.ts';
import { ClockQuestion } from './clock-question.tsx';
import { Closed } from './closed.tsx';
import { Closing } from './closing.tsx';
import { Lights, type LightStates } from './lights.tsx';
import { Quiet } from './quiet.tsx';
import { canRunOut } from './ran-out.tsx';
import { RunSheets, type OpenSheet } from './run-sheets.tsx';
import { Review } from './review.tsx';
import { Shelf } from './shelf.tsx';
import { Stage } from './stage.tsx';
import { stepForStage } from './main-action.ts';
import { hotBurners } from './stage-picture.tsx';
import { StartScreen } from './start-screen.tsx';
import { StopSafe } from './stop-safe.tsx';
import { Suspended } from './suspended.tsx';

export type RunPlaceProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly lights: LightStates;
  readonly trouble: Trouble | undefined;
  readonly refusal: string | undefined;
  readonly theme: Theme;
  readonly onTheme: () => void;
  readonly send: (request: Request) => void;
  readonly playTest: () => Promise<boolean>;
  readonly kept: Persistence;
  readonly arm: () => void;
  readonly exportRun: () => void;
  /** The water of this pour gave out after a share of its stretch. */
  readonly ranOut: (step: StepView, share: number) => void;
};

const BEGUN = ['running', 'held', 'suspended', 'reviewing', 'closing'];

/** Do: the stage, the shelf of clocks, the kitchen, and Stop always in its corner. */
export function RunPlace(props: RunPlaceProps) {
  const begun = () => BEGUN.includes(props.view.status);
  const needsArming = () => begun() && props.lights.sound === 'touch-to-arm';
  const alerting = () => props.view.clocks.some((clock) => clock.alerting);
  return (
    <div
      class="run-place"
      data-status={props.view.status}
      data-wake-in-s={props.view.wakeInS ?? ''}
    >
      <header class="run-strip">
        <PlacesLine at="run" />
        <Lights lights={props.lights} onArm={props.arm} />
        <ThemeSwitch theme={props.theme} onToggle={props.onTheme} />
        <Show when={begun()}>
          <StopSafe view={props.view} send={props.send} />
        </Show>
      </header>
      <Switch>
        <Match when={props.view.status === 'drafting'}>
          <StartScreen
            view={props.view}
            playTest={props.playTest}
            kept={props.kept}
            send={props.send}
          />
        </Match>
        <Match when={props.view.status === 'closed'}>
          <Closed view={props.view} />
        </Match>
        <Match when={begun()}>
          <RunBody {...props} />
        </Match>
      </Switch>
      <Show when={alerting()}>
        <div class="flash" aria-hidden="true" />
      </Show>
      <Show when={needsArming()}>
        <button type="button" class="arm-screen" onClick={props.arm}>
          Touch to arm the sound
          <small>After a restart the tablet makes no sound until it is touched once.</small>
        </button>
      </Show>
    </div>
  );
}

function RunBody(props: RunPlaceProps) {
  const [chosen, setChosen] = createSignal<string>();
  const [sheet, setSheet] = createSignal<OpenSheet>();
  const close = () => setSheet(undefined);
  const onStage = createMemo<StepView | undefined>((before) =>
    stepForStage(props.view, chosen(), before?.step.id),
  );
  /** A sheet is about the step that was on the stage when it was opened, whatever comes there meanwhile. */
  const openSheet = (kind: OpenSheet['kind']) => {
    const step = onStage()?.step.id;
    setSheet(step === undefined ? { kind } : { kind, step });
  };
  const others = () => props.view.forStage.filter((s) => s.step.id !== onStage()?.step.id);
  const send = (request: Request) => {
    // A begun step keeps the stage by itself; a choice has done its work once it is acted on.
    if (request.kind !== 'answer-gate') setChosen(undefined);
    props.send(request);
  };
  /** A fault, a review and a stop take the place of the stage. */
  const staged = () => props.view.status === 'running' || props.view.status === 'held';
  const phases = createMemo(() =>
    Object.fromEntries(props.view.fixtures.map((f) => [f.id, f.phase])),
  );
  return (
    <div class="run-body">
      <Switch
        fallback={
          <Show when={onStage()} fallback={<Quiet view={props.view} nowMs={props.nowMs} />}>
            {(step) => (
              <Stage
                view={props.view}
                step={step()}
                send={send}
                next={others().find((s) => s.status === 'ready')}
                onChoose={setChosen}
              />
            )}
          </Show>
        }
      >
        <Match when={props.view.status === 'reviewing'}>
          <Review view={props.view} nowMs={props.nowMs} send={send} />
        </Match>
        <Match when={props.view.status === 'suspended'}>
          <Suspended view={props.view} send={send} />
        </Match>
        <Match when={props.view.status === 'closing'}>
          <Closing view={props.view} send={send} />
        </Match>
      </Switch>
      <aside class="run-side">
        <KitchenPlan
          kitchen={props.view.plan.kitchen}
          phases={phases()}
          lit={hotBurners(props.view)}
          size="small"
        />
        <Shelf
          view={props.view}
          onStage={staged() ? onStage()?.step.id : undefined}
          onChoose={setChosen}
          onAnswer={
            staged() ? undefined : (timer) => props.send({ kind: 'acknowledge-timer', timer })
          }
        />
        <Show when={props.view.askClock && props.view.status !== 'reviewing'}>
          <ClockQuestion nowMs={props.nowMs} send={send} />
        </Show>
        <div class="side-actions">
          <Show when={props.trouble}>
            {(t) => <Troubled trouble={t()} onExport={props.exportRun} />}
          </Show>
          <Show when={props.refusal}>
            {(text) => (
              <p class="refusal" role="status">
                {text()}
              </p>
            )}
          </Show>
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
          <Show when={onStage() && canRunOut(onStage()!)}>
            <Action class="button" onPress={() => openSheet('ran-out')}>
              I ran out here
            </Action>
          </Show>
          <Action class="button button--plain" onPress={() => openSheet('steps')}>
            Steps {props.view.doneSteps}/{props.view.allSteps}
          </Action>
          <Action class="button button--plain" onPress={() => openSheet('happened')}>
            Something happened
          </Action>
        </div>
      </aside>
      <RunSheets {...props} open={sheet()} send={send} onChoose={setChosen} onClose={close} />
    </div>
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
