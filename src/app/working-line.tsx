import { Show } from 'solid-js';
import { t } from './context/language.ts';
import { planner } from './controllers/planner/planner.ts';

/** A plan is worked out; seen only when it takes longer than a moment. */
export function WorkingLine(props: { show: boolean }) {
  return (
    <Show when={props.show}>
      <p class="working-line" role="status" data-working={planner.isHere() ? 'here' : 'beside'}>
        {t('shell.working')} <Show when={planner.isHere()}>{t('shell.working.here')}</Show>
      </p>
    </Show>
  );
}
