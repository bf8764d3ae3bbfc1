import { afterAll, describe, expect, it } from 'vitest';
import { onTablet } from './support/on-tablet.ts';
import { EnglishLeft, wordsOfDemo } from './support/pseudo/english-left.ts';
import { Reading } from './support/pseudo/reading.ts';
import { openRead } from './support/pseudo/walk-open.ts';
import { DEMO, TYPED, walkThrough } from './support/pseudo/walk.ts';

/**
 * The whole app in a made-up language: English with an accent on every letter
 * and every vowel twice, so that it grows by about two fifths. A word without
 * accents did not come from the catalogue; a word that is cut off has no room
 * for a longer language. What people wrote themselves stays as they wrote it.
 */
const LANGUAGE = 'en-XA';

const on = onTablet('file', async (at) => {
  await at.start({ language: LANGUAGE });
  await openRead(at);
});
const reading = new Reading(on, new EnglishLeft([...wordsOfDemo(DEMO), TYPED]), 'pseudo');

afterAll(() => {
  console.log(`Read in ${LANGUAGE}: ${reading.screens} screens and prints.`);
});

describe('in a language made of accents', () => {
  it('the reader finds a word that is not of the catalogue, and one that is cut off', async () => {
    const control = new EnglishLeft(wordsOfDemo(DEMO));
    await on.screen.waitForElement('.demo');
    await on.screen.see("document.querySelector('.demo').title = 'Plain words'");
    control.look('control', await reading.texts());
    expect(Object.values(control.take()).flat().join()).toContain('Plain words');
    await on.screen.see(
      "document.querySelector('.demo').style.cssText = 'width: 60px; overflow: hidden'",
    );
    expect((await on.screen.see<string[]>('reader.cutOff()')).join()).toContain('button.demo');
    expect((await reading.texts()).length).toBeGreaterThan(20);
    await on.load('kitchen');
    await on.screen.waitForElement('.demo');
  });

  walkThrough(on, reading);
});
