import { createSignal, For, Show } from 'solid-js';
import { t, written } from '../../context/language.ts';
import type { Report } from '../../../core/report/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { WordsField } from '../../parts/words-field.tsx';

/**
 * Something happened to a treated place after its run had closed: a small run
 * for what it touches, which begins with the question whether it matters.
 */
export function RecheckAfterwards(props: {
  record: Report;
  onDoubt: (fixtureIds: readonly string[], what: string) => void;
}) {
  const [open, setOpen] = createSignal(false);
  const [what, setWhat] = createSignal('');
  const [touched, setTouched] = createSignal<readonly string[]>([]);
  const toggle = (id: string) =>
    setTouched((now) => (now.includes(id) ? now.filter((one) => one !== id) : [...now, id]));
  const ready = () => touched().length > 0 && what().trim() !== '';
  return (
    <section class="doubt" aria-label={t('record-page.recheck.region')}>
      <h2>{t('record-page.recheck.title')}</h2>
      <p class="quiet">{t('record-page.recheck.about')}</p>
      <Show
        when={open()}
        fallback={
          <Action class="button" onPress={() => setOpen(true)}>
            {t('record-page.recheck.open')}
          </Action>
        }
      >
        <WordsField
          label={t('record-page.recheck.what')}
          name="what"
          words={what()}
          onWords={setWhat}
        />
        <div class="doubt-touched" role="group" aria-label={t('record-page.recheck.touches')}>
          <For each={props.record.fixtures}>
            {({ id, name }) => (
              <Action
                class="button button--plain"
                pressed={touched().includes(id)}
                onPress={() => toggle(id)}
              >
                {written(name)}
              </Action>
            )}
          </For>
        </div>
        <div class="button-row">
          <Action
            class="button button--ember"
            disabled={!ready()}
            onPress={() => props.onDoubt(touched(), what().trim())}
          >
            {t('record-page.recheck.make-plan')}
          </Action>
          <Action class="button button--plain" onPress={() => setOpen(false)}>
            {t('record-page.recheck.back')}
          </Action>
        </div>
      </Show>
    </section>
  );
}
