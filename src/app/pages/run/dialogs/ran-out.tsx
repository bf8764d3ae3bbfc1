import { createSignal, Show } from 'solid-js';
import type { StepView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { Lanes } from '../../../pictures/lanes.tsx';
import { pouredShare } from '../step/progress.ts';

const STEP_SHARE = 0.1;
const LEAST_SHARE = 0.1;
const MOST_SHARE = 0.95;

function within(share: number): number {
  return Math.min(MOST_SHARE, Math.max(LEAST_SHARE, share));
}

/** "I ran out here": where the water gave out, by steps a wet finger can take. */
export function RanOut(props: {
  step: StepView;
  onRanOut: (share: number) => void;
  onClose: () => void;
}) {
  const [share, setShare] = createSignal(within(pouredShare(props.step) ?? 0.5));
  const lanes = () => {
    const picture = props.step.step.picture;
    return picture?.kind === 'lanes' ? picture : undefined;
  };
  return (
    <Sheet label="Where did the water run out?" onClose={props.onClose}>
      <h2>Where did the water run out?</h2>
      <Show
        when={lanes()}
        fallback={<p>One more kettle finishes these parts; the later ones move up.</p>}
      >
        {(picture) => (
          <>
            <div class="ran-out-picture">
              <Lanes picture={picture()} poured={share()} />
            </div>
            <div class="button-row">
              <Action class="button" onPress={() => setShare(within(share() - STEP_SHARE))}>
                Further back
              </Action>
              <Action class="button" onPress={() => setShare(within(share() + STEP_SHARE))}>
                Further on
              </Action>
              <span class="quiet">{Math.round(share() * 100)} % of this kettle’s lane</span>
            </div>
          </>
        )}
      </Show>
      <p class="quiet">
        What is left is shared out anew by how far this kettle reached. Cold water over what was
        poured comes first, as always.
      </p>
      <div class="button-row">
        <Action class="button button--ember" onPress={() => props.onRanOut(share())}>
          It ran out here
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
    </Sheet>
  );
}
