import { Match, Switch } from 'solid-js';
import type { RunView, StepView } from '../../core/run/index.ts';
import { BurnerPicture } from '../pictures/burner.tsx';
import { KettleFill } from '../pictures/kettle.tsx';
import { Lanes } from '../pictures/lanes.tsx';
import { OvenCurve } from '../pictures/oven-curve.tsx';
import { SinkOrder } from '../pictures/sink.tsx';

/** Burners that are lit or hot now, by id. */
export function hotBurners(view: RunView): readonly string[] {
  return view.steps
    .filter(
      (s) =>
        s.step.picture?.kind === 'burner' && ['active', 'checking', 'unwinding'].includes(s.status),
    )
    .map((s) => (s.step.picture?.kind === 'burner' ? s.step.picture.burner : ''));
}

/** How far this pour should be by its clock; undefined before it begins, whole once it is poured. */
export function pouredShare(step: StepView): number | undefined {
  if (step.status !== 'active' && step.status !== 'checking') return undefined;
  if (step.stage > 0) return 1;
  const clock = step.clocks.find((one) => one.role === 'estimate');
  return clock ? Math.min(1, clock.atLeastS / clock.lengthS) : undefined;
}

/** The picture of the step: lanes, sink order, burner, oven, or how far to fill. */
export function StagePicture(props: { view: RunView; step: StepView }) {
  const picture = () => props.step.step.picture;
  const of = <K extends string>(kind: K) => {
    const p = picture();
    return p?.kind === kind ? (p as Extract<NonNullable<typeof p>, { kind: K }>) : undefined;
  };
  return (
    <Switch>
      <Match when={of('lanes')}>
        {(p) => <Lanes picture={p()} poured={pouredShare(props.step)} />}
      </Match>
      <Match when={of('sink')}>{(p) => <SinkOrder picture={p()} />}</Match>
      <Match when={of('kettle')}>{(p) => <KettleFill picture={p()} />}</Match>
      <Match when={of('oven')}>{(p) => <OvenCurve picture={p()} />}</Match>
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
