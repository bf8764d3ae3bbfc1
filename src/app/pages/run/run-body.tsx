import { createMemo, createSignal, lazy, Match, Show, Suspense, Switch } from 'solid-js';
import type { Request, StepView } from '../../../core/run/index.ts';
import { concurrentStep } from './step/concurrent-steps.ts';
import { ClockQuestion } from './recovery/clock-question.tsx';
import { Closing } from './recovery/closing.tsx';
import { currentStep } from './step/main-action.ts';
import type { MainKey } from './step/main-bar.tsx';
import { Quiet } from './recovery/quiet.tsx';
import { Review } from './recovery/review.tsx';
import { useRunKeys } from './voice/run-keys.ts';
import type { RunPageProps } from './run-page.tsx';
import type { OpenSheet } from './run-sheets.tsx';
import { RunSide } from './run-side.tsx';
import { CurrentStepPanel } from './step/current-step.tsx';
import { Suspended } from './recovery/suspended.tsx';
import { createVoice } from './voice/voice.ts';

// What lies over the stage only now and then comes when it is first opened.
const RunSheets = lazy(async () => ({
  default: (await import('./run-sheets.tsx')).RunSheets,
}));

export type RunBodyProps = RunPageProps & {
  /** Opens what makes safe; nothing is stopped by it yet. */
  readonly onStop: () => void;
};

/** A run in progress: the stage, what stands beside it, and what lies over it. */
export function RunBody(props: RunBodyProps) {
  const [chosen, setChosen] = createSignal<string>();
  const [sheet, setSheet] = createSignal<OpenSheet>();
  const onStage = createMemo<StepView | undefined>((before) =>
    currentStep(props.view, chosen(), before?.step.id),
  );
  /** A sheet is about the step that was on the stage when it was opened, whatever comes there meanwhile. */
  const openSheet = (one: OpenSheet) => setSheet({ step: onStage()?.step.id, ...one });
  const others = () => props.view.currentSteps.filter((s) => s.step.id !== onStage()?.step.id);
  const send = (request: Request) => {
    // A begun step keeps the stage by itself; a choice has done its work once it is acted on.
    if (request.kind !== 'answer-gate') setChosen(undefined);
    props.send(request);
  };
  /** A fault, a review and a stop take the place of the stage. */
  const staged = () => props.view.status === 'running' || props.view.status === 'held';
  const besides = createMemo(() => (staged() ? onStage() : undefined));
  const voice = createVoice({
    on: () => props.choices.spoken,
    view: () => props.view,
    step: onStage,
    open: async () => (await import('../../../host/speech/index.ts')).createSpeech(),
  });
  let mainKey: MainKey;
  useRunKeys({
    pedalActs: () => props.choices.pedalActs,
    heeds: () => props.lights.sound !== 'touch-to-arm',
    mainKey: () => mainKey,
    onMove: (by) => setChosen(concurrentStep(props.view.currentSteps, onStage()?.step.id, by)),
    onStop: props.onStop,
    onRepeat: voice.again,
  });
  return (
    <div class="run-body">
      <main class="run-stage">
        <Switch
          fallback={
            <Show when={onStage()} fallback={<Quiet view={props.view} nowMs={props.nowMs} />}>
              {(step) => (
                <CurrentStepPanel
                  view={props.view}
                  step={step()}
                  send={send}
                  next={others().find((s) => s.status === 'ready')}
                  onChoose={setChosen}
                  onFault={(fault) => openSheet({ kind: 'fault', fault })}
                  onKey={(key) => (mainKey = key)}
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
      </main>
      <RunSide {...props} step={besides()} onChoose={setChosen} onSheet={openSheet}>
        <Show when={props.view.askClock && props.view.status !== 'reviewing'}>
          <ClockQuestion nowMs={props.nowMs} send={send} />
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
              send={send}
              onChoose={setChosen}
              onClose={() => setSheet(undefined)}
            />
          )}
        </Show>
      </Suspense>
    </div>
  );
}
