import { say } from '../../context/language.ts';
import { createSignal, Index, Show } from 'solid-js';
import type { Request, RunView } from '../../../core/run/index.ts';
import type { Persistence } from '../../../host/persist/index.ts';
import { Action } from '../../parts/action.tsx';
import { lengthInWords } from '../../labels/time.ts';

const KEPT_WORDS: Readonly<Record<Persistence, string>> = {
  kept: 'What is written down stays on this tablet until you delete it.',
  'may-be-deleted':
    'This browser may delete what is stored when room is short or the app is not used for days: add it to the home screen, and save the run as a file when it is over.',
  'not-supported': 'This browser does not promise to keep what is stored: save the run as a file.',
  unknown: 'The browser has not said whether it keeps what is stored: save the run as a file.',
};

/** Before the first step: what comes, the standing lines, and the hearing check as a gate. */
export function StartScreen(props: {
  view: RunView;
  playTest: () => Promise<boolean>;
  /** What the browser says of keeping what is stored. */
  kept: Persistence;
  send: (request: Request) => void;
}) {
  const [played, setPlayed] = createSignal<'not-yet' | 'played' | 'failed'>('not-yet');
  const [heard, setHeard] = createSignal(false);
  const [deaf, setDeaf] = createSignal(false);
  const play = async () => setPlayed((await props.playTest()) ? 'played' : 'failed');
  const first = () => props.view.currentSteps.slice(0, 3);
  const start = () => {
    if (deaf())
      props.send({
        kind: 'note',
        text: 'Started without a heard sound: alerts are watched on the screen.',
      });
    props.send({ kind: 'start-run' });
  };
  return (
    <main class="start-screen">
      <div>
        <p class="quiet">{props.view.plan.kitchen.name}</p>
        <h1>Ready to begin</h1>
      </div>
      <ul class="start-lines">
        <li>
          {props.view.allSteps} steps over {lengthInWords(props.view.plan.timetable.finishS)}. Stop
          and come back whenever you need: clocks go on, and nothing is lost.
        </li>
        <li>{KEPT_WORDS[props.kept]}</li>
        <li>
          The tablet cannot wake itself: keep it plugged in, this page open, and the screen on.
        </li>
        <li>
          Follow makers’ manuals and local codes; gas, electrical and plumbing work is for licensed
          people. The app gives no ruling and no guarantee of safety. In need, call the local
          emergency number.
        </li>
      </ul>
      <section class="hearing" aria-label="Hearing check">
        <h2>Can you hear the alarm from where you will work?</h2>
        <div class="button-row">
          <Action class="button button--ember button--big" onPress={() => void play()}>
            {played() === 'not-yet' ? 'Play the alarm' : 'Play it again'}
          </Action>
          <Show when={played() === 'played' && !heard()}>
            <Action class="button button--big" onPress={() => setHeard(true)}>
              I heard it
            </Action>
          </Show>
          <Show when={heard()}>
            <strong>Heard.</strong>
          </Show>
        </div>
        <Show when={played() === 'failed'}>
          <p>
            The browser blocked the sound. Raise the volume, turn off silent mode, and play it
            again.
          </p>
        </Show>
        <Show when={!heard() && played() !== 'not-yet'}>
          <label class="check">
            <input
              type="checkbox"
              checked={deaf()}
              onChange={(e) => setDeaf(e.currentTarget.checked)}
            />
            <span>I cannot hear it; I will watch the screen instead (written into the record)</span>
          </label>
        </Show>
      </section>
      <Show when={first().length > 0}>
        <section aria-label="First">
          <h2>First</h2>
          <ol class="start-lines">
            <Index each={first()}>{(step) => <li>{say(step().step.title)}</li>}</Index>
          </ol>
        </section>
      </Show>
      <Action class="main-action" disabled={!heard() && !deaf()} onPress={start}>
        {heard() || deaf() ? 'Start' : 'Hear the alarm first'}
      </Action>
    </main>
  );
}
