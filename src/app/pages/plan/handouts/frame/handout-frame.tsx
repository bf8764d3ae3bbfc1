import { createSignal, type JSX, Show } from 'solid-js';
import { copyText, downloadText, shareText } from '../../../../../host/files/index.ts';
import { t } from '../../../../context/language.ts';
import { fileName } from '../../../../parts/file-name.ts';
import { Action } from '../../../../parts/press/action.tsx';
import { printOnly } from '../../../../parts/print-only.ts';

/** A handout with its title and what can be done with it: print it, and send it where it has a text. */
export function HandoutFrame(props: {
  title: string;
  about?: string;
  /** As plain text, made when it is sent; absent: it is only printed. */
  text?: (() => string) | undefined;
  class?: string;
  children: JSX.Element;
}) {
  const [told, setTold] = createSignal<'copied' | 'not-copied'>();
  const send = async (text: string): Promise<void> => {
    const name = fileName({ called: props.title, atWallMs: Date.now(), ending: '.txt' });
    const file = { name, text, type: 'text/plain' };
    const shared = await shareText(file, props.title);
    if (shared === 'not-supported' || shared === 'failed') downloadText(file);
  };
  const copy = async (text: string): Promise<void> => {
    setTold((await copyText(text)) ? 'copied' : 'not-copied');
  };
  return (
    <section class={`around ${props.class ?? ''}`} aria-label={props.title}>
      <header class="around-head">
        <h2>{props.title}</h2>
        <div class="button-row">
          <Action
            class="button button--plain"
            name="print-handout"
            onPress={() => printOnly('handouts')}
          >
            {t('handouts.print')}
          </Action>
          <Show when={props.text}>
            {(text) => (
              <>
                <Action class="button button--plain" onPress={() => void send(text()())}>
                  {t('handouts.send')}
                </Action>
                <Action class="button button--plain" onPress={() => void copy(text()())}>
                  {t('handouts.copy')}
                </Action>
              </>
            )}
          </Show>
        </div>
      </header>
      <p class="quiet around-about" role="status">
        <Show when={told()} fallback={props.about}>
          {(how) => t(`handouts.${how()}`)}
        </Show>
      </p>
      {props.children}
    </section>
  );
}
