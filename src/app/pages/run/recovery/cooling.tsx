import { createMemo, createSignal, For, Index, Match, Show, Switch } from 'solid-js';
import { emergencyNumber } from '../../../../core/kitchen/index.ts';
import type { CoolingEnd, CoolingView, Request, RunView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';
import { countdown } from '../../../parts/time/countdown-digits.ts';
import { when } from '../../../parts/time/when.ts';
import '../../../styles/run/cooling.css';

type CoolingProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly send: (request: Request) => void;
};

/** For which burns to call, gravest to overlook first. */
const CALL = ['where', 'large', 'age', 'deep', 'cause', 'breath'] as const;

/** Somebody is burned: what to do in order, whom to call, and how the clock ends. The clock itself is the bar above. */
export function Cooling(props: CoolingProps) {
  const steps = () => {
    const all = props.view.faults.findLast(({ kind }) => kind === 'burned')?.doThis ?? [];
    return isOver() ? all.slice(-1) : all;
  };
  const isOver = () => props.view.coolings.every(({ over }) => over);
  // The same names from second to second: a row that somebody is about to answer stays the same row.
  const faults = createMemo(() => props.view.coolings.map(({ fault }) => fault).toSorted());
  return (
    <section class="cooling" aria-label={t('run.cooling')}>
      <h1 class="stage-sentence">{t(isOver() ? 'run.cooling.title-over' : 'run.cooling.title')}</h1>
      <div class="cooling-columns">
        <ol class="do-this">
          <Index each={steps()}>{(line) => <li>{say(line())}</li>}</Index>
        </ol>
        <div class="cooling-beside">
          <Call country={props.view.plan.kitchen.country} over={isOver()} />
          <For each={faults()}>
            {(fault) => (
              <Show when={props.view.coolings.find((one) => one.fault === fault)}>
                {(one) => <OneBurn {...props} cooling={one()} alone={faults().length === 1} />}
              </Show>
            )}
          </For>
        </div>
      </div>
    </section>
  );
}

function Call(props: { country: string; over: boolean }) {
  const ask = () => {
    const number = emergencyNumber(props.country);
    if (number === undefined)
      return t(props.over ? 'run.cooling.doctor-local' : 'run.cooling.call-local');
    return props.over ? t('run.cooling.doctor', { number }) : t('run.cooling.call', { number });
  };
  return (
    <div class="cooling-call">
      <p class="caution-line">
        <SignalWord word="DANGER" /> <strong>{ask()}</strong>
      </p>
      <ul>
        <For each={CALL}>{(one) => <li>{t(`run.cooling.call.${one}`)}</li>}</For>
      </ul>
      <Show when={!props.over}>
        <p class="quiet">{t('run.cooling.go-on')}</p>
      </Show>
    </div>
  );
}

/** One clock of them, and its end: by the 20 minutes, or early with a word and a second press elsewhere. */
function OneBurn(props: CoolingProps & { cooling: CoolingView; alone: boolean }) {
  const [isEarly, setEarly] = createSignal(false);
  const end = (as: CoolingEnd) =>
    props.send({ kind: 'end-cooling', faultId: props.cooling.fault, as });
  const doubtful = () => !props.cooling.over && props.cooling.mayBeOver;
  return (
    <div class="cooling-one" data-cooling={props.cooling.fault}>
      <p class="quiet">
        {t('run.cooling.since', { when: when(props.cooling.startedWallMs, props.nowMs) })}
        <Show when={!props.alone}> – {say(countdown(props.cooling.leftS))}</Show>
      </p>
      <Show when={doubtful()}>
        <p>{t('run.cooling.may-be-over')}</p>
      </Show>
      <Switch>
        <Match when={isEarly()}>
          <p class="review-ask">{t('run.cooling.early.why')}</p>
          <div class="button-row">
            <Action class="button" name="cooling-taken-over" onPress={() => end('taken-over')}>
              {t('run.cooling.taken-over')}
            </Action>
            <Action class="button" name="cooling-mistake" onPress={() => end('mistake')}>
              {t('run.cooling.mistake')}
            </Action>
            <Action
              class="button button--ember"
              name="keep-cooling"
              onPress={() => setEarly(false)}
            >
              {t('run.cooling.keep')}
            </Action>
          </div>
        </Match>
        <Match when={!isEarly()}>
          <div class="button-row">
            <Show when={props.cooling.over || doubtful()}>
              <Action
                class="button button--ember button--big"
                name="cooling-done"
                onPress={() => end('cooled')}
              >
                {t('run.cooling.cooled')}
              </Action>
            </Show>
            <Action class="button button--plain" name="end-early" onPress={() => setEarly(true)}>
              {t(props.cooling.over ? 'run.cooling.otherwise' : 'run.cooling.early')}
            </Action>
          </div>
        </Match>
      </Switch>
    </div>
  );
}
