import type { RunView } from '../../../../core/run/index.ts';
import { formatRoute } from '../../../context/route.ts';

const CLOSED_WORDS = { completed: 'Done', failed: 'Ended by a fault', stopped: 'Stopped' } as const;

/** The run is over: where its record is. */
export function ClosedRun(props: { view: RunView }) {
  const undone = () => props.view.steps.filter((s) => s.outcome !== 'done').length;
  const done = () => props.view.allSteps - undone();
  return (
    <main class="start-screen">
      <h1>{CLOSED_WORDS[props.view.closedAs ?? 'completed']}</h1>
      <p>
        {done()} of {props.view.allSteps} steps were done
        {undone() > 0 ? `, ${undone()} were not` : ''}. {props.view.reason ?? ''}
      </p>
      <p>Mark the treated places now, so that nobody uses them by mistake.</p>
      <a class="button button--ember button--big" href={formatRoute({ page: 'record' })}>
        See the record
      </a>
    </main>
  );
}
