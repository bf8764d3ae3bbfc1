/**
 * Bytes of a RIFF/WAVE file: PCM, one channel, 8 bits. Rounding lies 48 dB under
 * an alert that is to be heard over a kettle, and halves what is kept offline.
 */
export function toWav(samples: Float64Array, sampleRateHz: number): Uint8Array {
  const dataBytes = samples.length;
  const bytes = new Uint8Array(HEADER_BYTES + dataBytes);
  const view = new DataView(bytes.buffer);
  const text = (at: number, word: string): void => {
    for (let i = 0; i < word.length; i += 1) view.setUint8(at + i, word.charCodeAt(i));
  };
  text(0, 'RIFF');
  view.setUint32(4, HEADER_BYTES - 8 + dataBytes, true);
  text(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true); // PCM
  view.setUint16(22, 1, true); // channels
  view.setUint32(24, sampleRateHz, true);
  view.setUint32(28, sampleRateHz, true); // bytes a second
  view.setUint16(32, 1, true); // bytes a frame
  view.setUint16(34, 8, true); // bits a sample
  text(36, 'data');
  view.setUint32(40, dataBytes, true);
  for (const [i, value] of samples.entries())
    view.setUint8(HEADER_BYTES + i, SILENCE + Math.round(value * 127));
  return bytes;
}

const HEADER_BYTES = 44;
/** Samples of 8 bits have no sign: this is their zero. */
const SILENCE = 128;
