import { withTimeout } from '../timeout/index.ts';
import { pickVoice, voiceTag } from './pick-voice.ts';

/** What became of a prompt. `no-voice`: none on the device for this language. `cut`: a newer one took its place. */
export type Spoken = 'spoken' | 'cut' | 'no-voice' | 'timeout' | 'failed' | 'not-supported';

export type Speech = {
  /** Can this language be spoken without a network? Waits for the list of voices. */
  canSpeak(lang: string): Promise<boolean>;
  /** Speaks a short prompt, cutting one in progress. Never rejects. */
  say(text: string, lang: string): Promise<Spoken>;
  hush(): void;
};

/** Some engines give their voices late, and some never; longest wait, ms. */
const VOICES_LIMIT_MS = 3000;
/** Longest prompt, ms: engines exist that neither end nor fail. */
const PROMPT_LIMIT_MS = 15_000;

function voicesOf(synthesis: SpeechSynthesis): Promise<readonly SpeechSynthesisVoice[]> {
  const now = synthesis.getVoices();
  if (now.length > 0) return Promise.resolve(now);
  const later = new Promise<readonly SpeechSynthesisVoice[]>((resolve) => {
    synthesis.addEventListener('voiceschanged', () => resolve(synthesis.getVoices()), {
      once: true,
    });
  });
  return withTimeout('list-of-voices', VOICES_LIMIT_MS, later).catch(() => synthesis.getVoices());
}

export function createSpeech(): Speech {
  const synthesis = 'speechSynthesis' in window ? window.speechSynthesis : undefined;
  const voiceFor = async (lang: string): Promise<SpeechSynthesisVoice | undefined> =>
    synthesis && pickVoice(await voicesOf(synthesis), voiceTag(lang, navigator.languages));

  const speak = (voice: SpeechSynthesisVoice, text: string): Promise<Spoken> =>
    new Promise((resolve) => {
      const prompt = new SpeechSynthesisUtterance(text);
      prompt.voice = voice;
      // Old devices write their tags with an underscore, which is none.
      prompt.lang = voice.lang.replaceAll('_', '-');
      prompt.addEventListener('end', () => resolve('spoken'));
      prompt.addEventListener('error', ({ error }) =>
        resolve(error === 'interrupted' || error === 'canceled' ? 'cut' : 'failed'),
      );
      synthesis?.cancel();
      synthesis?.speak(prompt);
    });

  return {
    canSpeak: async (lang) => (await voiceFor(lang)) !== undefined,
    async say(text, lang) {
      if (!synthesis) return 'not-supported';
      const voice = await voiceFor(lang);
      if (!voice) return 'no-voice';
      return withTimeout('spoken-prompt', PROMPT_LIMIT_MS, speak(voice, text)).catch(() => {
        synthesis.cancel();
        return 'timeout';
      });
    },
    hush: () => synthesis?.cancel(),
  };
}
