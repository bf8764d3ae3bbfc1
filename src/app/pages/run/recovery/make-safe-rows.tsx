import { Index, Show } from 'solid-js';
import type { HotView, Request } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';

/** What is hot, how it is made safe, and a person's word for each that waits for one. */
export function MakeSafeRows(props: {
  hot: readonly HotView[];
  /** Does this one wait for a word now? */
  asks: (hot: HotView) => boolean;
  send: (request: Request) => void;
}) {
  return (
    <ul class="make-safe-rows">
      <Index each={props.hot}>
        {(hot) => (
          <li data-step={hot().step}>
            <span>{say(hot().makeSafe)}</span>
            <Show when={hot().confirmed}>
              <span class="quiet">{t('run.make-safe.done')}</span>
            </Show>
            <Show when={!hot().confirmed && props.asks(hot())}>
              <Action
                class="button button--ember"
                name="confirm-safe"
                onPress={() => props.send({ kind: 'confirm-safe', step: hot().step })}
              >
                {t('run.make-safe.press')}
              </Action>
            </Show>
          </li>
        )}
      </Index>
    </ul>
  );
}
