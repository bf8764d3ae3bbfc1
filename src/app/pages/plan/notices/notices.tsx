import { For, Show } from 'solid-js';
import type { Message } from '../../../../core/messages/index.ts';
import { gravestFirst, gravityOf, type Plan } from '../../../../core/plan/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { isAboutLateness, leadOf, type Lead } from './leads.ts';

/** Notices that are seen at once. */
const FIRST = 3;

/** What is grave, each with where to change it; the rest behind one press. */
export function Notices(props: {
  plan: Plan;
  onPart: (part: Extract<Lead, { part: string }>['part']) => void;
}) {
  const all = () => gravestFirst(props.plan.notices.filter((one) => !isAboutLateness(one)));
  const first = () =>
    all()
      .filter((one) => gravityOf(one) !== 'know')
      .slice(0, FIRST);
  const rest = () => all().slice(first().length);
  return (
    <section class="notices-part" aria-label={t('plan-page.notices')}>
      <Show when={first().length > 0}>
        <List notices={first()} onPart={props.onPart} />
      </Show>
      <Show when={rest().length > 0}>
        <details>
          <summary>{t('plan-page.notices.more', { many: rest().length })}</summary>
          <List notices={rest()} onPart={props.onPart} />
        </details>
      </Show>
    </section>
  );
}

function List(props: {
  notices: readonly Message[];
  onPart: (part: Extract<Lead, { part: string }>['part']) => void;
}) {
  return (
    <ul class="notices">
      <For each={props.notices}>
        {(notice) => (
          <li class={`notice--${gravityOf(notice)}`}>
            <span>{say(notice)}</span>
            <Show when={leadOf(notice)}>
              {(lead) => <LeadButton lead={lead()} onPart={props.onPart} />}
            </Show>
          </li>
        )}
      </For>
    </ul>
  );
}

function LeadButton(props: {
  lead: Lead;
  onPart: (part: Extract<Lead, { part: string }>['part']) => void;
}) {
  const { lead } = props;
  return 'page' in lead ? (
    <a class="button button--plain" href={`#/${lead.page}`}>
      {t('plan-page.notices.kitchen')}
    </a>
  ) : (
    <Action class="button button--plain" onPress={() => props.onPart(lead.part)}>
      {t(`plan-page.part.${lead.part}`)}
    </Action>
  );
}
