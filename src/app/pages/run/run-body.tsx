import { createMemo, createSignal, lazy, Match, Show, Suspense, Switch } from 'solid-js';
import type { StepView } from '../../../core/run/index.ts';
import { ClockQuestion } from './recovery/clock-question.tsx';
import { Closing } from './recovery/closing.tsx';
import { Quiet } from './recovery/quiet.tsx';
import { Review } from './recovery/review.tsx';
import { Suspended } from './recovery/suspended.tsx';
import type { RunPageProps } from './run-page-props.ts';
import type { OpenSheet } from './run-sheets.tsx';
import { RunSide } from './run-side.tsx';
import { concurrentStep } from './step/concurrent-steps.ts';
import { chooseStep, currentStep, type ChosenStep } from './step/current-step.ts';
import { CurrentStepPanel } from './step/current-step-panel.tsx';
import type { MainKey } from './step/main-bar.tsx';
import { useRunKeys } from './voice/run-keys.ts';
import { createVoice } from './voice/voice.ts';

// What lies over the run only now and then comes when it is first opened.
const RunSheets = lazy(async () => ({
  default: (await import('./run-sheets.tsx')).RunSheets,
}));

export type RunBodyProps = RunPageProps & {
  /** Opens what makes safe; nothing is stopped by it yet. */
  readonly onStop: () => void;
};

/** A run in progress: the current step, what stands beside it, and what lies over it. */
export function RunBody(props: RunBodyProps) {
  const [chosen, setChosen] = createSignal<ChosenStep>();
  const [sheet, setSheet] = createSignal<OpenSheet>();
  const current = createMemo<StepView | undefined>((before) =>
    currentStep(props.view, chosen(), before?.step.id),
  );
  const choose = (id: string | undefined) => setChosen(chooseStep(props.view, id));
  /** A sheet is about the step that was the current one when it was opened, whatever comes there meanwhile. */
  const openSheet = (one: OpenSheet) => setSheet({ step: current()?.step.id, ...one });
  const others = () => props.view.currentSteps.filter((s) => s.step.id !== current()?.step.id);
  /** A fault, a review and a stop take the place of the step. */
  const showsStep = () => props.view.status === 'running' || props.view.status === 'held';
  const shown = createMemo(() => (showsStep() ? current() : undefined));
  const voice = createVoice({
    on: () => props.choices.spoken,
    view: () => props.view,
    step: current,
    open: async () => (await import('../../../host/speech/index.ts')).createSpeech(),
  });
  let mainKey: MainKey;
  useRunKeys({
    pedalActs: () => props.choices.pedalActs,
    heeds: () => props.lights.sound !== 'touch-to-arm',
    mainKey: () => mainKey,
    onMove: (by) => choose(concurrentStep(props.view.currentSteps, current()?.step.id, by)),
    onStop: props.onStop,
    onRepeat: voice.again,
  });
  return (
    <div class="run-body">
      <main class="run-stage">
        <Switch
          fallback={
            <Show when={current()} fallback={<Quiet view={props.view} nowMs={props.nowMs} />}>
              {(step) => (
                <CurrentStepPanel
                  view={props.view}
                  step={step()}
                  send={props.send}
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
      </main>
      <RunSide {...props} step={shown()} onChoose={choose} onSheet={openSheet}>
        <Show when={props.view.askClock && props.view.status !== 'reviewing'}>
          <ClockQuestion nowMs={props.nowMs} send={props.send} />
        </Show>
      </RunSide>
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
    </div>
  );
}
