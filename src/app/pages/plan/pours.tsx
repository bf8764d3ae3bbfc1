import { say, t } from '../../context/language.ts';
import { createEffect, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Message } from '../../../core/messages/index.ts';
import type { PourChart } from '../../../core/plan/index.ts';
import { Lanes } from '../../pictures/lanes.tsx';
import { SinkOrder } from '../../pictures/sink.tsx';

type Kind = PourChart['picture']['kind'];

/** Less than this is no difference to a person pouring, m. */
const NO_DIFFERENCE_M = 0.1;

function directionText(of: NonNullable<PourChart['directions']>): string {
  const saved = of.customM - of.shortestM;
  if (saved < NO_DIFFERENCE_M) return t('plan-page.pours.custom-shortest', { customM: of.customM });
  const { customM, shortestM } = of;
  return t('plan-page.pours.custom-longer', {
    customM,
    shortestM,
    savedPercent: Math.round((saved / customM) * 100),
  });
}

/** Where each kettle goes, a picture a fixture, to be hung beside the work. */
export function Pours(props: {
  pours: readonly PourChart[];
  moves: () => Promise<readonly Message[]>;
}) {
  const [moves, setMoves] = createSignal<readonly Message[]>([]);
  createEffect(() => {
    const { moves: of } = props;
    void of().then((found) => props.moves === of && setMoves(found));
  });
  const of = <K extends Kind>(pour: PourChart, kind: K) =>
    pour.picture.kind === kind
      ? (pour.picture as Extract<PourChart['picture'], { kind: K }>)
      : undefined;
  return (
    <Show when={props.pours.length > 0} fallback={<p class="quiet">{t('plan-page.pours.none')}</p>}>
      <ul class="pours">
        <For each={props.pours}>
          {(pour) => (
            <li class="pour">
              <h3>{t('plan-page.pours.kettles', { name: pour.name, kettles: pour.kettles })}</h3>
              <p class="quiet">
                <Show when={pour.directions} fallback={t('plan-page.pours.order')}>
                  {(directions) => <>{directionText(directions())}</>}
                </Show>
              </p>
              <For each={pour.words}>{(word) => <p>{say(word)}</p>}</For>
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
      <section class="pour-moves">
        <h3>{t('plan.pour.moves')}</h3>
        <ul>
          <For each={moves()}>{(move) => <li>{say(move)}</li>}</For>
        </ul>
      </section>
    </Show>
  );
}
