import { createEffect, createMemo, createSignal, onCleanup, untrack } from 'solid-js';
import { message, type Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import type { Speech } from '../../../../host/speech/index.ts';
import { loadLater, sayPlain, translator } from '../../../context/language.ts';
import type { Told } from './prompts.ts';

/** Whether prompts can be spoken, and what to say about it; undefined: they are off. */
export type VoiceState = { readonly speaks: boolean; readonly tells: Message } | undefined;

type VoiceOptions = {
  readonly on: () => boolean;
  readonly view: () => RunView;
  readonly step: () => StepView | undefined;
  /** The port to the device's voice, fetched when it is first wanted. */
  readonly open: () => Promise<Speech>;
};

type Prompts = typeof import('./prompts.ts');

const SILENT = (tells: Message): VoiceState => ({ speaks: false, tells });

/** Speaks what is new on the screen while it is switched on; nothing twice, nothing each second. */
export function createVoice({ on, view, step, open }: VoiceOptions) {
  const [state, setState] = createSignal<VoiceState>();
  let speech: Speech | undefined;
  let prompts: Prompts | undefined;
  let told: Told | undefined;

  const speak = (lines: readonly Message[]): void => {
    if (lines.length === 0) return;
    const text = translator().t('run.voice.aloud', { text: lines.map(sayPlain).join(' ') });
    void speech?.say(text, translator().format.locale);
  };
  const ready = async (language: string): Promise<void> => {
    setState(SILENT(message('run.choices.voice.asking')));
    try {
      // What is spoken comes with the voice: most runs are silent.
      [prompts, speech] = await Promise.all([
        import('./prompts.ts'),
        speech ?? open(),
        loadLater(['run-later']),
      ]);
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
  // The language alone: sentences that come later are no reason to ask the device again.
  const language = createMemo(() => translator().language);
  createEffect(() => {
    if (on()) void ready(language());
    else {
      speech?.hush();
      told = undefined;
      setState(undefined);
    }
  });
  createEffect(() => {
    if (!state()?.speaks || !prompts) return;
    const next = prompts.promptOf(told ?? prompts.NOTHING_TOLD, view(), step());
    told = next.told;
    untrack(() => speak(next.says));
  });
  onCleanup(() => speech?.hush());
  return {
    state,
    again(): void {
      if (state()?.speaks && prompts) speak(prompts.promptAgain(view(), step()));
    },
  };
}
