import { createSignal, For, Show } from 'solid-js';
import { RESTS_ON } from '../../../core/plan/index.ts';
import { say, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';

const KINDS = ['judgement', 'computed'] as const;

/** Opens the list of what the figures rest on where no published figure holds them. */
export function RestsOnLink() {
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <Action class="word-button" onPress={() => setOpen(true)}>
        {t('plan.basis.title')}
      </Action>
      <Show when={open()}>
        <RestsOnSheet onClose={() => setOpen(false)} />
      </Show>
    </>
  );
}

function RestsOnSheet(props: { onClose: () => void }) {
  return (
    <Sheet label={t('plan.basis.title')} onClose={props.onClose}>
      <h2>{t('plan.basis.title')}</h2>
      <p class="quiet">{t('plan.basis.about')}</p>
      <For each={KINDS}>
        {(kind) => (
          <>
            <h3>{t(`plan.basis.kind.${kind}`)}</h3>
            <ul>
              <For each={RESTS_ON.filter((one) => one.kind === kind)}>
                {({ id, says }) => <li data-basis={id}>{say(says)}</li>}
              </For>
            </ul>
          </>
        )}
      </For>
      <div class="button-row">
        <Action class="button button--plain" onPress={props.onClose}>
          {t('plan-page.back')}
        </Action>
      </div>
    </Sheet>
  );
}
