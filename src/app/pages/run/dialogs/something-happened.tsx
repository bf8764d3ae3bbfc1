import { createSignal, For, Match, Show, Switch } from 'solid-js';
import { asWritten, type Message } from '../../../../core/messages/index.ts';
import type { VesselUnit } from '../../../../core/plan/index.ts';
import type { Request, RunView, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

type Part = 'menu' | 'used' | 'skip' | 'note';

type HappenedProps = {
  readonly view: RunView;
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
  const done = (request: Request) => {
    props.send(request);
    props.onClose();
  };
  return (
    <Sheet label={t('run.happened')} onClose={props.onClose}>
      <h2>{t('run.happened')}</h2>
      <Show
        when={part() === 'menu'}
        fallback={<Told {...props} part={part()} onPart={setPart} done={done} />}
      >
        <Menu {...props} onPart={setPart} done={done} />
      </Show>
    </Sheet>
  );
}

function Menu(props: PartProps) {
  return (
    <>
      <div class="fault-list">
        <For each={props.view.plan.faults}>
          {(fault) => (
            <Action
              class="button"
              name={`fault-${fault.kind}`}
              onPress={() =>
                props.done({
                  kind: 'report-fault',
                  fault: fault.kind,
                  ...(props.step ? { step: props.step.step.id } : {}),
                })
              }
            >
              {say(fault.name)}
            </Action>
          )}
        </For>
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
      <div class="button-row">
        <Action class="button button--plain" name="used" onPress={() => props.onPart('used')}>
          {t('run.happened.used')}
        </Action>
        <Show when={props.step}>
          <Action class="button button--plain" name="skip" onPress={() => props.onPart('skip')}>
            {t('run.happened.skip')}
          </Action>
        </Show>
        <Action class="button button--plain" name="note" onPress={() => props.onPart('note')}>
          {t('run.happened.note')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}

function titleOf({ steps }: RunView, id: string): Message {
  return steps.find(({ step }) => step.id === id)?.step.title ?? asWritten(id);
}

/** Kettles of the plan, purged by it or not. */
function vesselsOf(view: RunView): readonly VesselUnit[] {
  const vessels = view.plan.steps.flatMap(({ work }) =>
    work.on === 'vessel' || work.on === 'kettle' ? [work.vessel] : [],
  );
  return vessels.filter(({ id }, at) => vessels.findIndex((one) => one.id === id) === at);
}

/** What needs a person's own words first. */
function Told(props: PartProps & { readonly part: Part }) {
  const [text, setText] = createSignal('');
  const words = () => text().trim();
  const Used = (used: { id: string; name: string | undefined }) => (
    <Action
      class="button"
      name={`used-${used.id}`}
      disabled={words() === ''}
      onPress={() => props.done({ kind: 'report-recheck', fixture: used.id, text: words() })}
    >
      {used.name}
    </Action>
  );
  const fixtureName = (id: string) =>
    props.view.plan.kitchen.fixtures.find((one) => one.id === id)?.name;
  return (
    <>
      <label class="field">
        <span>{t(props.part === 'skip' ? 'run.happened.skip.why' : 'run.happened.what')}</span>
        <input
          name="what"
          value={text()}
          onInput={(event) => setText(event.currentTarget.value)}
          maxLength={300}
        />
      </label>
      <Show when={props.part === 'used'}>
        <p class="quiet">{t('run.happened.used.about')}</p>
        <div class="fault-list">
          <For each={props.view.plan.methods}>
            {({ fixture }) => <Used id={fixture} name={fixtureName(fixture)} />}
          </For>
          <For each={vesselsOf(props.view)}>
            {({ id, name }) => <Used id={id} name={say(name)} />}
          </For>
        </div>
      </Show>
      <div class="button-row">
        <Switch>
          <Match when={props.part === 'skip' && props.step}>
            {(step) => (
              <Action
                class="button button--ember"
                name="skip-step"
                disabled={words() === ''}
                onPress={() =>
                  props.done({ kind: 'skip-step', step: step().step.id, reason: words() })
                }
              >
                {t('run.happened.skip.press')}
              </Action>
            )}
          </Match>
          <Match when={props.part === 'note'}>
            <Action
              class="button button--ember"
              name="keep-note"
              disabled={words() === ''}
              onPress={() => props.done({ kind: 'note', text: words() })}
            >
              {t('run.happened.note.press')}
            </Action>
          </Match>
        </Switch>
        <Action class="button button--plain" name="back" onPress={() => props.onPart('menu')}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}
