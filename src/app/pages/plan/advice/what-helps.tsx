import { createEffect, createSignal, For, onCleanup, Show } from 'solid-js';
import {
  changeMessage,
  inVainMessages,
  savingMessage,
  triageMessages,
  withChange,
  type Advice,
  type Change,
} from '../../../../core/advice/index.ts';
import type { Kitchen } from '../../../../core/kitchen/index.ts';
import type { Plan, PlanOptions } from '../../../../core/plan/index.ts';
import { say, t } from '../../../context/language.ts';
import { tabletZone } from '../../../context/zone.ts';
import { Action } from '../../../parts/press/action.tsx';
import { createLook } from './look.ts';

/** So many are shown at once, the best ones. */
const FIRST = 3;
/** A late plan is helped by itself once it has stood for this long, ms: not while a beginning is being typed. */
const STANDS_MS = 1200;

/** What is only tried until somebody says who decided it. */
export type SaidChange = Extract<Change, { readonly kind: 'answer' | 'cover' }>;

/** What was taken, and how it is given back; `leaves`: the kitchen as it was left, after which another edit counts. */
type Taken = { readonly change: Change; readonly undo: () => void; readonly leaves?: Kitchen };

type Props = {
  plan: Plan;
  options: PlanOptions;
  kitchen: Kitchen;
  onKitchen: ((kitchen: Kitchen) => void) | undefined;
  begin: { startWallMs: number; onChange: (startWallMs: number) => void } | undefined;
  onSay: (change: SaidChange) => void;
  /** What helps is looked for without being asked. */
  isLate: boolean;
};

/** One press changes the kitchen or the beginning; the other press puts it back. */
function createTaking(props: Props) {
  const [taken, setTaken] = createSignal<Taken>();
  const takeStart = (change: Extract<Change, { readonly kind: 'start' }>) => {
    const before = props.begin?.startWallMs;
    if (before === undefined) return;
    setTaken({ change, undo: () => props.begin?.onChange(before) });
    props.begin?.onChange(change.startWallMs);
  };
  const take = (change: Change): void => {
    if (change.kind === 'answer' || change.kind === 'cover') return props.onSay(change);
    if (change.kind === 'start') return takeStart(change);
    const before = props.kitchen;
    props.onKitchen?.(withChange({ kitchen: before, options: {} }, change).kitchen);
    const leaves = props.kitchen;
    // A demo became a kitchen of its own, with a name of its own.
    const undo = () => props.onKitchen?.({ ...before, name: leaves.name });
    setTaken({ change, undo, leaves });
  };
  const mayUndo = () => {
    const now = taken();
    return now && (now.leaves === undefined || now.leaves === props.kitchen) ? now : undefined;
  };
  const undo = () => {
    mayUndo()?.undo();
    setTaken(undefined);
  };
  return { take, undo, mayUndo };
}

function takeText({ kind }: Change): string {
  if (kind === 'answer' || kind === 'cover') return t('advice.take.said');
  return kind === 'last-hot' ? t('advice.take.last-hot') : t('advice.take');
}

/** What would make this plan better, worked out when it is asked for. */
export function WhatHelps(props: Props) {
  const { found, progress, look, stop } = createLook(() => ({
    situation: { kitchen: props.plan.kitchen, options: props.options },
    plan: props.plan,
  }));
  createEffect(() => {
    if (!props.isLate || !props.plan) return;
    const timer = setTimeout(() => void look(), STANDS_MS);
    onCleanup(() => clearTimeout(timer));
  });
  const taking = createTaking(props);
  const told = (change: Change) => {
    const { kitchen } = props.plan;
    return changeMessage(change, kitchen, kitchen.place?.zone ?? tabletZone());
  };
  const row = ({ change, saving }: Advice) => (
    <li data-change={change.kind}>
      <p>
        {say(told(change))} <b>{say(savingMessage(saving))}</b>
      </p>
      <Show when={props.onKitchen && (change.kind !== 'start' || props.begin)}>
        <Action class="button" name="take-advice" onPress={() => taking.take(change)}>
          {takeText(change)}
        </Action>
      </Show>
    </li>
  );
  return (
    <section
      class="advice"
      classList={{ 'advice--open': found() !== undefined || taking.mayUndo() !== undefined }}
      aria-label={t('advice.heading')}
    >
      <Show when={taking.mayUndo()}>
        {(now) => (
          <p class="advice-taken" role="status">
            {t('advice.taken', { change: told(now().change) })}
            <Action class="button button--plain" name="undo-advice" onPress={taking.undo}>
              {t('advice.undo')}
            </Action>
          </p>
        )}
      </Show>
      <Show
        when={found()}
        fallback={
          <Show
            when={progress()}
            fallback={
              <Action class="button" name="what-would-help" onPress={() => void look()}>
                {t('advice.heading')}
              </Action>
            }
          >
            {(now) => (
              <p class="advice-taken" role="status">
                {t('advice.trying', now())}
                <Action class="button button--plain" name="stop-advice" onPress={stop}>
                  {t('advice.stop')}
                </Action>
              </p>
            )}
          </Show>
        }
      >
        {(list) => (
          <>
            <h2>{t('advice.heading')}</h2>
            <ol class="advice-list">
              <For each={list().advice.slice(0, FIRST)} fallback={<li>{t('advice.none')}</li>}>
                {row}
              </For>
            </ol>
            <details>
              <summary>
                {t('advice.more', {
                  many: Math.max(0, list().advice.length - FIRST),
                  triage: list().triage !== undefined,
                })}
              </summary>
              <p class="quiet">{t('advice.about')}</p>
              <ol class="advice-list">
                <For each={list().advice.slice(FIRST)}>{row}</For>
              </ol>
              <For each={inVainMessages(list())}>{(one) => <p class="quiet">{say(one)}</p>}</For>
              <Show when={list().triage}>
                {(triage) => (
                  <>
                    <h3>{t('advice.triage.heading')}</h3>
                    <For each={triageMessages(triage(), props.plan)}>
                      {(one) => <p>{say(one)}</p>}
                    </For>
                  </>
                )}
              </Show>
            </details>
          </>
        )}
      </Show>
    </section>
  );
}
