import { For, Show } from 'solid-js';
import type { Persistence } from '../../../../host/persist/index.ts';
import { say, t } from '../../../context/language.ts';
import type { RunChoices } from '../../../controllers/run/run-choices.ts';
import { APP_VERSION } from '../../../context/version.ts';
import { LanguageChoice } from '../../../parts/head/language-choice.tsx';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import type { VoiceState } from '../voice/voice.ts';

const CHOICES = ['pedalActs', 'spoken', 'soonSounds', 'doneSounds'] as const;
const KEYS = ['main', 'forward', 'back', 'tab', 'stop', 'repeat', 'escape'] as const;

/** Pedal, voice, sounds and language, by household; stored on this device. */
export function SettingsSheet(props: {
  choices: RunChoices;
  onChoice: (name: keyof RunChoices, value: boolean) => void;
  onLanguage: (tag: string) => void;
  kept: Persistence;
  voice: VoiceState;
  onSayAgain: () => void;
  onClose: () => void;
}) {
  return (
    <Sheet label={t('run.choices.title')} onClose={props.onClose}>
      <div class="sheet-head">
        <h2>{t('run.choices.title')}</h2>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
      <div class="settings-rows">
        <For each={CHOICES}>
          {(name) => (
            <label class="check settings-row">
              <input
                type="checkbox"
                name={name}
                checked={props.choices[name]}
                onChange={(event) => props.onChoice(name, event.currentTarget.checked)}
              />
              <span>
                {t(`run.choices.${name}`)}
                <span class="quiet step-state">{t(`run.choices.${name}.about`)}</span>
                <Show when={name === 'spoken' && props.voice}>
                  {(voice) => (
                    <span class="step-state" role="status" data-key={voice().tells.key}>
                      {say(voice().tells)}
                    </span>
                  )}
                </Show>
              </span>
            </label>
          )}
        </For>
      </div>
      <p class="quiet">{t('run.choices.always')}</p>
      <Show when={props.choices.spoken}>
        <Action class="button" name="say-again" onPress={props.onSayAgain}>
          {t('run.choices.say-again')}
        </Action>
      </Show>
      <label class="field">
        <span>{t('run.choices.language')}</span>
        <LanguageChoice onLanguage={props.onLanguage} />
      </label>
      <Stored kept={props.kept} />
      <Keys />
      <p class="quiet" data-version>
        {t('run.settings.version', { version: APP_VERSION })}
      </p>
    </Sheet>
  );
}

const LOSSES = ['room', 'safari', 'private', 'cleared'] as const;

/** What the browser answered about keeping what is stored, and what it may do all the same. */
function Stored(props: { kept: Persistence }) {
  return (
    <section data-kept={props.kept}>
      <h3>{t('run.kept.title')}</h3>
      <p>{t(`run.start.kept.${props.kept}`)}</p>
      <ul class="quiet">
        <For each={LOSSES}>{(loss) => <li>{t(`run.kept.${loss}`)}</li>}</For>
      </ul>
      <p>{t('run.kept.do')}</p>
    </section>
  );
}

function Keys() {
  return (
    <>
      <h3>{t('run.keys')}</h3>
      <dl class="keys">
        <For each={KEYS}>
          {(key) => (
            <div>
              <dt>{t(`run.keys.${key}`)}</dt>
              <dd>{t(`run.keys.${key}.does`)}</dd>
            </div>
          )}
        </For>
      </dl>
    </>
  );
}
