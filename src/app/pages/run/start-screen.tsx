import { createSignal, Index, onMount, Show } from 'solid-js';
import type { Request, RunView } from '../../../core/run/index.ts';
import type { Persistence } from '../../../host/persist/index.ts';
import { say, t, written } from '../../context/language.ts';
import { wallZone } from '../../context/zone.ts';
import { Action } from '../../parts/press/action.tsx';
import { OtherZone } from '../../parts/time/other-zone.tsx';
import '../../styles/run/start.css';
import { fetchLater } from './run-body.tsx';
import type { SoundLight } from './lights.tsx';
import { forgetTicks } from './step/lists/ticks.ts';

type StartScreenProps = {
  readonly sound: SoundLight;
  readonly view: RunView;
  readonly nowMs: number;
  readonly playTest: () => Promise<boolean>;
  /** What the browser says of keeping what is stored. */
  readonly kept: Persistence;
  readonly send: (request: Request) => void;
};

/** Before the first step: what comes, the standing lines, and the hearing check as a gate. */
export function StartScreen(props: StartScreenProps) {
  const [heard, setHeard] = createSignal(false);
  const [deaf, setDeaf] = createSignal(false);
  const first = () => props.view.currentSteps.slice(0, 3);
  // Lists were ticked for the run before it, of the same steps.
  onMount(forgetTicks);
  onMount(() => void fetchLater());
  const start = () => {
    if (deaf()) props.send({ kind: 'note', text: t('run.start.hearing.deaf-note') });
    // The button says day and time: a person who presses it has read them.
    props.send({ kind: 'start-run', clockRight: true });
  };
  return (
    <main class="start-screen">
      <div class="start-words">
        <p class="quiet">{written(props.view.plan.kitchen.name)}</p>
        <h1>{t('run.start.title')}</h1>
        <OtherZone nowMs={props.nowMs} />
        <ul class="start-lines">
          <li>
            {t('run.start.about', {
              steps: props.view.allSteps,
              lengthS: props.view.plan.timetable.finishS,
            })}
          </li>
          <li>{t(`run.start.kept.${props.kept}`)}</li>
          <li>{t('run.start.awake')}</li>
          <li>{t('run.start.standing')}</li>
        </ul>
      </div>
      <div class="start-do">
        <HearingCheck
          playTest={props.playTest}
          sound={props.sound}
          heard={heard()}
          onHeard={() => setHeard(true)}
          deaf={deaf()}
          onDeaf={setDeaf}
        />
        <Show when={first().length > 0}>
          <section aria-label={t('run.start.first')}>
            <h2>{t('run.start.first')}</h2>
            <ol class="start-lines">
              <Index each={first()}>{(step) => <li>{say(step().step.title)}</li>}</Index>
            </ol>
          </section>
        </Show>
      </div>
      <div class="main-bar">
        <Action class="main-action" name="start-run" disabled={!heard() && !deaf()} onPress={start}>
          <small>{t('run.start.now', { wallMs: props.nowMs, zone: wallZone() })}</small>
          {t(heard() || deaf() ? 'run.start.press' : 'run.start.hear-first')}
        </Action>
      </div>
    </main>
  );
}

/** The alarm, played from where it will be heard; or a person's word that the screen is watched instead. */
function HearingCheck(props: {
  playTest: () => Promise<boolean>;
  sound: SoundLight;
  heard: boolean;
  onHeard: () => void;
  deaf: boolean;
  onDeaf: (deaf: boolean) => void;
}) {
  const [played, setPlayed] = createSignal<'not-yet' | 'played' | 'failed'>('not-yet');
  /** The light beside it says what is true now; a play that failed may have been mended since, and one that began may have been stopped. */
  const mute = () => props.sound === 'blocked' || props.sound === 'touch-to-arm';
  const tells = (): 'run.start.hearing.blocked' | 'run.start.hearing.ready-now' | undefined => {
    if (played() === 'not-yet' || props.heard) return undefined;
    if (mute()) return 'run.start.hearing.blocked';
    return played() === 'failed' ? 'run.start.hearing.ready-now' : undefined;
  };
  const play = async () => setPlayed((await props.playTest()) ? 'played' : 'failed');
  return (
    <section class="hearing" aria-label={t('run.start.hearing')}>
      <h2>{t('run.start.hearing.ask')}</h2>
      <div class="button-row">
        <Action
          class="button button--ember button--big"
          name="play-alarm"
          onPress={() => void play()}
        >
          {t(played() === 'not-yet' ? 'run.start.hearing.play' : 'run.start.hearing.again')}
        </Action>
        <Show when={played() === 'played' && !props.heard}>
          <Action class="button button--big" name="heard" onPress={props.onHeard}>
            {t('run.start.hearing.heard')}
          </Action>
        </Show>
        <Show when={props.heard}>
          <strong>{t('run.start.hearing.done')}</strong>
        </Show>
      </div>
      <Show when={tells()}>{(key) => <p data-key={key()}>{t(key())}</p>}</Show>
      <Show when={!props.heard && played() !== 'not-yet'}>
        <label class="check">
          <input
            type="checkbox"
            name="deaf"
            checked={props.deaf}
            onChange={(event) => props.onDeaf(event.currentTarget.checked)}
          />
          <span>{t('run.start.hearing.deaf')}</span>
        </label>
      </Show>
    </section>
  );
}
