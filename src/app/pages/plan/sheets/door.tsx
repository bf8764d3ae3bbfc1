import { createMemo, For, Show } from 'solid-js';
import { doorSheet, doorSheetText, type DoorCase } from '../../../../core/sheets/index.ts';
import { say, t, translator } from '../../../context/language.ts';
import { SheetFrame } from './sheet-frame.tsx';
import type { SheetProps } from './sheet-props.ts';

const LOG_HEADS = ['when', 'where', 'what', 'answer'] as const;
/** Empty lines to write on; as many as fit under the cases on one page. */
const LOG_ROWS = Array.from({ length: 5 }, (_, at) => at);

/** One page for the door of the kitchen: what to do when something happens later. */
export function DoorSheet(props: SheetProps) {
  const sheet = createMemo(() => doorSheet(props.plan));
  return (
    <SheetFrame
      title={t('sheets.door.title', { kitchen: props.plan.kitchen.name })}
      text={() => doorSheetText(props.plan, translator())}
      class="door"
    >
      <p>{t('sheets.door.about')}</p>
      <h3>{t('sheets.door.danger')}</h3>
      <p class="door-call">
        <Show
          when={sheet().emergencyNumber}
          fallback={
            <>
              {t('sheets.door.call-local')} <i class="write-in" />
            </>
          }
        >
          {(number) => t('sheets.door.call', { number: number() })}
        </Show>
      </p>
      <Cases cases={sheet().danger} />
      <h3>{t('sheets.door.later')}</h3>
      <Cases cases={sheet().later} />
      <p class="door-ask">
        {t('sheets.door.ask')} <i class="write-in" /> {t('sheets.door.phone')}{' '}
        <i class="write-in" />
      </p>
      <table class="door-log">
        <thead>
          <tr>
            <For each={LOG_HEADS}>{(id) => <th scope="col">{t(`sheets.door.log.${id}`)}</th>}</For>
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
    </SheetFrame>
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
