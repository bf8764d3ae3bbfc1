import { Show } from 'solid-js';
import type { LeaderSilence } from '../host/tab-lock/index.ts';
import './styles/run/watch.css';
import { Action } from './parts/action.tsx';
import { formatRoute, type PageId } from './context/route.ts';
import type { LostRun } from './controllers/run/lost-run.ts';
import type { Trouble } from './controllers/run/run-session.ts';
import { dayAndTime } from './labels/time.ts';

/** A run goes on while another place is looked at. */
export function OpenRunBanner(props: { show: boolean }) {
  return (
    <Show when={props.show}>
      <div class="banner">
        <strong>A run is open; its clocks go on.</strong>
        <a class="button" href={formatRoute({ page: 'run' })}>
          Back to the run
        </a>
      </div>
    </Show>
  );
}

/** A newer app waits; taken only by the person's choice and never while a run is open. */
export function UpdateBanner(props: { show: boolean; onTake: () => void }) {
  return (
    <Show when={props.show}>
      <div class="banner">
        <span>A newer version is ready.</span>
        <Action class="button" onPress={props.onTake}>
          Use it now
        </Action>
      </div>
    </Show>
  );
}

/** Storage that cannot be read or written, and what was just refused: told in every place, not only in a run. */
export function TroubleBanner(props: {
  trouble: Trouble | undefined;
  notice: string | undefined;
  onExport: (() => void) | undefined;
}) {
  return (
    <>
      <Show when={props.trouble}>
        {(trouble) => (
          <div class="banner banner--trouble" role="alert">
            <strong>{TROUBLE_WORDS[trouble().kind]}</strong>
            <span>{trouble().message}</span>
            <Show when={props.onExport}>
              {(save) => (
                <Action class="button" onPress={save()}>
                  Save the run as a file
                </Action>
              )}
            </Show>
          </div>
        )}
      </Show>
      <Show when={props.notice}>
        {(text) => (
          <div class="banner" role="status">
            {text()}
          </div>
        )}
      </Show>
    </>
  );
}

const TROUBLE_WORDS: Readonly<Record<Trouble['kind'], string>> = {
  storage: 'Not saved.',
  'read-only': 'Only showing.',
  'taken-over': 'Only showing.',
  unreadable: 'What is stored cannot be read now. Nothing was deleted by this app.',
};

const WATCH_WORDS: Readonly<Record<LeaderSilence, string>> = {
  beating: 'It leads, writes and sounds; this page only shows the run.',
  unsure:
    'It has not been heard from just now; this page only shows the run, and sounds what is due.',
  silent: 'It no longer answers. This page sounds what is due; it can take the run over.',
};

/** A run was open here, and the store is empty: said, never taken for a beginning. */
export function LostRunBanner(props: { lostRun: LostRun; nowMs: number }) {
  return (
    <Show when={props.lostRun.lost()}>
      {(run) => (
        <div class="banner banner--trouble" role="alert">
          <strong>
            The run “{run().name}” of {dayAndTime(run().openedWallMs, props.nowMs)} is gone from
            this browser.
          </strong>
          <span>
            The browser emptied what it kept for this app. If the run was saved as a file, bring it
            in under Record. If not, note now what was done and when each rest began.
          </span>
          <Action class="button" onPress={props.lostRun.dismiss}>
            I have read it
          </Action>
        </div>
      )}
    </Show>
  );
}

/** Over a run that another page leads: who leads, how it is, and how to lead from here. */
export function WatchBand(props: {
  otherLead: LeaderSilence;
  wasTakenOver: boolean;
  needsArming: boolean;
  onArm: () => void;
  onLead: () => void;
}) {
  return (
    <div class="banner watch-band" role="status" data-lead={props.otherLead}>
      <strong>
        {props.wasTakenOver
          ? 'Another page took this run over.'
          : 'Another page on this tablet leads the run.'}
      </strong>
      <span>{WATCH_WORDS[props.otherLead]}</span>
      <Show when={props.needsArming}>
        <Action class="button button--ember" onPress={props.onArm}>
          Touch to arm the sound
        </Action>
      </Show>
      <Action class="button" onPress={props.onLead}>
        Lead it from here
      </Action>
    </div>
  );
}

/** A place that needs a kitchen or a run first. */
export function NoPlan(props: { place: PageId }) {
  return (
    <main class="place">
      <h1>{props.place === 'run' ? 'No run yet' : 'No kitchen yet'}</h1>
      <p>
        {props.place === 'run'
          ? 'A run starts from the plan of a kitchen.'
          : 'Choose a kitchen first; its plan is worked out at once.'}
      </p>
      <p>
        <a
          class="button button--ember"
          href={formatRoute({ page: props.place === 'run' ? 'plan' : 'kitchen' })}
        >
          {props.place === 'run' ? 'Go to the plan' : 'Go to the kitchen'}
        </a>
      </p>
    </main>
  );
}
