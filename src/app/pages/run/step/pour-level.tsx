import { Show } from 'solid-js';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { boilOf } from './concurrent-steps.ts';
import { pouredShare } from './progress.ts';

const CM_PER_M = 100;

/** Litres in the kettle of a pour as it begins; undefined where the plan does not tell. */
function kettleLitres(view: RunView, step: StepView): number | undefined {
  const { picture } = step.step;
  if (picture?.kind === 'lanes') {
    const mine = picture.stretches.filter(({ kettle }) => kettle === picture.kettle);
    return mine.reduce((sum, { litres }) => sum + litres, 0);
  }
  const filled = boilOf(view, step)?.step.picture;
  return filled?.kind === 'kettle' ? filled.litres : undefined;
}

/** How fast the stream goes along its lanes, cm/s; undefined where there are none. */
function paceCmPerS({ step, timers }: StepView): number | undefined {
  const { picture } = step;
  const lengthS = timers.find(({ role }) => role === 'estimate')?.lengthS;
  if (picture?.kind !== 'lanes' || lengthS === undefined || lengthS <= 0) return undefined;
  const mine = picture.stretches.filter(({ kettle }) => kettle === picture.kettle);
  return (mine.reduce((sum, { lengthM }) => sum + lengthM, 0) * CM_PER_M) / lengthS;
}

/** What is left in the kettle in the hand, as a level that sinks, and how fast the hand goes. */
export function PourLevel(props: { view: RunView; step: StepView }) {
  const left = () => 1 - (pouredShare(props.step) ?? 0);
  const pours = () => props.step.stage === 0;
  return (
    <Show when={pours() && kettleLitres(props.view, props.step)}>
      {(litres) => (
        <p class="pour-level">
          <span class="pour-level-water" style={{ transform: `scaleX(${left()})` }} />
          <strong>{t('run.pour.left', { litres: litres() * left() })}</strong>
          <Show when={paceCmPerS(props.step)}>
            {(cmPerS) => <span>{t('run.pour.pace', { cmPerS: cmPerS() })}</span>}
          </Show>
        </p>
      )}
    </Show>
  );
}
