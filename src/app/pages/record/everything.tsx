import { createSignal, For, Show } from 'solid-js';
import type { Message } from '../../../core/messages/index.ts';
import type { BroughtBack } from '../../controllers/backup/bring-back.ts';
import { say, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';

/** What is done with everything that this tablet keeps. */
export type EverythingActions = {
  readonly onSave: () => void;
  /** Undefined: no file was chosen, or why not is told elsewhere. */
  readonly onBringBack: () => Promise<BroughtBack | { readonly refused: Message } | undefined>;
};

/** Kitchens, runs, ticks and choices in one file, and back. */
export function Everything(props: EverythingActions) {
  const [outcome, setOutcome] = createSignal<BroughtBack | { readonly refused: Message }>();
  const refused = () => {
    const now = outcome();
    return now && 'refused' in now ? now.refused : undefined;
  };
  const brought = () => {
    const now = outcome();
    return now && 'refused' in now ? undefined : now;
  };
  const bringBack = async (): Promise<void> => {
    setOutcome(undefined);
    setOutcome(await props.onBringBack());
  };
  return (
    <section class="everything" aria-label={t('record-page.everything')}>
      <h2>{t('record-page.everything')}</h2>
      <p class="quiet">{t('record-page.everything.about')}</p>
      <div class="button-row">
        <Action class="button button--plain" name="save-everything" onPress={props.onSave}>
          {t('record-page.everything.save')}
        </Action>
        <Action
          class="button button--plain"
          name="bring-everything-back"
          onPress={() => void bringBack()}
        >
          {t('record-page.everything.bring-back')}
        </Action>
      </div>
      <div role="status">
        <Show when={refused()}>{(why) => <p class="refusal">{say(why())}</p>}</Show>
        <Show when={brought()}>
          {(now) => (
            <>
              <p>{t('record-page.restored', now())}</p>
              <Show when={now().left.length > 0}>
                <p>{t('record-page.restored.left', { count: now().left.length })}</p>
                <ul>
                  <For each={now().left}>{(why) => <li>{say(why)}</li>}</For>
                </ul>
              </Show>
            </>
          )}
        </Show>
      </div>
    </section>
  );
}
