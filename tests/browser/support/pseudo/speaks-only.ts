import { afterAll, describe, expect, it } from 'vitest';
import { onTablet } from '../on-tablet.ts';
import { ForeignWords } from './foreign-words.ts';
import { Reading } from './reading.ts';
import { openRead } from './walk-open.ts';
import { walkThrough } from './walk.ts';

/** No word of another language on any screen, print or file of the app, when it speaks this one. */
export async function speaksOnly(language: string, direction: 'ltr' | 'rtl'): Promise<void> {
  const finder = await ForeignWords.of(language, []);
  const on = onTablet('file', async (at) => {
    await at.start({ language });
    await openRead(at);
  });
  const reading = new Reading(on, finder, language, 'words');

  afterAll(() => {
    console.log(`Read in ${language}: ${reading.screens} screens, prints and files.`);
  });

  describe(`no other language than ${language}`, () => {
    it('finds a sentence and a name that are English, and tells its language to the browser', async () => {
      const { screen } = on;
      await screen.waitForElement('.demo');
      expect(await screen.see('document.documentElement.lang')).toBe(language);
      expect(await screen.see('document.documentElement.dir')).toBe(direction);
      for (const planted of ['Start the run', 'Whistling kettle']) {
        await screen.see(`document.querySelector('.demo').title = '${planted}'`);
        finder.look('control', await reading.texts());
        expect(Object.values(finder.take()).flat().join()).toContain(planted);
      }
      await on.load('kitchen');
      await screen.waitForElement('.demo');
    });

    walkThrough(on, reading);
  });
}
