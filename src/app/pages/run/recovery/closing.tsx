import type { Request, RunView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { MakeSafeRows } from './make-safe-rows.tsx';

/** The run is stopping: each hot thing is made safe and confirmed, one line each. */
export function Closing(props: { view: RunView; send: (request: Request) => void }) {
  return (
    <section class="stage closing" aria-label={t('run.closing')}>
      <h1 class="stage-sentence">{t('run.closing.title')}</h1>
      <MakeSafeRows hot={props.view.hot} asks={() => true} send={props.send} />
    </section>
  );
}
