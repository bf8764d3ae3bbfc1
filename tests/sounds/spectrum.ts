/** Samples of an 8-bit mono PCM file, −1 to 1, read back from its bytes. */
export function samplesOf(wav: Uint8Array): Float64Array {
  const view = new DataView(wav.buffer, wav.byteOffset, wav.byteLength);
  const count = view.getUint32(40, true);
  return Float64Array.from({ length: count }, (_, i) => (view.getUint8(44 + i) - 128) / 127);
}

/** Power at one frequency over a stretch of samples under a Hann window (Goertzel 1958, from memory). */
export function powerAt(samples: Float64Array, frequencyHz: number, rateHz: number): number {
  const n = samples.length;
  const w = (2 * Math.PI * frequencyHz) / rateHz;
  let before = 0;
  let beforeThat = 0;
  for (let i = 0; i < n; i += 1) {
    const hann = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / n);
    const now = (samples[i] ?? 0) * hann + 2 * Math.cos(w) * before - beforeThat;
    beforeThat = before;
    before = now;
  }
  return before * before + beforeThat * beforeThat - 2 * Math.cos(w) * before * beforeThat;
}

/** Energy per bin of the whole sound: discrete Fourier transform by halving, zero-padded to a power of two. */
function energies(samples: Float64Array): { energy: Float64Array; bins: number } {
  let n = 1;
  while (n < samples.length) n *= 2;
  const re = new Float64Array(n);
  re.set(samples);
  const im = new Float64Array(n);
  transform(re, im);
  return { energy: Float64Array.from({ length: n / 2 }, (_, k) => sq(re[k]) + sq(im[k])), bins: n };
}

/** Part of all energy between two frequencies. */
export function shareBetween(
  samples: Float64Array,
  lowHz: number,
  highHz: number,
  rateHz: number,
): number {
  const { energy, bins } = energies(samples);
  let inside = 0;
  let all = 0;
  for (const [k, value] of energy.entries()) {
    const hz = (k * rateHz) / bins;
    all += value;
    if (hz >= lowHz && hz <= highHz) inside += value;
  }
  return inside / all;
}

const sq = (value = 0): number => value * value;

function transform(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  if (n === 1) return;
  const half = n / 2;
  const pick = (from: Float64Array, odd: number) =>
    Float64Array.from({ length: half }, (_, i) => from[2 * i + odd] ?? 0);
  const [evenRe, evenIm, oddRe, oddIm] = [pick(re, 0), pick(im, 0), pick(re, 1), pick(im, 1)];
  transform(evenRe, evenIm);
  transform(oddRe, oddIm);
  for (let k = 0; k < half; k += 1) {
    const angle = (-2 * Math.PI * k) / n;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const [oRe, oIm] = [oddRe[k] ?? 0, oddIm[k] ?? 0];
    const [tRe, tIm] = [c * oRe - s * oIm, c * oIm + s * oRe];
    const [eRe, eIm] = [evenRe[k] ?? 0, evenIm[k] ?? 0];
    re[k] = eRe + tRe;
    im[k] = eIm + tIm;
    re[k + half] = eRe - tRe;
    im[k + half] = eIm - tIm;
  }
}
