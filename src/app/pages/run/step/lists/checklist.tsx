import { Index, Show } from 'solid-js';
import type { Message } from '../../../../../core/messages/index.ts';
import type { StepView } from '../../../../../core/run/index.ts';
import { t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { checklistOf, isTicked, openLines, tick } from './ticks.ts';

/** Where food hides, line by line; a touch ticks and unticks. The step ends when no line is open. */
export function Checklist(props: { step: StepView; sayLine: (line: Message) => string }) {
  return (
    <div class="checklist">
      <ul>
        <Index each={checklistOf(props.step)}>
          {(line) => (
            <li>
              <Action
                class="tick-row"
                name="tick-row"
                pressed={isTicked(props.step, line())}
                onPress={() => tick(props.step, [line()], !isTicked(props.step, line()))}
              >
                <svg viewBox="0 0 28 28" aria-hidden="true">
                  <rect x="3" y="3" width="22" height="22" rx="6" />
                  <Show when={isTicked(props.step, line())}>
                    <path d="m7.5 14.5 4.5 4.6 8.5-10" />
                  </Show>
                </svg>
                <span>{props.sayLine(line().text)}</span>
              </Action>
            </li>
          )}
        </Index>
      </ul>
      <Show when={openLines(props.step).length > 0}>
        <Action
          class="button button--plain checklist-rest"
          name="tick-rest"
          onPress={() => tick(props.step, openLines(props.step))}
        >
          {t('run.checklist.rest')}
        </Action>
      </Show>
    </div>
  );
}
