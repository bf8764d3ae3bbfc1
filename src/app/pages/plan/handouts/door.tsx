import { createMemo, For, Show } from 'solid-js';
import { doorHandout, doorHandoutText, type DoorCase } from '../../../../core/handouts/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { HandoutFrame } from './handout-frame.tsx';
import type { HandoutProps } from './handout-props.ts';

const LOG_HEADS = ['when', 'where', 'what', 'answer'] as const;
/** Empty lines to write on; as many as fit under the cases on one page. */
const LOG_ROWS = Array.from({ length: 5 }, (_, at) => at);

/** One page for the door of the kitchen: what to do when something happens later. */
export function DoorHandout(props: HandoutProps) {
  const handout = createMemo(() => doorHandout(props.plan));
  return (
    <HandoutFrame
      title={t('handouts.door.title', { kitchen: props.plan.kitchen.name })}
      text={() => doorHandoutText(props.plan, translator())}
      class="door"
    >
      <p>{t('handouts.door.about')}</p>
      <h3>{t('handouts.door.danger')}</h3>
      <p class="door-call">
        <Show
          when={handout().emergencyNumber}
          fallback={
            <>
              {t('handouts.door.call-local')} <i class="write-in" />
            </>
          }
        >
          {(number) => t('handouts.door.call', { number: number() })}
        </Show>
      </p>
      <Cases cases={handout().danger} />
      <h3>{t('handouts.door.later')}</h3>
      <Cases cases={handout().later} />
      <p class="door-ask">
        {t('handouts.door.ask')} <i class="write-in" /> {t('handouts.door.phone')}{' '}
        <i class="write-in" />
      </p>
      <table class="door-log">
        <thead>
          <tr>
            <For each={LOG_HEADS}>
              {(id) => <th scope="col">{t(`handouts.door.log.${id}`)}</th>}
            </For>
          </tr>
        </thead>
        <tbody aria-hidden="true">
          <For each={LOG_ROWS}>
            {() => (
              <tr>
                <For each={LOG_HEADS}>{() => <td />}</For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </HandoutFrame>
  );
}

function Cases(props: { cases: readonly DoorCase[] }) {
  return (
    <div class="door-cases">
      <For each={props.cases}>
        {({ id, title, lines }) => (
          <section class="door-case" data-case={id}>
            <h4>{say(title)}</h4>
            <ol>
              <For each={lines}>{(line) => <li>{say(line)}</li>}</For>
            </ol>
          </section>
        )}
      </For>
    </div>
  );
}
