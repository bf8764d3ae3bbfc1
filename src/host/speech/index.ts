export { pickVoice, voiceTag, type VoiceLike } from './pick-voice.ts';
export { createSpeech, type Speech, type Spoken } from './speech.ts';
