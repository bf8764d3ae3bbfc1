import { Show, type JSX } from 'solid-js';
import { customName } from '../../../core/custom/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import { calendarFile } from '../../../core/report/index.ts';
import { downloadText } from '../../../host/files/index.ts';
import { say, t, translator, written } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { calendarDownload } from '../../parts/calendar-download.ts';
import { printOnly } from '../../parts/print-only.ts';

/** Whose plan it is, when it begins, and what is done with the whole of it: kept as a calendar, printed, started. */
export function PlanHead(props: {
  plan: Plan;
  openRun: boolean;
  onStart: () => void;
  /** Plays the run to whoever looks; nothing of it is kept. */
  onRehearse: () => void;
  /** When the work begins; absent: a plan in hours from its start has no calendar. */
  startWallMs: number | undefined;
  /** When it begins, to be changed. */
  children: JSX.Element;
}) {
  const calendar = () => {
    const { plan, startWallMs } = props;
    if (startWallMs === undefined) return undefined;
    const text = calendarFile(plan, startWallMs, Date.now(), translator());
    return text === undefined ? undefined : calendarDownload(text, plan.kitchen.name, startWallMs);
  };
  return (
    <header class="plan-head">
      <div>
        <p class="quiet">
          {t('plan-page.for-whom', {
            purpose: t(`common.purpose.${props.plan.purpose}`),
            custom: say(customName(props.plan.kitchen.household)),
          })}
        </p>
        <h1>{written(props.plan.kitchen.name)}</h1>
      </div>
      {props.children}
      <div class="button-row plan-actions">
        <Show when={calendar()}>
          {(file) => (
            <Action class="button button--plain" onPress={() => downloadText(file())}>
              {t('plan-page.save-calendar')}
            </Action>
          )}
        </Show>
        <Action class="button button--plain" onPress={() => printOnly('wall')}>
          {t('plan-page.print')}
        </Action>
        <Action class="button button--plain" name="rehearse" onPress={props.onRehearse}>
          {t('plan-page.rehearse')}
        </Action>
        <Action class="button button--ember button--big" onPress={props.onStart}>
          {props.openRun ? t('plan-page.back-to-run') : t('plan-page.start-run')}
        </Action>
      </div>
    </header>
  );
}
