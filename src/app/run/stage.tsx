import { createMemo, Index, on, Show } from 'solid-js';
import type { GateView, Request, RunView, StepView } from '../../core/run/index.ts';
import { Action } from '../parts/action.tsx';
import { CautionLine } from '../parts/caution-line.tsx';
import { Countdown } from '../parts/countdown.tsx';
import { PHASE_NAMES } from '../words/names.ts';
import { lengthInWords } from '../words/time.ts';
import { GatePanel } from './gate-panel.tsx';
import { leadClock, mainAction } from './main-action.ts';
import { StagePicture } from './stage-picture.tsx';

/** The sentence of the stage in progress, or of the step when it has not begun. */
function sentence(step: StepView): string {
  const begun = step.status === 'active' || step.status === 'checking';
  return (begun ? step.step.stages[step.stage]?.title : undefined) ?? step.step.title;
}

function details(step: StepView): readonly string[] {
  return step.step.stages[step.stage]?.detail ?? [];
}

/** The step that needs hands now: sentence, picture, digits, cautions, and one thing to press. */
export function Stage(props: {
  view: RunView;
  step: StepView;
  send: (request: Request) => void;
  next: StepView | undefined;
  onChoose: (stepId: string) => void;
}) {
  const action = createMemo(() => mainAction(props.view, props.step));
  const clock = createMemo(() => leadClock(props.step));
  const gate = () => {
    const a = action();
    return a.kind === 'gate' ? a.gate : undefined;
  };
  const gatesLeft = () => props.step.gates.filter((g) => g.value !== 'yes').length;
  const cautions = () =>
    props.view.plan.cautions.filter((c) => props.step.step.standing.includes(c.id));
  const fixture = () =>
    props.view.plan.kitchen.fixtures.find((f) => f.id === props.step.step.fixture)?.name ??
    'Whole kitchen';

  return (
    <section class="stage" aria-label="What to do now">
      <header class="stage-head">
        <span class="stage-fixture">{fixture()}</span>
        <span class="quiet">
          {PHASE_NAMES[props.step.step.phase]}
          <Show when={props.step.attempt > 1}>, attempt {props.step.attempt}</Show>
        </span>
      </header>
      <h1 class="stage-sentence" aria-live="polite">
        {sentence(props.step)}
      </h1>
      <Show
        when={!gate()}
        fallback={<GatePanel gate={gate()!} left={gatesLeft()} send={props.send} />}
      >
        <div
          class="stage-middle"
          classList={{ 'stage-middle--picture': props.step.step.picture !== undefined }}
        >
          <Show when={props.step.step.picture}>
            <div class="stage-picture">
              <StagePicture view={props.view} step={props.step} />
            </div>
          </Show>
          <div class="stage-words">
            <Show when={clock()}>
              {(c) => <Countdown leftS={c().leftS} label={c().label} over={c().alerting} />}
            </Show>
            <ul class="stage-detail">
              <Index each={details(props.step)}>{(line) => <li>{line()}</li>}</Index>
            </ul>
          </div>
        </div>
        <ul class="stage-cautions" aria-label="Cautions">
          <Index each={cautions()}>{(caution) => <CautionLine caution={caution()} />}</Index>
        </ul>
      </Show>
      <p class="stage-next quiet">
        <Show when={props.next}>
          {(next) => (
            <>
              Next: {next().step.title} ({lengthInWords(next().step.durationS.typical)})
            </>
          )}
        </Show>
      </p>
      <MainBar
        action={action()}
        stepId={props.step.step.id}
        meanwhile={props.next?.status === 'ready' ? props.next : undefined}
        send={props.send}
        onChoose={props.onChoose}
      />
    </section>
  );
}

/**
 * A button that has just become another is not pressed by the finger that was
 * on its way, nor by the bounce of a wet one that has just pressed it, ms.
 */
const JUST_CHANGED_MS = 350;

function MainBar(props: {
  action: ReturnType<typeof mainAction>;
  stepId: string;
  /** What hands can do while this one waits. */
  meanwhile: StepView | undefined;
  send: (request: Request) => void;
  onChoose: (stepId: string) => void;
}) {
  const press = () => (props.action.kind === 'press' ? props.action : undefined);
  const gate = () => (props.action.kind === 'gate' ? props.action.gate : undefined);
  const wait = () => (props.action.kind === 'wait' ? props.action : undefined);
  // The view is new each second; the key only when the button becomes another one.
  const key = createMemo(
    () => `${props.stepId} ${props.action.kind} ${press()?.label ?? gate()?.gate.id ?? ''}`,
  );
  const changedAtMs = createMemo(on(key, () => performance.now()));
  const settled = (then: () => void) => () => {
    if (performance.now() - changedAtMs() >= JUST_CHANGED_MS) then();
  };
  const yes = (g: GateView) =>
    props.send({ kind: 'answer-gate', gate: g.gate.id, scopeKey: g.scopeKey, answer: 'yes' });
  return (
    <div class="main-bar">
      <Show when={press()}>
        {(p) => (
          <Action
            class={`main-action${p().urgent ? ' main-action--urgent' : ''}`}
            onPress={settled(() => props.send(p().request))}
          >
            {p().label}
          </Action>
        )}
      </Show>
      <Show when={gate()}>
        {(g) => (
          <Action class="main-action main-action--gate" onPress={settled(() => yes(g()))}>
            Yes, it is so
          </Action>
        )}
      </Show>
      <Show when={wait()}>
        {(w) => (
          <Show when={props.meanwhile} fallback={<div class="main-wait">{w().label}</div>}>
            {(step) => (
              <Action
                class="main-action main-action--meanwhile"
                onPress={settled(() => props.onChoose(step().step.id))}
              >
                <small>Meanwhile</small>
                {step().step.title}
              </Action>
            )}
          </Show>
        )}
      </Show>
    </div>
  );
}
