import { Index, Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { SheetCorner } from '../../../parts/sheets/sheet-corner.ts';
import { SwitchedOff } from '../../../parts/press/switched-off.ts';

/** One tap (or S, or Escape) opens what makes safe. Over a sheet it stands where it always stands. */
export function StopCorner(props: { overSheet?: boolean; onStop: () => void }) {
  return (
    // Never switched off, not even on a page that only shows.
    <SwitchedOff.Provider value={() => false}>
      <Action
        class={props.overSheet === true ? 'stop-corner stop-corner--over' : 'stop-corner'}
        name="stop"
        onPress={props.onStop}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M8 2h8l6 6v8l-6 6H8l-6-6V8z" fill="currentColor" />
        </svg>
        {t('run.stop')}
      </Action>
    </SwitchedOff.Provider>
  );
}

/** What to make safe with one's hands, and the press that stops the run. */
export function StopSafe(props: {
  view: RunView;
  onClose: () => void;
  send: (request: Request) => void;
  /** Present: another page leads the run, and only there can it be stopped. */
  lead: (() => void) | undefined;
}) {
  const stop = () => {
    props.onClose();
    props.send({ kind: 'stop-run', reason: t('run.stop.reason') });
  };
  return (
    // It is what the corner opens: it needs none, and is never switched off.
    <SwitchedOff.Provider value={() => false}>
      <SheetCorner.Provider value={undefined}>
        <Sheet label={t('run.stop.dialog')} onClose={props.onClose}>
          <h2>{t('run.stop')}</h2>
          <Show when={props.view.hot.length > 0} fallback={<p>{t('run.stop.nothing-hot')}</p>}>
            <p>{t('run.stop.first')}</p>
            <ul class="make-safe-list">
              <Index each={props.view.hot}>{(hot) => <li>{say(hot().makeSafe)}</li>}</Index>
            </ul>
          </Show>
          <p class="quiet">{t('run.stop.danger')}</p>
          <div class="button-row">
            <Show
              when={props.lead}
              fallback={
                <Action class="button button--danger" name="stop-run" onPress={stop}>
                  {t('run.stop.press')}
                </Action>
              }
            >
              {(lead) => (
                <Action class="button button--danger" name="stop-lead" onPress={() => lead()()}>
                  {t('run.stop.lead')}
                </Action>
              )}
            </Show>
            <Action class="button button--plain" name="keep-going" onPress={props.onClose}>
              {t('run.stop.keep-going')}
            </Action>
          </div>
        </Sheet>
      </SheetCorner.Provider>
    </SwitchedOff.Provider>
  );
}
