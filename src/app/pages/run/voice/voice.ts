import { createEffect, createSignal, onCleanup, untrack } from 'solid-js';
import { message, type Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import type { Speech } from '../../../../host/speech/index.ts';
import { say, translator } from '../../../context/language.ts';
import { NOTHING_TOLD, promptAgain, promptOf } from './prompts.ts';

/** Whether prompts can be spoken, and what to say about it; undefined: they are off. */
export type VoiceState = { readonly speaks: boolean; readonly tells: Message } | undefined;

type VoiceOptions = {
  readonly on: () => boolean;
  readonly view: () => RunView;
  readonly step: () => StepView | undefined;
  /** The port to the device's voice, fetched when it is first wanted. */
  readonly open: () => Promise<Speech>;
};

const SILENT = (tells: Message): VoiceState => ({ speaks: false, tells });

/** Speaks what is new on the screen while it is switched on; nothing twice, nothing each second. */
export function createVoice({ on, view, step, open }: VoiceOptions) {
  const [state, setState] = createSignal<VoiceState>();
  let speech: Speech | undefined;
  let told = NOTHING_TOLD;

  const speak = (lines: readonly Message[]): void => {
    if (lines.length > 0) void speech?.say(lines.map(say).join(' '), translator().language);
  };
  const ready = async (language: string): Promise<void> => {
    setState(SILENT(message('run.choices.voice.asking')));
    try {
      speech ??= await open();
      const can = await speech.canSpeak(language);
      if (!untrack(on)) return;
      setState(
        can
          ? { speaks: true, tells: message('run.choices.voice.ready') }
          : SILENT(message('run.choices.voice.no-voice')),
      );
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      setState(SILENT(message('run.choices.voice.failed', { why })));
    }
  };
  createEffect(() => {
    const { language } = translator();
    if (on()) void ready(language);
    else {
      speech?.hush();
      told = NOTHING_TOLD;
      setState(undefined);
    }
  });
  createEffect(() => {
    if (!state()?.speaks) return;
    const next = promptOf(told, view(), step());
    told = next.told;
    untrack(() => speak(next.says));
  });
  onCleanup(() => speech?.hush());
  return {
    state,
    again(): void {
      if (state()?.speaks) speak(promptAgain(view(), step()));
    },
  };
}
