import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSpeech } from '../../../src/host/speech/index.ts';

/** A voice of the platform that says what it was given, and ends when the test says so. */
class FakeUtterance extends EventTarget {
  voice: unknown = null;
  lang = '';
  constructor(readonly text: string) {
    super();
  }
}

const voice = (lang: string, localService: boolean) => ({ lang, localService, default: false });

class FakeSynthesis extends EventTarget {
  spoken: FakeUtterance[] = [];
  cancels = 0;
  constructor(public voices: ReturnType<typeof voice>[]) {
    super();
  }
  getVoices() {
    return this.voices;
  }
  speak(one: FakeUtterance) {
    this.spoken.push(one);
  }
  cancel() {
    this.cancels += 1;
    const last = this.spoken.at(-1);
    last?.dispatchEvent(Object.assign(new Event('error'), { error: 'interrupted' }));
  }
}

const install = (synthesis: FakeSynthesis | undefined) => {
  vi.stubGlobal('window', synthesis ? { speechSynthesis: synthesis } : {});
  vi.stubGlobal('SpeechSynthesisUtterance', FakeUtterance);
  vi.stubGlobal('navigator', { languages: ['en-GB', 'en'] });
};

/** Lets the promises in between settle. */
const settle = async () => {
  for (let n = 0; n < 5; n += 1) await Promise.resolve();
};

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('speaking by a voice of the device', () => {
  it('speaks by a voice that needs no network, and tells when it has ended', async () => {
    const synthesis = new FakeSynthesis([voice('en-US', false), voice('en-GB', true)]);
    install(synthesis);
    const speech = createSpeech();
    expect(await speech.canSpeak('en')).toBe(true);
    const said = speech.say('Pour kettle 2.', 'en');
    await settle();
    expect(synthesis.spoken.map(({ text }) => text)).toEqual(['Pour kettle 2.']);
    expect(synthesis.spoken[0]?.lang).toBe('en-GB');
    synthesis.spoken[0]?.dispatchEvent(new Event('end'));
    expect(await said).toBe('spoken');
  });

  it('says that there is none, and speaks nothing, when every voice is on the network', async () => {
    const synthesis = new FakeSynthesis([voice('en-US', false), voice('fr-FR', true)]);
    install(synthesis);
    const speech = createSpeech();
    expect(await speech.canSpeak('en')).toBe(false);
    expect(await speech.say('Pour.', 'en')).toBe('no-voice');
    expect(synthesis.spoken).toEqual([]);
  });

  it('waits for voices that come late, and gives up on those that never come', async () => {
    const late = new FakeSynthesis([]);
    install(late);
    const asked = createSpeech().canSpeak('en');
    late.voices = [voice('en-GB', true)];
    late.dispatchEvent(new Event('voiceschanged'));
    expect(await asked).toBe(true);

    install(new FakeSynthesis([]));
    const never = createSpeech().canSpeak('en');
    await vi.advanceTimersByTimeAsync(4000);
    expect(await never).toBe(false);
  });

  it('lets a newer prompt cut an older one, and none last for ever', async () => {
    const synthesis = new FakeSynthesis([voice('en-GB', true)]);
    install(synthesis);
    const speech = createSpeech();
    const first = speech.say('One.', 'en');
    await settle();
    const second = speech.say('Two.', 'en');
    await settle();
    expect(await first).toBe('cut');
    await vi.advanceTimersByTimeAsync(16_000);
    expect(await second).toBe('timeout');
  });

  it('tells a device that cannot speak at all', async () => {
    install(undefined);
    const speech = createSpeech();
    expect(await speech.canSpeak('en')).toBe(false);
    expect(await speech.say('Pour.', 'en')).toBe('not-supported');
    expect(() => speech.hush()).not.toThrow();
  });
});
