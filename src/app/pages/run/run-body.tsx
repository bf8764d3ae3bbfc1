import {
  createEffect,
  createMemo,
  createSignal,
  Match,
  on,
  onMount,
  Show,
  Suspense,
  Switch,
} from 'solid-js';
import type { Request, StepView } from '../../../core/run/index.ts';
import { Closing } from './recovery/closing.tsx';
import { Suspended } from './recovery/suspended.tsx';
import { lazyPage, loadLater, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { scrolls } from '../../parts/scrolls.ts';
import { Guarded } from '../../parts/guarded.tsx';
import type { RunPageProps } from './run-page-props.ts';
import type { OpenSheet } from './run-sheets.tsx';
import { RunSide } from './run-side.tsx';
import { concurrentStep } from './step/concurrent-steps.ts';
import { chooseStep, currentStep, type ChosenStep } from './step/current-step.ts';
import { CurrentStepPanel } from './step/current-step-panel.tsx';
import type { MainKey } from './step/main-bar.tsx';
import { useRunKeys } from './voice/run-keys.ts';
import { createVoice } from './voice/voice.ts';

// A step in hand, a fault and a stop are here at once; the rest comes right after them.
const LATER = {
  glance: () => import('./kitchen/kitchen-glance.tsx'),
  beside: () => import('./crew/beside.tsx'),
  cooling: () => import('./recovery/cooling.tsx'),
  sheets: () => import('./run-sheets.tsx'),
  quiet: () => import('./recovery/quiet.tsx'),
  review: () => import('./recovery/review.tsx'),
  clock: () => import('./recovery/clock-question.tsx'),
  lastHot: () => import('./recovery/last-hot-question.tsx'),
};
const Beside = lazyPage(['pictures'], async () => (await LATER.beside()).Beside);
const RunSheets = lazyPage(
  ['run-later', 'run-ends', 'pictures'],
  async () => (await LATER.sheets()).RunSheets,
);
const Cooling = lazyPage(['run-later'], async () => (await LATER.cooling()).Cooling);
const Quiet = lazyPage(['run-later'], async () => (await LATER.quiet()).Quiet);
const Review = lazyPage(['run-later', 'pictures'], async () => (await LATER.review()).Review);
const ClockQuestion = lazyPage(['run-later'], async () => (await LATER.clock()).ClockQuestion);
const LastHotQuestion = lazyPage(
  ['run-later'],
  async () => (await LATER.lastHot()).LastHotQuestion,
);

/**
 * Fetched as soon as the page before the run stands, so that nothing waits for a network when it
 * is needed, and nothing comes late and moves a button from under a finger.
 */
export async function fetchLater(): Promise<void> {
  // What cannot be had now is asked for again when it is needed, and says so there.
  for (const load of Object.values(LATER)) await load().catch(() => undefined);
  await loadLater(['run-later', 'run-ends', 'pictures']).catch(() => undefined);
}

export type RunBodyProps = RunPageProps & {
  /** Opens what makes safe; nothing is stopped by it yet. */
  readonly onStop: () => void;
};

/** What the address asks for, once: nothing lies over what arms the sound, a fault or a review. */
function openAsked(
  props: RunPageProps,
  showsStep: () => boolean,
  open: (sheet: OpenSheet) => void,
): void {
  const mayOpen = createMemo(
    () => showsStep() && props.lights.sound !== 'touch-to-arm' && props.lights.sound !== 'unknown',
  );
  let wasOpened = false;
  createEffect(() => {
    if (!mayOpen() || wasOpened || !props.opens) return;
    wasOpened = true;
    open({ kind: props.opens });
  });
}

/** A run in progress: the current step, what stands beside it, and what lies over it. */
export function RunBody(props: RunBodyProps) {
  const [chosen, setChosen] = createSignal<ChosenStep>();
  const [sheet, setSheet] = createSignal<OpenSheet>();
  const current = createMemo<StepView | undefined>((before) =>
    currentStep(props.view, chosen(), before?.step.id),
  );
  const choose = (id: string | undefined) => setChosen(chooseStep(props.view, id));
  createEffect(on(() => props.atStep, choose, { defer: true }));
  /** A sheet is about the step that was the current one when it was opened, whatever comes there meanwhile. */
  const openSheet = (one: OpenSheet) => setSheet({ step: current()?.step.id, ...one });
  const others = () => props.view.currentSteps.filter((s) => s.step.id !== current()?.step.id);
  /** A fault, a review and a stop take the place of the step. */
  const showsStep = () => props.view.status === 'running' || props.view.status === 'held';
  const shown = createMemo(() => (showsStep() ? current() : undefined));
  openAsked(props, showsStep, openSheet);
  const voice = createVoice({
    on: () => props.choices.spoken,
    view: () => props.view,
    step: current,
    open: async () => (await import('../../../host/speech/index.ts')).createSpeech(),
  });
  onMount(() => void fetchLater());
  let mainKey: MainKey;
  let sign = (request: Request) => request;
  useRunKeys({
    pedalActs: () => props.choices.pedalActs,
    heeds: () => props.lights.sound !== 'touch-to-arm',
    mainKey: () => mainKey,
    onMove: (by) => choose(concurrentStep(props.view.currentSteps, current()?.step.id, by)),
    onStop: props.onStop,
    onRepeat: voice.again,
  });
  return (
    <div class="run-frame">
      <Guarded part="side">
        <Suspense>
          <Beside
            view={props.view}
            current={current()?.step.id}
            memory={props.memory}
            send={props.send}
            onChoose={choose}
            onSign={(how) => (sign = how)}
          />
        </Suspense>
      </Guarded>
      <div class="run-body" classList={{ 'run-body--pour': shown()?.step.kind === 'pour' }}>
        <main
          class="run-stage"
          classList={{ 'run-stage--cooling': props.view.coolings.length > 0 }}
          ref={scrolls}
        >
          <Guarded part="step">
            <Suspense>
              <Show when={props.view.coolings.length > 0}>
                <Cooling view={props.view} nowMs={props.nowMs} send={props.send} />
              </Show>
            </Suspense>
          </Guarded>
          <Guarded part="step">
            <Suspense>
              <Switch
                fallback={
                  <Show when={current()} fallback={<Quiet view={props.view} nowMs={props.nowMs} />}>
                    {(step) => (
                      <CurrentStepPanel
                        view={props.view}
                        step={step()}
                        nowMs={props.nowMs}
                        send={(request) => props.send(sign(request))}
                        next={others().find((s) => s.status === 'ready')}
                        onChoose={choose}
                        onFault={(fault) => openSheet({ kind: 'fault', fault })}
                        onKey={(key) => (mainKey = key)}
                      />
                    )}
                  </Show>
                }
              >
                <Match when={props.view.status === 'reviewing'}>
                  <Review view={props.view} nowMs={props.nowMs} send={props.send} />
                </Match>
                <Match when={props.view.status === 'suspended'}>
                  <Suspended view={props.view} send={props.send} />
                </Match>
                <Match when={props.view.status === 'closing'}>
                  <Closing view={props.view} send={props.send} />
                </Match>
              </Switch>
            </Suspense>
          </Guarded>
        </main>
        <RunSide {...props} step={shown()} onChoose={choose} onSheet={openSheet}>
          <SideQuestions {...props} />
        </RunSide>
        <Guarded part="sheet">
          <Suspense>
            <Show when={sheet()}>
              {(open) => (
                <RunSheets
                  {...props}
                  open={open()}
                  voice={voice.state()}
                  onSayAgain={voice.again}
                  onChoose={choose}
                  onClose={() => setSheet(undefined)}
                />
              )}
            </Show>
          </Suspense>
        </Guarded>
      </div>
    </div>
  );
}

/** What is asked beside the step: the clock, when things were last hot, and what can be taken back. */
function SideQuestions(props: RunPageProps) {
  return (
    <>
      <Show when={props.view.status !== 'reviewing' && props.view.clockQuestion}>
        {(question) => (
          <Suspense>
            <ClockQuestion question={question()} send={props.send} />
          </Suspense>
        )}
      </Show>
      <Show when={props.view.status === 'running'}>
        <Suspense>
          <LastHotQuestion view={props.view} nowMs={props.nowMs} send={props.send} />
        </Suspense>
      </Show>
      <Show when={props.view.canWithdrawClock}>
        <Action
          class="button button--plain"
          name="withdraw-clock-answer"
          onPress={() => props.send({ kind: 'withdraw-clock-answer' })}
        >
          {t('run.clock.withdraw')}
        </Action>
      </Show>
    </>
  );
}
