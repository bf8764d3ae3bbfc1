import { createSignal, Match, Show, Suspense, Switch } from 'solid-js';
import { message } from '../../../core/messages/index.ts';
import type { TimerView } from '../../../core/run/index.ts';
import { lazyPage, say, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Guarded } from '../../parts/guarded.tsx';
import { PagesLine } from '../../parts/head/pages-line.tsx';
import { SheetCorner } from '../../parts/sheets/sheet-corner.ts';
import { SwitchedOff } from '../../parts/press/switched-off.ts';
import { ThemeSwitch } from '../../parts/head/theme-switch.tsx';
import { StopCorner, StopSafe } from './dialogs/stop-safe.tsx';
import { Lights } from './lights.tsx';
import { RunBody } from './run-body.tsx';
import type { RunPageProps } from './run-page-props.ts';
import { PlainTimers } from './timers/plain-timers.tsx';
import { namedTimer, timerState } from './timers/timer-messages.ts';

// A run in progress needs none of them: before it, after it, and on a rest day.
const StartScreen = lazyPage(
  ['run-ends', 'run-later'],
  async () => (await import('./start-screen.tsx')).StartScreen,
);
const Closed = lazyPage(
  ['run-ends'],
  async () => (await import('./recovery/closed-run.tsx')).ClosedRun,
);
const RestDayPage = lazyPage(
  ['run-later'],
  async () => (await import('./recovery/rest-day.tsx')).RestDayPage,
);

const BEGUN = ['running', 'held', 'suspended', 'reviewing', 'closing'];

/** Do: the current step, the list of timers, the kitchen, and Stop always in its corner. */
export function RunPage(props: RunPageProps) {
  const begun = () => BEGUN.includes(props.view.status);
  const [stopping, setStopping] = createSignal(false);
  /** End of the rest day on which somebody chose to look in, ms. */
  const [looksInMs, setLooksInMs] = createSignal<number>();
  /** On a rest day the page is still, unless somebody chose to look in on this one, or is hurt. */
  const restDay = () => {
    const day = begun() ? props.view.restDay : undefined;
    const isStill = looksInMs() !== day?.toWallMs && props.view.coolings.length === 0;
    return isStill ? day : undefined;
  };
  const asks = () => begun() && !props.view.restDay;
  const needsArming = () => asks() && props.lights.sound === 'touch-to-arm';
  const calling = () => (asks() ? props.view.timers.find((timer) => timer.alerting) : undefined);
  const alerting = () =>
    calling() !== undefined || (asks() && props.view.coolings.some((one) => one.alerting));
  const stop = (overSheet = false) => (
    <StopCorner overSheet={overSheet} onStop={() => setStopping(true)} />
  );
  return (
    <SwitchedOff.Provider value={() => props.lead !== undefined}>
      <SheetCorner.Provider value={() => <Show when={begun()}>{stop(true)}</Show>}>
        <div
          class="run-place"
          data-status={props.view.status}
          data-wake-in-s={props.view.wakeInS ?? ''}
        >
          <header class="run-strip">
            <PagesLine at="run" />
            <Guarded part="lights">
              <Show when={!restDay()}>
                <Lights lights={props.lights} onArm={props.arm} />
              </Show>
            </Guarded>
            <ThemeSwitch theme={props.theme} onToggle={props.onTheme} />
            <Show when={begun()}>{stop()}</Show>
            <Show when={begun() && props.refusal}>
              {(refusal) => (
                <p class="refusal" role="status" data-key={refusal().key}>
                  {say(refusal())}
                </p>
              )}
            </Show>
          </header>
          <Guarded part="run" instead={<PlainTimers view={props.view} />}>
            <Suspense>
              <Switch>
                <Match when={props.view.status === 'drafting'}>
                  <StartScreen
                    view={props.view}
                    nowMs={props.nowMs}
                    playTest={props.playTest}
                    sound={props.lights.sound}
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
                      <Action
                        class="button button--plain"
                        name="look-in"
                        onPress={() => setLooksInMs(day().toWallMs)}
                      >
                        {t('run.rest-day.look-in')}
                      </Action>
                    </main>
                  )}
                </Match>
                <Match when={begun()}>
                  <RunBody {...props} onStop={() => setStopping(true)} />
                </Match>
              </Switch>
            </Suspense>
          </Guarded>
          <Show when={alerting()}>
            <div class="flash" aria-hidden="true" />
          </Show>
          <Show when={needsArming()}>
            <ArmScreen {...props} calling={calling()} />
          </Show>
          <Show when={begun() && stopping()}>
            <StopSafe
              view={props.view}
              onClose={() => setStopping(false)}
              send={props.send}
              lead={props.lead}
            />
          </Show>
        </div>
      </SheetCorner.Provider>
    </SwitchedOff.Provider>
  );
}

/** Over everything but Stop: the tablet is mute until it is touched. */
function ArmScreen(props: RunPageProps & { readonly calling: TimerView | undefined }) {
  return (
    <section aria-label={t('run.arm.region')}>
      <button type="button" class="arm-screen" data-action="arm" onClick={props.arm}>
        {t('run.arm')}
        <Show when={props.calling}>
          {(timer) => (
            <strong class="arm-calling">
              {t('run.arm.calling', {
                timer: namedTimer(props.view, timer()),
                state: timerState(timer()) ?? message('run.timer.calls'),
              })}
            </strong>
          )}
        </Show>
        <small>{t('run.arm.about')}</small>
      </button>
    </section>
  );
}
