import { Show } from 'solid-js';
import { t } from '../../context/language.ts';
import { useSwitchedOff } from '../../parts/press/switched-off.ts';

/** `elsewhere`: the page that leads the run makes the sound, not this one. */
export type SoundLight = 'armed' | 'touch-to-arm' | 'blocked' | 'unknown' | 'elsewhere';
export type WakeLight = 'held' | 'lost' | 'not-supported';
export type LightStates = {
  readonly sound: SoundLight;
  readonly wake: WakeLight;
  readonly writer: boolean;
};

function soundIsWell(light: SoundLight): boolean {
  return light === 'armed' || light === 'elsewhere';
}

/** What the tablet promises just now, in words with a shape; never a guess. */
export function Lights(props: { lights: LightStates; onArm: () => void }) {
  const off = useSwitchedOff();
  return (
    <div class="run-lights">
      <button
        type="button"
        class="light"
        disabled={off()}
        classList={{ 'light--bad': !soundIsWell(props.lights.sound) }}
        onClick={props.onArm}
        data-sound={props.lights.sound}
      >
        <Dot good={soundIsWell(props.lights.sound)} />
        {t(`run.light.sound.${props.lights.sound}`)}
      </button>
      <span
        class="light"
        classList={{ 'light--bad': props.lights.wake !== 'held' }}
        data-wake={props.lights.wake}
      >
        <Dot good={props.lights.wake === 'held'} />
        {t(`run.light.wake.${props.lights.wake}`)}
      </span>
      <Show when={!props.lights.writer}>
        <span class="light light--bad" data-writer="elsewhere">
          <Dot good={false} />
          {t('run.light.other-lead')}
        </span>
      </Show>
    </div>
  );
}

/** A full drop for good, a broken ring for not. */
function Dot(props: { good: boolean }) {
  return (
    <svg viewBox="0 0 18 18" aria-hidden="true">
      <Show
        when={props.good}
        fallback={
          <circle
            cx="9"
            cy="9"
            r="6.5"
            fill="none"
            stroke="currentColor"
            stroke-width="3"
            stroke-dasharray="7 4"
          />
        }
      >
        <path
          d="M9 1c4 5 6 7.4 6 10.2A6 6 0 0 1 3 11.2C3 8.4 5 6 9 1Z"
          fill="var(--water-fill-deep)"
        />
      </Show>
    </svg>
  );
}
