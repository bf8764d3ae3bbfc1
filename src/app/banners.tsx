import { Show } from 'solid-js';
import { Action } from './parts/action.tsx';
import { formatRoute, type PlaceId } from './state/route.ts';

/** A run goes on while another place is looked at. */
export function OpenRunBanner(props: { show: boolean }) {
  return (
    <Show when={props.show}>
      <div class="banner">
        <strong>A run is open; its clocks go on.</strong>
        <a class="button" href={formatRoute({ place: 'run' })}>
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

/** One page writes; this one only shows until a person moves the work here. */
export function WriterBanner(props: { show: boolean; onTakeOver: () => void }) {
  return (
    <Show when={props.show}>
      <div class="banner" role="status">
        <strong>Another page on this tablet leads the run.</strong>
        <Action class="button" onPress={props.onTakeOver}>
          Lead it from here
        </Action>
      </div>
    </Show>
  );
}

/** A place that needs a kitchen or a run first. */
export function NoPlan(props: { place: PlaceId }) {
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
          href={formatRoute({ place: props.place === 'run' ? 'plan' : 'kitchen' })}
        >
          {props.place === 'run' ? 'Go to the plan' : 'Go to the kitchen'}
        </a>
      </p>
    </main>
  );
}
