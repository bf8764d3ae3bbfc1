import { For } from 'solid-js';
import { LANGUAGES } from '../../../core/messages/languages/index.ts';
import { t, translator } from '../../context/language.ts';

const OFFERED = LANGUAGES.filter(({ isOffered }) => isOffered);

/** Each language by the name its own readers give it. */
export function LanguageChoice(props: { onLanguage: (tag: string) => void }) {
  return (
    <select
      name="language"
      aria-label={t('run.choices.language')}
      value={translator().language}
      onChange={(event) => props.onLanguage(event.currentTarget.value)}
    >
      <For each={OFFERED}>
        {({ name, tag }) => (
          <option value={tag} lang={tag}>
            {name}
          </option>
        )}
      </For>
    </select>
  );
}
