import { For, Show } from 'solid-js';
import {
  batchMessages,
  batchTimes,
  describeUtensils,
  outsideMessages,
  potMessage,
  utensilSections,
  type UtensilPlan,
} from '../../../../core/utensils/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { HandoutFrame } from './handout-frame.tsx';
import type { HandoutProps } from './handout-props.ts';
import { UtensilForm } from './utensil-form.tsx';
import { createWorked, foundOf, WhenWorked } from './worked.tsx';

/** Sections that are ticked off as they are done. */
const TICKED: readonly string[] = ['put-away', 'mikveh', 'methods'];
/** In the order of the work; what goes into the pot stands before them. */
const AFTER_POT = ['put-away', 'mikveh', 'questions', 'methods', 'rules'] as const;

/** What is done with the utensils: what goes into the pot with what, what is put away, what goes to the mikveh. */
export function UtensilHandout(props: HandoutProps) {
  const worked = createWorked('utensils', () => props.kitchen);
  const text = () => {
    const plan = foundOf(worked());
    return plan && (() => describeUtensils(plan, props.kitchen.name, translator()));
  };
  return (
    <HandoutFrame
      title={t('utensils.title', { kitchen: props.kitchen.name })}
      about={t('plan.customs-differ')}
      text={text()}
      class="utensils"
    >
      <Show when={props.onKitchen}>
        {(onKitchen) => <UtensilForm kitchen={props.kitchen} onKitchen={onKitchen()} />}
      </Show>
      <WhenWorked worked={worked()}>
        {(plan) => (
          <Show when={plan().choices.length > 0} fallback={<p>{t('utensils.none')}</p>}>
            <InThePot plan={plan()} />
            <Sections plan={plan()} />
          </Show>
        )}
      </WhenWorked>
    </HandoutFrame>
  );
}

function InThePot(props: { plan: UtensilPlan }) {
  const times = () => batchTimes(props.plan.batches, props.plan.firstBoilS!);
  return (
    <>
      <Show when={potMessage(props.plan)}>
        {(pot) => (
          <>
            <h3>{t('utensils.section.batches')}</h3>
            <p>{say(pot())}</p>
            <ol class="batches">
              <For each={props.plan.batches}>
                {(batch, at) => (
                  <>
                    <Show when={batch.freshWater}>
                      <li class="batch batch--water">{t('utensils.fresh-water')}</li>
                    </Show>
                    <li class="batch">
                      <span class="tick-box" aria-hidden="true" />
                      <div>
                        <strong>{say(batchMessages(batch).what)}</strong>
                        <Show when={times()[at()]}>
                          {(time) => <p>{t('handouts.utensils.time', time())}</p>}
                        </Show>
                        <For each={batchMessages(batch).how}>{(line) => <p>{say(line)}</p>}</For>
                      </div>
                    </li>
                  </>
                )}
              </For>
            </ol>
          </>
        )}
      </Show>
      <ul>
        <For each={outsideMessages(props.plan)}>{(line) => <li>{say(line)}</li>}</For>
      </ul>
    </>
  );
}

function Sections(props: { plan: UtensilPlan }) {
  const sections = () => {
    const all = utensilSections(props.plan, translator());
    return AFTER_POT.flatMap((id) => all.filter((one) => one.id === id && one.lines.length > 0));
  };
  return (
    <For each={sections()}>
      {({ id, lines }) => (
        <section class="utensils-part">
          <h3>{t(`utensils.section.${id}`)}</h3>
          <ul classList={{ 'utensils-ticked': TICKED.includes(id) }}>
            <For each={lines}>
              {({ depth, text }) => (
                <li classList={{ 'utensils-below': depth > 0 }}>
                  <Show when={depth === 0 && TICKED.includes(id)}>
                    <span class="tick-box" aria-hidden="true" />
                  </Show>
                  <span>{say(text)}</span>
                </li>
              )}
            </For>
          </ul>
        </section>
      )}
    </For>
  );
}
