import { For, Show } from 'solid-js';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import type { RunChoices } from '../choices.ts';
import type { VoiceState } from '../voice/voice.ts';

const ROWS: readonly (readonly [keyof RunChoices, string, string])[] = [
  [
    'pedalActs',
    'The pedal presses the main action',
    'Page down or right arrow; else it moves the stage to the next step. A pedal never answers a question that guards a step.',
  ],
  ['spoken', 'Prompts are spoken', 'By a voice that lives on this device; nothing is sent away.'],
  ['soonSounds', 'Sound for “about now”', 'Kettles that should boil, burners that should glow.'],
  ['doneSounds', 'Sound for a wait that is over', 'Rests, cool-downs, cycles.'],
];

const VOICE_WORDS: Readonly<Record<VoiceState, string>> = {
  off: '',
  asking: 'Looking for a voice…',
  ready: 'A voice of this device speaks.',
  'no-voice':
    'This device has no voice that works without a network: nothing is spoken. One can be added in the device’s settings for speech.',
};

const KEYS: readonly (readonly [string, string])[] = [
  ['Space, Enter', 'main action'],
  ['Page down, right arrow', 'next step on the stage (or main action, as set above)'],
  ['Page up, left arrow', 'step before'],
  ['Tab, then Enter', 'every other button, and every question that guards a step'],
  ['S, or Escape when nothing lies on top', 'Stop – make safe'],
  ['R', 'say the last prompt again'],
  ['Escape', 'close what lies on top'],
];

/** Pedal, voice and sounds, by household; stored on this device. */
export function SettingsSheet(props: {
  choices: RunChoices;
  onChoice: (name: keyof RunChoices, value: boolean) => void;
  voice: VoiceState;
  onSayAgain: () => void;
  onClose: () => void;
}) {
  return (
    <Sheet label="Pedal, voice and sounds" onClose={props.onClose}>
      <div class="sheet-head">
        <h2>Pedal, voice and sounds</h2>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
      <div class="settings-rows">
        <For each={ROWS}>
          {([name, title, says]) => (
            <label class="check settings-row">
              <input
                type="checkbox"
                checked={props.choices[name]}
                onChange={(event) => props.onChoice(name, event.currentTarget.checked)}
              />
              <span>
                {title}
                <span class="quiet step-state">{says}</span>
                <Show when={name === 'spoken' && VOICE_WORDS[props.voice] !== ''}>
                  <span class="step-state" role="status">
                    {VOICE_WORDS[props.voice]}
                  </span>
                </Show>
              </span>
            </label>
          )}
        </For>
      </div>
      <p class="quiet">What must be answered, and what is a hazard, sounds always.</p>
      <Show when={props.choices.spoken}>
        <Action class="button" onPress={props.onSayAgain}>
          Say the last prompt again
        </Action>
      </Show>
      <h3>Keys</h3>
      <dl class="keys">
        <For each={KEYS}>
          {([key, does]) => (
            <div>
              <dt>{key}</dt>
              <dd>{does}</dd>
            </div>
          )}
        </For>
      </dl>
    </Sheet>
  );
}
