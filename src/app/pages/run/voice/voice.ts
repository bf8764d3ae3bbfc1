import { createEffect, createSignal, onCleanup, untrack } from 'solid-js';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import type { Speech } from '../../../../host/speech/index.ts';
import { NOTHING_TOLD, promptAgain, promptOf } from './prompts.ts';

/** `no-voice`: none on the device speaks without a network, or it cannot speak at all. */
export type VoiceState = 'off' | 'asking' | 'ready' | 'no-voice';

/** The words of the app. */
const LANGUAGE = 'en';

type VoiceOptions = {
  readonly on: () => boolean;
  readonly view: () => RunView;
  readonly step: () => StepView | undefined;
  /** The port to the device's voice, fetched when it is first wanted. */
  readonly open: () => Promise<Speech>;
};

/** Speaks what is new on the stage while it is switched on; nothing twice, nothing each second. */
export function createVoice({ on, view, step, open }: VoiceOptions) {
  const [state, setState] = createSignal<VoiceState>('off');
  let speech: Speech | undefined;
  let told = NOTHING_TOLD;

  const say = (text: string): void => {
    if (text !== '' && speech) void speech.say(text, LANGUAGE);
  };
  const ready = async (): Promise<void> => {
    setState('asking');
    try {
      speech ??= await open();
      const can = await speech.canSpeak(LANGUAGE);
      if (untrack(on)) setState(can ? 'ready' : 'no-voice');
    } catch {
      setState('no-voice');
    }
  };
  createEffect(() => {
    if (on()) void ready();
    else {
      speech?.hush();
      told = NOTHING_TOLD;
      setState('off');
    }
  });
  createEffect(() => {
    if (state() !== 'ready') return;
    const next = promptOf(told, view(), step());
    told = next.told;
    say(next.say);
  });
  onCleanup(() => speech?.hush());
  return {
    state,
    again(): void {
      if (state() === 'ready') say(promptAgain(view(), step()));
    },
  };
}
