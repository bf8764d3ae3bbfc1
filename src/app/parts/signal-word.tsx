import { Show } from 'solid-js';
import type { SignalWord as Word } from '../../core/plan/index.ts';
import { t } from '../context/language.ts';

/** A signal word as ANSI Z535 has them: the word, the alert triangle, then the ISO 3864 colour. */
export function SignalWord(props: { word: Word }) {
  return (
    <span class={`signal signal--${props.word}`}>
      <Show when={props.word !== 'NOTICE'}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M10 1.6 19.2 18H.8z" fill="currentColor" />
          <path
            d="M10 7v5.2M10 14.2v1.9"
            stroke={`var(--${props.word.toLowerCase()})`}
            stroke-width="2"
          />
        </svg>
      </Show>
      {t(`common.signal.${props.word}`)}
    </span>
  );
}
