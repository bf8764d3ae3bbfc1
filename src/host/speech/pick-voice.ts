/** What is needed of a voice of the platform. */
export type VoiceLike = {
  readonly lang: string;
  readonly localService: boolean;
  readonly default: boolean;
};

/** "en_US" and "en-us" → "en-us"; old Android tags use an underscore. */
function tag(lang: string): string {
  return lang.replace('_', '-').toLowerCase();
}

function language(lang: string): string {
  const [first = ''] = tag(lang).split('-');
  // Hebrew's code of ISO 639:1988, still given by old devices.
  return first === 'iw' ? 'he' : first;
}

/**
 * A voice that speaks the language and lives on the device; one that needs the
 * network is never taken. The same region first, then the device's default.
 */
export function pickVoice<V extends VoiceLike>(voices: readonly V[], lang: string): V | undefined {
  const able = voices.filter(
    (voice) => voice.localService && language(voice.lang) === language(lang),
  );
  return (
    able.find((voice) => tag(voice.lang) === tag(lang)) ??
    able.find((voice) => voice.default) ??
    able[0]
  );
}

/**
 * The tag (BCP 47) a voice is asked for by: the reader's own region where the
 * device tells one of the language, else the region the language is written in.
 */
export function voiceTag(locale: string, tags: readonly string[]): string {
  return tags.find((one) => one.includes('-') && language(one) === language(locale)) ?? locale;
}
