import { Index, Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';

/** Always in the same corner: one tap (or S, or Escape) opens it, a second one stops. */
export function StopSafe(props: {
  view: RunView;
  open: boolean;
  onOpen: (open: boolean) => void;
  send: (request: Request) => void;
}) {
  const stop = () => {
    props.onOpen(false);
    props.send({ kind: 'stop-run', reason: t('run.stop.reason') });
  };
  return (
    <>
      <Action class="stop-corner" name="stop" onPress={() => props.onOpen(true)}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M8 2h8l6 6v8l-6 6H8l-6-6V8z" fill="currentColor" />
        </svg>
        {t('run.stop')}
      </Action>
      <Show when={props.open}>
        <Sheet label={t('run.stop.dialog')} onClose={() => props.onOpen(false)}>
          <h2>{t('run.stop')}</h2>
          <Show when={props.view.hot.length > 0} fallback={<p>{t('run.stop.nothing-hot')}</p>}>
            <p>{t('run.stop.first')}</p>
            <ul class="make-safe-list">
              <Index each={props.view.hot}>{(hot) => <li>{say(hot().makeSafe)}</li>}</Index>
            </ul>
          </Show>
          <p class="quiet">{t('run.stop.danger')}</p>
          <div class="button-row">
            <Action class="button button--danger" name="stop-run" onPress={stop}>
              {t('run.stop.press')}
            </Action>
            <Action
              class="button button--plain"
              name="keep-going"
              onPress={() => props.onOpen(false)}
            >
              {t('run.stop.keep-going')}
            </Action>
          </div>
        </Sheet>
      </Show>
    </>
  );
}
