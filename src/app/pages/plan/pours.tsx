import { For, Match, Show, Switch } from 'solid-js';
import type { PourChart } from '../../../core/plan/index.ts';
import { Lanes } from '../../pictures/lanes.tsx';
import { SinkOrder } from '../../pictures/sink.tsx';

type Kind = PourChart['picture']['kind'];

/** Less than this is no difference to a person pouring, m. */
const NO_DIFFERENCE_M = 0.1;

function directionWords(of: NonNullable<PourChart['directions']>): string {
  const saved = of.customM - of.shortestM;
  if (saved < NO_DIFFERENCE_M)
    return `${of.customM.toFixed(1)} m of lanes; no other direction is shorter.`;
  const share = Math.round((saved / of.customM) * 100);
  return `${of.customM.toFixed(1)} m of lanes from back to front, as custom has it; another direction would take ${of.shortestM.toFixed(1)} m, ${share} % less.`;
}

/** Where each kettle goes, a picture a fixture, to be hung beside the work. */
export function Pours(props: { pours: readonly PourChart[] }) {
  const of = <K extends Kind>(pour: PourChart, kind: K) =>
    pour.picture.kind === kind
      ? (pour.picture as Extract<PourChart['picture'], { kind: K }>)
      : undefined;
  return (
    <Show when={props.pours.length > 0} fallback={<p class="quiet">Nothing is poured.</p>}>
      <ul class="pours">
        <For each={props.pours}>
          {(pour) => (
            <li class="pour">
              <h3>
                {pour.name}: {pour.kettles} {pour.kettles === 1 ? 'kettle' : 'kettles'}
              </h3>
              <p class="quiet">
                <Show when={pour.directions} fallback="High before low, each part whole.">
                  {(directions) => directionWords(directions())}
                </Show>
              </p>
              <div class="pour-picture">
                <Switch>
                  <Match when={of(pour, 'lanes')}>{(p) => <Lanes picture={p()} />}</Match>
                  <Match when={of(pour, 'sink')}>{(p) => <SinkOrder picture={p()} />}</Match>
                </Switch>
              </div>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
