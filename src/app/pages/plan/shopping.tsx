import { say, t } from '../../context/language.ts';
import { For } from 'solid-js';
import type { Plan } from '../../../core/plan/index.ts';

/** What to buy and gather before the first day. */
export function Shopping(props: { plan: Plan }) {
  return (
    <section class="list" aria-label={t('plan-page.shopping')}>
      <h2>{t('plan-page.shopping')}</h2>
      <ul class="shopping-list">
        <For each={props.plan.shopping}>
          {(item) => (
            <li>
              <span class="tick-box" aria-hidden="true" />
              <span>
                <strong>{t('plan.buy.before-amount', { name: item.name })}</strong>{' '}
                {say(item.amount)}
                <span class="quiet shopping-why">{say(item.why)}</span>
              </span>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}
