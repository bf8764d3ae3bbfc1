import { createEffect, createMemo, on, onCleanup, onMount, Show } from 'solid-js';
import type { Message } from '../../../../core/messages/index.ts';
import type { GateView, Request, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import type { MainAction } from './main-action.ts';
import { openLines, tick } from './lists/ticks.ts';

/**
 * A button that has just become another is not pressed by the finger that was
 * on its way, nor by the bounce of a wet one that has just pressed it, ms.
 */
const JUST_CHANGED_MS = 350;
/** Nobody has poured cold water this soon after the boiling: a press is the last one's echo, ms. */
const COLD_NOT_YET_MS = 1000;

/** The page-wide key or pedal for the main action; `gate`: it waits for a press on the button itself. */
export type MainKey = { readonly press: () => void } | 'gate' | undefined;

export type MainBarProps = {
  readonly action: MainAction;
  readonly step: StepView;
  /** A line of a list, with the hour where it has one. */
  readonly sayLine: (line: Message) => string;
  /** What hands can do while this one waits. */
  readonly meanwhile: StepView | undefined;
  readonly send: (request: Request) => void;
  readonly onChoose: (stepId: string) => void;
  /** Told which press a key or a pedal stands for just now. */
  readonly onKey: (key: MainKey) => void;
};

/** The one thing to press, full width; what it is follows the step. */
export function MainBar(props: MainBarProps) {
  const lines = () => openLines(props.step);
  const ticking = () => props.action.kind === 'press' && lines().length > 0;
  const press = () => (props.action.kind === 'press' && !ticking() ? props.action : undefined);
  const gate = () => (props.action.kind === 'gate' ? props.action.gate : undefined);
  const wait = () => (props.action.kind === 'wait' ? props.action : undefined);
  const meanwhile = () => (wait() ? props.meanwhile : undefined);
  // The view is new each second; the key only when the button becomes another one.
  const key = createMemo(
    () =>
      `${props.step.step.id} ${props.action.kind} ${JSON.stringify(press()?.label) ?? gate()?.gate.id ?? lines()[0]?.id ?? ''} ${meanwhile()?.step.id ?? ''}`,
  );
  const changedAtMs = createMemo(on(key, () => performance.now()));
  const soonestMs = () => {
    const confirms = press()?.request.kind === 'confirm';
    const role = props.step.step.stages[props.step.stage]?.role;
    return confirms && role === 'cold' ? COLD_NOT_YET_MS : JUST_CHANGED_MS;
  };
  const settled = (then: () => void) => () => {
    if (performance.now() - changedAtMs() >= soonestMs()) then();
  };
  const answer = (g: GateView, is: 'yes' | 'no') =>
    props.send({ kind: 'answer-gate', gate: g.gate.id, scopeKey: g.scopeKey, answer: is });
  const doIt = () => {
    const [line] = lines();
    if (ticking() && line) return tick(props.step, [line]);
    const now = press();
    if (now) return props.send(now.request);
    const next = meanwhile();
    if (next) props.onChoose(next.step.id);
  };
  createEffect(() => {
    const can = ticking() || press() !== undefined || meanwhile() !== undefined;
    props.onKey(gate() ? 'gate' : can ? { press: settled(doIt) } : undefined);
  });
  onCleanup(() => props.onKey(undefined));
  let bar: HTMLDivElement | undefined;
  keepFocus(() => bar, key);
  return (
    <div class="main-bar" ref={(element) => (bar = element)}>
      <Show when={ticking()}>
        <Action class="main-action main-action--tick" name="tick" onPress={settled(doIt)}>
          <small>{t('run.action.ticks-left', { count: lines().length })}</small>
          <Show when={lines()[0]}>{(line) => <>{props.sayLine(line().text)}</>}</Show>
        </Action>
      </Show>
      <Show when={press()}>
        {(p) => (
          <Action
            class={`main-action${p().urgent ? ' main-action--urgent' : ''}`}
            name={p().request.kind}
            onPress={settled(doIt)}
          >
            {say(p().label)}
          </Action>
        )}
      </Show>
      <Show when={gate()}>
        {(g) => (
          <div class="gate-answers">
            <Action
              class="main-action main-action--asked"
              name="answer-gate"
              onPress={settled(() => answer(g(), 'yes'))}
            >
              {t('run.action.yes')}
            </Action>
            <Action
              class="main-action main-action--asked"
              name="answer-gate-no"
              onPress={settled(() => answer(g(), 'no'))}
            >
              {t('run.action.no')}
            </Action>
          </div>
        )}
      </Show>
      <Show when={wait()}>
        {(w) => (
          <Show when={meanwhile()} fallback={<div class="main-wait">{say(w().label)}</div>}>
            {(step) => (
              <Action
                class="main-action main-action--meanwhile"
                name="meanwhile"
                onPress={settled(doIt)}
              >
                <small>{t('run.action.meanwhile')}</small>
                {say(step().step.title)}
              </Action>
            )}
          </Show>
        )}
      </Show>
    </div>
  );
}

/**
 * The focus of a keyboard follows the main action from one to the next, so
 * that a run can be gone through with one key. A gate breaks the row: the
 * focus goes to its question, and the button has to be reached anew.
 */
function keepFocus(bar: () => HTMLElement | undefined, key: () => string): void {
  let ours = false;
  const follow = (event: FocusEvent): void => {
    ours = event.target instanceof Node && (bar()?.contains(event.target) ?? false);
  };
  onMount(() => document.addEventListener('focusin', follow));
  onCleanup(() => document.removeEventListener('focusin', follow));
  createEffect(
    on(
      key,
      () => {
        if (!ours || document.querySelector('dialog[open]')) return;
        const question = document.querySelector<HTMLElement>('.gate-ask');
        (question ?? bar()?.querySelector<HTMLElement>('button'))?.focus();
        ours = true;
      },
      { defer: true },
    ),
  );
}
