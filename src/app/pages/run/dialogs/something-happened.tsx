import { createSignal, For, Match, Show, Switch } from 'solid-js';
import { asWritten, type Message } from '../../../../core/messages/index.ts';
import type { FaultKind, FaultPolicy } from '../../../../core/plan/index.ts';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { WordsField } from '../../../parts/words-field.tsx';
import { fittingFaults } from '../step/likely-faults.ts';
import { Used } from './used.tsx';

/** Where a person is in danger; below them stands what is wrong with the work. */
const DANGERS: readonly FaultKind[] = ['fire', 'gas-smell', 'co-alarm', 'unwell'];

function isDanger(kind: FaultKind): boolean {
  return kind === 'burned' || DANGERS.includes(kind);
}

type Part = 'menu' | 'used' | 'skip' | 'note';

type HappenedProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly step: StepView | undefined;
  readonly send: (request: Request) => void;
  readonly onClose: () => void;
};

type PartProps = HappenedProps & {
  readonly onPart: (part: Part) => void;
  /** Sends it and closes the sheet. */
  readonly done: (request: Request) => void;
};

/** Faults, fixtures used, skips and notes: everything that is not the plan, one tap away. */
export function SomethingHappened(props: HappenedProps) {
  const [part, setPart] = createSignal<Part>('menu');
  const worded = () => {
    const now = part();
    return now === 'skip' || now === 'note' ? now : undefined;
  };
  const done = (request: Request) => {
    props.send(request);
    props.onClose();
  };
  return (
    <Sheet label={t('run.happened')} onClose={props.onClose} wide>
      <h2>{t(part() === 'used' ? 'run.happened.used' : 'run.happened')}</h2>
      <Switch fallback={<Menu {...props} onPart={setPart} done={done} />}>
        <Match when={part() === 'used'}>
          <Used {...props} onBack={() => setPart('menu')} />
        </Match>
        <Match when={worded()}>
          {(which) => <Told {...props} part={which()} onPart={setPart} done={done} />}
        </Match>
      </Switch>
    </Sheet>
  );
}

/** Life first, then what this step is known for, then everything else behind one press. */
function Menu(props: PartProps) {
  const [isOther, setOther] = createSignal(false);
  const here = () => (props.step ? fittingFaults(props.view, props.step) : []);
  const others = () =>
    props.view.plan.faults.filter((fault) => !isDanger(fault.kind) && !here().includes(fault));
  return (
    <>
      <Dangers {...props} />
      <h3>{t('run.happened.here')}</h3>
      <div class="fault-list">
        <For each={here()}>{(fault) => <FaultButton {...props} fault={fault} />}</For>
        <Action class="button" name="used" onPress={() => props.onPart('used')}>
          {t('run.happened.used')}
        </Action>
        <Show when={props.step}>
          <Action class="button" name="skip" onPress={() => props.onPart('skip')}>
            {t('run.happened.skip')}
          </Action>
        </Show>
      </div>
      <Show when={isOther()}>
        <div class="fault-list">
          <For each={others()}>{(fault) => <FaultButton {...props} fault={fault} />}</For>
          <For each={props.view.reviewAnswers}>
            {({ id, step }) => (
              <Action
                class="button button--plain"
                name={`broke-off-${step}`}
                onPress={() => props.done({ kind: 'withdraw-review-answer', question: id })}
              >
                {t('run.happened.broke-off', { step: titleOf(props.view, step) })}
              </Action>
            )}
          </For>
        </div>
      </Show>
      <div class="button-row">
        <Action
          class="button button--plain button--big"
          name="other"
          pressed={isOther()}
          onPress={() => setOther(!isOther())}
        >
          {t('run.happened.other')}
        </Action>
        <Action
          class="button button--plain button--big"
          name="note"
          onPress={() => props.onPart('note')}
        >
          {t('run.happened.note')}
        </Action>
        <Action class="button button--plain button--big" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}

/** A burn first: its clock starts with the press, and nothing is asked before. It is about a person, so about no step. */
function Dangers(props: PartProps) {
  const known = () =>
    DANGERS.flatMap((kind) => props.view.plan.faults.find((fault) => fault.kind === kind) ?? []);
  return (
    <section class="dangers" aria-labelledby="dangers">
      <h3 id="dangers" class="caution-line">
        <SignalWord word="DANGER" /> {t('run.happened.danger')}
      </h3>
      <div class="danger-list">
        <Action
          class="button danger danger--first"
          name="fault-burned"
          onPress={() => props.done({ kind: 'report-fault', fault: 'burned' })}
        >
          {t('cautions.fault.burned.name')}
          <small>{t('run.happened.burned.about')}</small>
        </Action>
        <For each={known()}>
          {(fault) => <FaultButton {...props} class="danger" fault={fault} />}
        </For>
      </div>
    </section>
  );
}

function FaultButton(props: PartProps & { fault: FaultPolicy; class?: string }) {
  return (
    <Action
      class={`button ${props.class ?? ''}`}
      name={`fault-${props.fault.kind}`}
      onPress={() =>
        props.done({
          kind: 'report-fault',
          fault: props.fault.kind,
          ...(props.step ? { step: props.step.step.id } : {}),
        })
      }
    >
      {say(props.fault.name)}
    </Action>
  );
}

function titleOf({ steps }: RunView, id: string): Message {
  return steps.find(({ step }) => step.id === id)?.step.title ?? asWritten(id);
}

/** What needs a person's own words: asked for when it is pressed without. */
function Told(props: PartProps & { readonly part: 'skip' | 'note' }) {
  const [text, setText] = createSignal('');
  const [lacks, setLacks] = createSignal(false);
  let input: HTMLInputElement | undefined;
  const tell = () => {
    const words = text().trim();
    if (words === '') {
      setLacks(true);
      input?.focus();
      return;
    }
    if (props.part === 'note') props.done({ kind: 'note', text: words });
    else if (props.step) props.done({ kind: 'skip-step', step: props.step.step.id, reason: words });
  };
  return (
    <>
      <WordsField
        ref={(element) => (input = element)}
        label={t(props.part === 'skip' ? 'run.happened.skip.why' : 'run.happened.what')}
        name="what"
        words={text()}
        onWords={setText}
      />
      <Show when={lacks() && text().trim() === ''}>
        <p class="refusal" role="alert">
          {t('run.happened.words-first')}
        </p>
      </Show>
      <div class="button-row">
        <Action
          class="button button--ember"
          name={props.part === 'skip' ? 'skip-step' : 'keep-note'}
          onPress={tell}
        >
          {t(`run.happened.${props.part}.press`)}
        </Action>
        <Action class="button button--plain" name="back" onPress={() => props.onPart('menu')}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}
