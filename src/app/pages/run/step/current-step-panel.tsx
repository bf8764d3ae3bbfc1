import { createMemo, createSignal, Index, Show, Suspense } from 'solid-js';
import type { CautionText, FaultKind } from '../../../../core/plan/index.ts';
import type { Request, RunView, StepView, TimerView } from '../../../../core/run/index.ts';
import { message, type Message } from '../../../../core/messages/index.ts';
import { MS_PER_MINUTE } from '../../../../core/units/index.ts';
import { lazyPage, say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { CautionLine } from '../../../parts/caution-line.tsx';
import { Countdown } from '../../../parts/countdown.tsx';
import { pouredFrom } from './concurrent-steps.ts';
import { BurnersTogether, ConcurrentKettles } from './concurrent-panel.tsx';
import { Checklist } from './lists/checklist.tsx';
import { GatePanel } from '../gates/gate-panel.tsx';
import { likelyFaults } from './likely-faults.ts';
import { leadTimer, mainAction } from './main-action.ts';
import { MainBar, type MainKey } from './main-bar.tsx';
import { stepCautions } from './step-cautions.ts';
import { placeOf, labelNow, sentenceOf, withRestEnd } from './step-text.ts';
import { checklistOf } from './lists/ticks.ts';

// The sentence and the button first, the picture right after them.
const StepPicture = lazyPage(
  ['pictures'],
  async () => (await import('./step-picture.tsx')).StepPicture,
);

// Before a run's first hour only, in the words of the plan.
const PrepareList = lazyPage(
  ['run-later', 'plan', 'custom'],
  async () => (await import('./lists/prepare-list.tsx')).PrepareList,
);

export type CurrentStepPanelProps = {
  readonly view: RunView;
  readonly step: StepView;
  readonly nowMs: number;
  readonly send: (request: Request) => void;
  readonly next: StepView | undefined;
  readonly onChoose: (stepId: string) => void;
  readonly onFault: (kind: FaultKind) => void;
  readonly onKey: (key: MainKey) => void;
};

/** The step that needs hands now: sentence, picture, digits, cautions, and one thing to press. */
export function CurrentStepPanel(props: CurrentStepPanelProps) {
  const action = createMemo(() => mainAction(props.view, props.step));
  const gate = () => {
    const a = action();
    return a.kind === 'gate' ? a.gate : undefined;
  };
  // A memo of its own: a condition written into the property would be a new, ownerless one at each press.
  const meanwhile = createMemo(() => (props.next?.status === 'ready' ? props.next : undefined));
  const kettle = () => {
    const { work } = props.step.step;
    return work.on === 'kettle' ? work : undefined;
  };
  // By the minute: a sentence names no seconds.
  const minuteMs = createMemo(() => Math.floor(props.nowMs / MS_PER_MINUTE) * MS_PER_MINUTE);
  const sayLine = (line: Message) => say(withRestEnd(props.view, props.step, line, minuteMs()));
  const gatesLeft = () => props.step.gates.filter((g) => g.value !== 'yes').length;
  const timer = createMemo(() => leadTimer(props.step));
  return (
    <section
      class="stage"
      classList={{
        'stage--picture': !gate() && props.step.step.picture !== undefined,
        'stage--clock': !gate() && timer() !== undefined,
      }}
      aria-label={t('run.now')}
      data-step={props.step.step.id}
      data-kind={props.step.step.kind}
      data-stage={props.step.step.stages[props.step.stage]?.role}
      data-kettle={kettle()?.kettle}
      data-kettles={kettle()?.of}
    >
      <StageHead {...props} />
      <h1 class="stage-sentence" aria-live="polite">
        {say(sentenceOf(props.step))}
      </h1>
      <Show
        when={!gate()}
        fallback={
          <GatePanel
            gate={gate()!}
            left={gatesLeft()}
            waits={props.step.timers.find((clock) => clock.role === 'freshness')}
            send={props.send}
          />
        }
      >
        <Middle {...props} timer={timer()} sayLine={sayLine} />
      </Show>
      <Foot {...props} />
      <MainBar
        action={action()}
        step={props.step}
        sayLine={sayLine}
        meanwhile={meanwhile()}
        send={props.send}
        onChoose={props.onChoose}
        onKey={props.onKey}
      />
    </section>
  );
}

function StageHead(props: CurrentStepPanelProps) {
  const about = (): Message => {
    const { step, attempt } = props.step;
    const phase = message(`common.phase.${step.phase}`);
    const vessel = pouredFrom(props.view, props.step);
    const told =
      vessel === ''
        ? message('run.step.about', { phase })
        : message('run.step.about-from', { phase, vessel });
    return attempt > 1 ? message('run.step.attempt', { about: told, attempt }) : told;
  };
  return (
    <header class="stage-head">
      <span class="stage-fixture">{placeOf(props.view, props.step)}</span>
      <span class="quiet">{say(about())}</span>
    </header>
  );
}

type MiddleProps = CurrentStepPanelProps & {
  readonly timer: TimerView | undefined;
  readonly sayLine: (line: Message) => string;
};

/** Picture and digits beside each other, below them what the hand must mind, then how it is done. */
function Middle(props: MiddleProps) {
  /** With a kettle in the hand only two cautions are read, and no list. */
  const isPour = () => props.step.step.kind === 'pour';
  const cautions = createMemo(() => stepCautions(props.view.plan, props.step));
  const here = () => `${props.step.step.id}/${props.step.stage}`;
  /** Where all of it was asked for; at the next stage it is put away again. */
  const [opened, setOpened] = createSignal('');
  const isOpen = () => !isPour() || opened() === here();
  const details = () => props.step.step.stages[props.step.stage]?.detail ?? [];
  const hidden = () => (isOpen() ? 0 : cautions().more.length + details().length);
  /** Between the hour that is planned by and the one after which nothing is purged. */
  const asked = () => {
    const { deadline } = props.view;
    const between = deadline?.hard && deadline.leftS === 0 && deadline.hardLeftS > 0;
    return between && props.step.step.phase === 'purge' ? deadline.hard.asks : undefined;
  };
  return (
    <>
      <Show when={props.step.step.picture}>
        <div class="stage-picture">
          <Suspense>
            <StepPicture view={props.view} step={props.step} />
          </Suspense>
        </div>
      </Show>
      <Show when={props.timer}>
        {(c) => <Countdown leftS={c().leftS} label={labelNow(c())} over={c().alerting} />}
      </Show>
      <div class="stage-words">
        <Show when={asked()}>{(asks) => <p class="stage-asks">{say(asks())}</p>}</Show>
        <Cautions shown={[...cautions().shown, ...(isOpen() ? cautions().more : [])]} />
        <BurnersTogether view={props.view} step={props.step} send={props.send} />
        <Show when={isPour()}>
          <ConcurrentKettles view={props.view} step={props.step} />
        </Show>
        <Show
          when={checklistOf(props.step).length > 0}
          fallback={
            <Show when={isOpen() && details().length > 0}>
              <ul class="stage-detail">
                <Index each={details()}>{(line) => <li>{props.sayLine(line())}</li>}</Index>
              </ul>
            </Show>
          }
        >
          <Checklist step={props.step} sayLine={props.sayLine} />
        </Show>
        <Show when={props.step.step.kind === 'prepare'}>
          <Suspense>
            <PrepareList view={props.view} step={props.step} />
          </Suspense>
        </Show>
        <Show when={hidden() > 0}>
          <Action
            class="button button--plain"
            name="more-cautions"
            onPress={() => setOpened(here())}
          >
            {t('run.step.more', { count: hidden() })}
          </Action>
        </Show>
      </div>
    </>
  );
}

/** What the hand must mind now. */
function Cautions(props: { readonly shown: readonly CautionText[] }) {
  return (
    <Show when={props.shown.length > 0}>
      <ul class="stage-cautions" aria-label={t('run.step.cautions')}>
        <Index each={props.shown}>{(caution) => <CautionLine caution={caution()} />}</Index>
      </ul>
    </Show>
  );
}

/** What comes next, and what to press when something goes wrong just now. */
function Foot(props: CurrentStepPanelProps) {
  const faults = () => likelyFaults(props.view, props.step);
  return (
    <div class="stage-foot">
      <p class="stage-next quiet">
        <Show when={props.next}>
          {(next) =>
            t('run.step.next', {
              step: next().step.title,
              lengthS: next().step.durationS.typical,
            })
          }
        </Show>
      </p>
      <Show when={faults().length > 0}>
        <div class="stage-faults" role="group" aria-label={t('run.step.faults')}>
          <Index each={faults()}>
            {(fault) => (
              <Action
                class="button button--plain"
                name={`fault-${fault().kind}`}
                onPress={() => props.onFault(fault().kind)}
              >
                {t('run.step.fault', { fault: fault().name })}
              </Action>
            )}
          </Index>
        </div>
      </Show>
    </div>
  );
}
