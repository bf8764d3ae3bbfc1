import { describe, expect, it } from 'vitest';
import { pickVoice, voiceTag } from '../../../src/host/speech/index.ts';

const voice = (lang: string, localService = true, isDefault = false) => ({
  lang,
  localService,
  default: isDefault,
});

describe('the voice of a language', () => {
  it('never needs the network', () => {
    expect(pickVoice([voice('en-US', false)], 'en')).toBeUndefined();
    const home = voice('en-GB');
    expect(pickVoice([voice('en-US', false, true), home], 'en-US')).toBe(home);
  });

  it('is of the region asked for, else the device’s default, else any', () => {
    const [us, gb, au] = [voice('en-US'), voice('en-GB'), voice('en-AU', true, true)];
    expect(pickVoice([us, gb, au], 'en-GB')).toBe(gb);
    expect(pickVoice([us, gb, au], 'en')).toBe(au);
    expect(pickVoice([us, gb], 'en-NZ')).toBe(us);
  });

  it('is found under old tags: underscores, and the old code of Hebrew', () => {
    const old = voice('iw_IL');
    expect(pickVoice([voice('en-US'), old], 'he-IL')).toBe(old);
    const french = voice('fr_FR');
    expect(pickVoice([voice('fr-CA'), french], 'fr-FR')).toBe(french);
  });

  it('is none for a language the device does not speak', () => {
    expect(pickVoice([voice('en-US'), voice('hr-HR')], 'he')).toBeUndefined();
    expect(pickVoice([], 'en')).toBeUndefined();
  });
});

describe('the tag a voice is asked for by', () => {
  it('has the reader’s own region, if the device tells one of that language', () => {
    expect(voiceTag('es-ES', ['en-US', 'es-MX', 'es'])).toBe('es-MX');
    expect(voiceTag('he-IL', ['iw-IL'])).toBe('iw-IL');
  });

  it('has else the region the language is written in', () => {
    expect(voiceTag('fr-FR', ['fr', 'en-US'])).toBe('fr-FR');
    expect(voiceTag('fr-FR', [])).toBe('fr-FR');
  });
});
