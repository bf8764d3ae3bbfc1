import { createMemo, Show } from 'solid-js';
import { peopleLanes } from '../../../../core/plan/index.ts';
import type { RunView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';

/** Whose lane of the plan the step is in, as the Plan calls them. */
export function WhoDoes(props: { view: RunView; step: string }) {
  const lanes = createMemo(() => peopleLanes(props.view.plan));
  const at = () => lanes().findIndex(({ hands }) => hands.some(({ step }) => step === props.step));
  return (
    <Show when={at() >= 0}>
      <strong data-who={at()}>
        {at() === 0 ? t('run.who.you') : t('run.who.helper', { number: at() })}
      </strong>
    </Show>
  );
}
