import { createSignal, lazy, Match, Show, Suspense, Switch } from 'solid-js';
import type { Request, RunView, StepView } from '../../../core/run/index.ts';
import type { Persistence } from '../../../host/persist/index.ts';
import { Action } from '../../parts/action.tsx';
import { PagesLine, ThemeSwitch } from '../../shell.tsx';
import type { Trouble } from '../../controllers/run/run-session.ts';
import type { Theme } from '../../context/theme.ts';
import type { RunChoices } from './choices.ts';
import { Lights, type LightStates } from './lights.tsx';
import { RunBody } from './run-body.tsx';
import { timerState } from './timers/timer-list.tsx';
import { fixtureName } from './step/step-text.ts';
import { StopSafe } from './dialogs/stop-safe.tsx';

// A run in progress needs none of them: before it, after it, and on a rest day.
const StartScreen = lazy(async () => ({
  default: (await import('./start-screen.tsx')).StartScreen,
}));
const Closed = lazy(async () => ({
  default: (await import('./recovery/closed-run.tsx')).ClosedRun,
}));
const RestDayPage = lazy(async () => ({
  default: (await import('./recovery/rest-day.tsx')).RestDayPage,
}));

export type RunPageProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly lights: LightStates;
  readonly trouble: Trouble | undefined;
  readonly refusal: string | undefined;
  readonly theme: Theme;
  readonly onTheme: () => void;
  readonly choices: RunChoices;
  readonly onChoice: (name: keyof RunChoices, value: boolean) => void;
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
export function RunPage(props: RunPageProps) {
  const begun = () => BEGUN.includes(props.view.status);
  const [stopping, setStopping] = createSignal(false);
  const [looksIn, setLooksIn] = createSignal<string>();
  /** On a rest day the page is still, unless somebody chose to look in on this one. */
  const restDay = () => {
    const day = begun() ? props.view.restDay : undefined;
    return day && looksIn() !== day.name ? day : undefined;
  };
  const asks = () => begun() && !props.view.restDay;
  const needsArming = () => asks() && props.lights.sound === 'touch-to-arm';
  const calling = () => (asks() ? props.view.timers.find((clock) => clock.alerting) : undefined);
  const alerting = () => calling() !== undefined;
  return (
    <div
      class="run-place"
      data-status={props.view.status}
      data-wake-in-s={props.view.wakeInS ?? ''}
    >
      <header class="run-strip">
        <PagesLine at="run" />
        <Show when={!restDay()}>
          <Lights lights={props.lights} onArm={props.arm} />
        </Show>
        <ThemeSwitch theme={props.theme} onToggle={props.onTheme} />
        <Show when={begun()}>
          <StopSafe view={props.view} open={stopping()} onOpen={setStopping} send={props.send} />
        </Show>
      </header>
      <Suspense>
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
          <Match when={restDay()}>
            {(day) => (
              <main class="rest-day-frame">
                <RestDayPage view={props.view} day={day()} nowMs={props.nowMs} />
                <Action class="button button--plain" onPress={() => setLooksIn(day().name)}>
                  Look in on the run
                </Action>
              </main>
            )}
          </Match>
          <Match when={begun()}>
            <RunBody {...props} onStop={() => setStopping(true)} />
          </Match>
        </Switch>
      </Suspense>
      <Show when={alerting()}>
        <div class="flash" aria-hidden="true" />
      </Show>
      <Show when={needsArming()}>
        <section aria-label="Sound">
          <button type="button" class="arm-screen" onClick={props.arm}>
            Touch to arm the sound
            <Show when={calling()}>
              {(clock) => (
                <strong class="arm-calling">
                  {fixtureName(props.view, clock().fixture)}: {clock().label}, {timerState(clock())}
                </strong>
              )}
            </Show>
            <small>After a restart the tablet makes no sound until it is touched once.</small>
          </button>
        </section>
      </Show>
    </div>
  );
}
