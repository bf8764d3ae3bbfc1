import { Show } from 'solid-js';
import type { RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { formatRoute } from '../../../context/route.ts';

/** The run is over: where its record is. */
export function ClosedRun(props: { view: RunView }) {
  const undone = () => props.view.steps.filter((s) => s.outcome !== 'done').length;
  const told = () => {
    const of = props.view.allSteps;
    return undone() === 0
      ? t('run.closed.all-done', { of })
      : t('run.closed.some-done', { done: of - undone(), undone: undone(), of });
  };
  return (
    <main class="start-screen" data-closed={props.view.closedAs}>
      <h1>{t(`run.closed.${props.view.closedAs ?? 'completed'}`)}</h1>
      <p>
        {told()} <Show when={props.view.reason}>{(reason) => <>{say(reason())}</>}</Show>
      </p>
      <p>{t('run.closed.mark')}</p>
      <a
        class="button button--ember button--big"
        data-action="record"
        href={formatRoute({ page: 'record' })}
      >
        {t('run.closed.record')}
      </a>
    </main>
  );
}
