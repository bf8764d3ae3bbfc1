import { say, t } from '../../context/language.ts';
import { For } from 'solid-js';
import type { Plan } from '../../../core/plan/index.ts';
import { Action } from '../../parts/press/action.tsx';
import { printOnly } from '../../parts/print-only.ts';

/** Where food hides, fixture by fixture from the top of the kitchen down: to hang up and tick off. */
export function Cleaning(props: { plan: Plan }) {
  const lists = () =>
    props.plan.steps
      .filter((step) => step.kind === 'clean')
      .toSorted(
        (a, b) =>
          (props.plan.timetable.startS[a.id] ?? 0) - (props.plan.timetable.startS[b.id] ?? 0),
      );
  const name = (id: string | undefined, title: string) =>
    props.plan.kitchen.fixtures.find((one) => one.id === id)?.name ?? title;
  return (
    <section class="list" aria-label={t('plan-page.cleaning.region')} data-print="cleaning">
      <header class="questions-head">
        <h2>{t('plan-page.cleaning')}</h2>
        <Action class="button button--plain" onPress={() => printOnly('cleaning')}>
          {t('plan-page.cleaning.print')}
        </Action>
      </header>
      <p class="quiet">{t('plan-page.cleaning.about')}</p>
      <div class="cleaning-lists">
        <For each={lists()}>
          {(step) => (
            <section class="cleaning-list" aria-label={say(step.title)}>
              <h3>{name(step.fixture, say(step.title))}</h3>
              <ul>
                <For each={step.stages.flatMap(({ detail }) => detail)}>
                  {(line) => (
                    <li>
                      <span class="tick-box" aria-hidden="true" />
                      <span>{say(line)}</span>
                    </li>
                  )}
                </For>
              </ul>
            </section>
          )}
        </For>
      </div>
    </section>
  );
}
