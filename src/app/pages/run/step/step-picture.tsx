import { Match, Switch } from 'solid-js';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { BatchPicture } from '../../../pictures/batch.tsx';
import { BurnerPicture } from '../../../pictures/burner.tsx';
import { KettleFill } from '../../../pictures/kettle.tsx';
import { prefersStill } from '../../../parts/still.ts';
import { Lanes } from '../../../pictures/lanes.tsx';
import { OvenCurve } from '../../../pictures/oven-curve.tsx';
import { SinkOrder } from '../../../pictures/sink.tsx';
import { PourLevel } from './pour-level.tsx';
import { handTicks, hotBurners, pouredShare } from './progress.ts';
import { ovenAtS } from './concurrent-steps.ts';

/** The picture of the step: lanes, sink order, burner, oven, or how far to fill. */
export function StepPicture(props: { view: RunView; step: StepView }) {
  const still = prefersStill();
  const picture = () => props.step.step.picture;
  const of = <K extends string>(kind: K) => {
    const p = picture();
    return p?.kind === kind ? (p as Extract<NonNullable<typeof p>, { kind: K }>) : undefined;
  };
  return (
    <Switch>
      <Match when={of('lanes')}>
        {(p) => (
          <>
            <PourLevel view={props.view} step={props.step} />
            <div class="stage-lanes">
              <Lanes
                picture={p()}
                poured={still() && props.step.stage === 0 ? undefined : pouredShare(props.step)}
                ticks={still() ? handTicks(props.step) : undefined}
              />
            </div>
          </>
        )}
      </Match>
      <Match when={of('sink')}>
        {(p) => (
          <>
            <PourLevel view={props.view} step={props.step} />
            <SinkOrder picture={p()} />
          </>
        )}
      </Match>
      <Match when={of('kettle')}>{(p) => <KettleFill picture={p()} />}</Match>
      <Match when={of('batch')}>{(p) => <BatchPicture picture={p()} />}</Match>
      <Match when={of('oven')}>
        {(p) => <OvenCurve picture={p()} atS={ovenAtS(props.step)} />}
      </Match>
      <Match when={of('burner')}>
        {(p) => (
          <BurnerPicture
            kitchen={props.view.plan.kitchen}
            cooktop={p().cooktop}
            burner={p().burner}
            hot={hotBurners(props.view)}
          />
        )}
      </Match>
    </Switch>
  );
}
