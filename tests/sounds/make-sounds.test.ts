import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import manifest from '../../sounds/manifest.json';
import { makeAll, manifestText } from '../../sounds/manifest.ts';
import { RECIPES } from '../../sounds/recipes.ts';
import { sineOfTurns } from '../../sounds/sine.ts';
import { powerAt, samplesOf, shareBetween } from './spectrum.ts';

const RATE_HZ = manifest.sampleRateHz;
const stored = (file: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../sounds/${file}`, import.meta.url)));

describe('the files and the manifest', () => {
  it('are what the script makes, byte for byte', () => {
    for (const { entry, bytes } of makeAll()) {
      const file = stored(entry.file);
      expect(Buffer.compare(file, bytes), entry.file).toBe(0);
      expect(createHash('sha256').update(file).digest('hex')).toBe(entry.sha256);
    }
    expect(JSON.parse(manifestText(makeAll()))).toEqual(manifest);
  });

  it('hold the size: under 500 kB together', () => {
    const bytes = manifest.sounds.reduce((sum, { bytes }) => sum + bytes, 0);
    expect(bytes).toBeLessThan(500_000);
  });

  it('are 8-bit mono PCM at the stated rate and length', () => {
    for (const sound of manifest.sounds) {
      const file = stored(sound.file);
      const view = new DataView(file.buffer);
      expect([
        view.getUint16(20, true),
        view.getUint16(22, true),
        view.getUint16(34, true),
      ]).toEqual([1, 1, 8]);
      expect(view.getUint32(24, true)).toBe(RATE_HZ);
      expect(samplesOf(file).length / RATE_HZ).toBeCloseTo(sound.durationS, 3);
    }
  });

  it('never clip, and begin and end in silence (no click)', () => {
    for (const sound of manifest.sounds) {
      const samples = samplesOf(stored(sound.file));
      const peak = samples.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
      expect(peak).toBeGreaterThan(0.88);
      expect(peak).toBeLessThan(0.9);
      expect(Math.abs(samples[0] ?? 1)).toBeLessThan(0.001);
      expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.01);
    }
  });
});

/*
 * Checks against standards. IEC 60601-1-8 pulse characteristics: read in
 * summaries (loudspeaker maker's guide, forum on its Table 4), not in the
 * standard. ISO 7731 band and the 1500 Hz advice: read in excerpts.
 * The thresholds 70 % and 50 % are ours: "main energy", "enough".
 */
describe('the spectrum, measured from the files', () => {
  for (const recipe of RECIPES) {
    const samples = samplesOf(stored(`${recipe.family}.wav`));

    it(`${recipe.family}: every pulse has four harmonics of 300–4000 Hz within 15 dB of a fundamental of 150–1000 Hz`, () => {
      for (const pulse of recipe.pulses) {
        const first = Math.round(pulse.onsetS * RATE_HZ);
        const part = samples.subarray(first, first + Math.round(pulse.lengthS * RATE_HZ));
        const ground = powerAt(part, pulse.pitchHz, RATE_HZ);
        const strong = [2, 3, 4, 5, 6, 7]
          .filter((n) => n * pulse.pitchHz >= 300 && n * pulse.pitchHz <= 4000)
          .map((n) => 10 * Math.log10(powerAt(part, n * pulse.pitchHz, RATE_HZ) / ground))
          .filter((db) => Math.abs(db) <= 15);
        // The fundamental itself lies in the band and is one of the components.
        expect(strong.length + 1, `pulse at ${pulse.onsetS} s`).toBeGreaterThanOrEqual(4);
        expect(pulse.pitchHz).toBeGreaterThanOrEqual(150);
        expect(pulse.pitchHz).toBeLessThanOrEqual(1000);
      }
    });

    it(`${recipe.family}: main energy between 500 and 2500 Hz, enough below 1500 Hz`, () => {
      expect(shareBetween(samples, 500, 2500, RATE_HZ)).toBeGreaterThan(0.7);
      expect(shareBetween(samples, 0, 1500, RATE_HZ)).toBeGreaterThan(0.5);
    });
  }

  it('finds a pure tone where it is (the measuring itself)', () => {
    const tone = Float64Array.from({ length: 4096 }, (_, i) =>
      Math.sin((2 * Math.PI * 1000 * i) / RATE_HZ),
    );
    expect(shareBetween(tone, 980, 1020, RATE_HZ)).toBeGreaterThan(0.95);
    expect(powerAt(tone, 1000, RATE_HZ) / powerAt(tone, 2000, RATE_HZ)).toBeGreaterThan(1e6);
  });
});

describe('the rhythm, found in the files', () => {
  /** Onsets: where the level of 10 ms stretches climbs out of silence or doubles after a dip. */
  const onsetsIn = (samples: Float64Array): number[] => {
    const step = Math.round(RATE_HZ / 100);
    const levels = Array.from({ length: Math.floor(samples.length / step) }, (_, k) => {
      const part = samples.subarray(k * step, (k + 1) * step);
      return Math.sqrt(part.reduce((sum, one) => sum + one * one, 0) / step);
    });
    const found: number[] = [];
    let quiet = true;
    for (const [k, level] of levels.entries()) {
      if (level < 0.02) quiet = true;
      else if (quiet && level > 0.04) {
        found.push(k / 100);
        quiet = false;
      }
    }
    return found;
  };

  it('is as the manifest says, within 40 ms', () => {
    for (const sound of manifest.sounds) {
      const found = onsetsIn(samplesOf(stored(sound.file)));
      expect(found.length, sound.file).toBe(sound.onsetsS.length);
      for (const [i, onsetS] of sound.onsetsS.entries()) {
        expect(Math.abs((found[i] ?? 99) - onsetS), `${sound.file} ${i}`).toBeLessThan(0.04);
      }
    }
  });

  it('differs between any two families in count, or by more than 15 % in some gap', () => {
    const gaps = (onsets: readonly number[]): number[] => {
      const all = onsets.slice(1).map((at, i) => at - (onsets[i] ?? 0));
      return all.map((gap) => gap / (all[0] ?? 1));
    };
    for (const a of manifest.sounds) {
      for (const b of manifest.sounds.filter(({ family }) => family > a.family)) {
        const [x, y] = [gaps(a.onsetsS), gaps(b.onsetsS)];
        const apart =
          x.length !== y.length || x.some((gap, i) => Math.abs(gap / (y[i] ?? 0) - 1) > 0.15);
        expect(apart, `${a.family} and ${b.family}`).toBe(true);
      }
    }
  });

  it('is no smoke alarm’s (ISO 8201: three equal pulses) and no gas alarm’s (four equal pulses)', () => {
    for (const { pulses, family } of RECIPES) {
      const gaps = pulses.slice(1).map((pulse, i) => pulse.onsetS - (pulses[i]?.onsetS ?? 0));
      const even = Math.max(...gaps) / Math.min(...gaps) < 1.1;
      expect(even && (pulses.length === 3 || pulses.length === 4), family).toBe(false);
    }
  });
});

describe('the sine', () => {
  it('agrees with the platform’s to 1e-9', () => {
    for (let turns = -2; turns <= 2; turns += 0.0137) {
      expect(Math.abs(sineOfTurns(turns) - Math.sin(2 * Math.PI * turns))).toBeLessThan(1e-9);
    }
  });
});
