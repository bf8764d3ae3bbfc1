import { Show } from 'solid-js';
import type { CoolingView, Request } from '../core/run/index.ts';
import { say, t } from './context/language.ts';
import { formatRoute } from './context/route.ts';
import { Action } from './parts/press/action.tsx';
import { SwitchedOff } from './parts/press/switched-off.ts';
import { countdown } from './parts/time/countdown-digits.ts';
import './styles/run/cooling-bar.css';

/**
 * The clock of a burn, over every page, sheet and alarm: how long it still
 * needs at the longest, and the one thing to go on doing.
 */
export function CoolingBar(props: {
  cooling: CoolingView;
  /** Another page leads the run, and only there can the sound be answered. */
  onlyShown: boolean;
  /** The page with the steps is not the one that shows. */
  elsewhere: boolean;
  send: (request: Request) => void;
}) {
  const over = () => props.cooling.over;
  const left = () => say(countdown(props.cooling.leftS));
  return (
    <SwitchedOff.Provider value={() => props.onlyShown}>
      <section
        class="cooling-bar"
        classList={{ 'cooling-bar--over': over() }}
        aria-label={t('run.cooling')}
        data-left-s={Math.ceil(props.cooling.leftS)}
      >
        <span
          class="cooling-level"
          aria-hidden="true"
          style={{ width: `${(100 * props.cooling.leftS) / props.cooling.lengthS}%` }}
        />
        <span class="cooling-digits" role="timer" aria-live="off">
          {left()}
        </span>
        <strong class="cooling-say">{t(over() ? 'run.cooling.over' : 'run.cooling.run')}</strong>
        <Show when={props.elsewhere}>
          <a class="button" data-action="cooling-steps" href={formatRoute({ page: 'run' })}>
            {t('run.cooling.steps')}
          </a>
        </Show>
        <Show when={props.cooling.alerting}>
          <Action
            class="button"
            name="cooling-heard"
            onPress={() => props.send({ kind: 'acknowledge-timer', timer: props.cooling.id })}
          >
            {t('run.action.heard')}
          </Action>
        </Show>
      </section>
    </SwitchedOff.Provider>
  );
}
