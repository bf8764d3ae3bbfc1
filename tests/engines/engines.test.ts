import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { serve, type Site } from '../browser/support/server.ts';
import type { EnginePage } from './support/engine-page.ts';
import { ENGINES } from './support/engines.ts';
import { actUntil, beginRun, look, picture, press, waitFor } from './support/hands.ts';

/** Sounds that the service worker keeps. */
const SOUNDS = `caches.keys()
  .then(([name]) => caches.open(name))
  .then((cache) => cache.keys())
  .then((requests) => requests.map(({ url }) => url).filter((url) => url.endsWith('.wav')))`;
/** What the policy of the page refused from now on, and which of its files came from elsewhere. */
const WATCH_POLICY = `(globalThis.refused = [], addEventListener('securitypolicyviolation',
  ({ violatedDirective, blockedURI, sourceFile, lineNumber }) =>
    refused.push([violatedDirective, blockedURI, sourceFile, lineNumber].join(' '))), true)`;
const ELSEWHERE = `performance.getEntriesByType('resource').map(({ name }) => name)
  .filter((name) => !name.startsWith(location.origin + '/') && !/^(?:blob|data):/.test(name))`;
/** Where the engine tells of what it keeps; WebKitGTK has no estimate. */
const STORAGE = `(navigator.storage?.estimate?.() ?? Promise.resolve({})).then(({ quota = null }) => ({
  quota,
  persist: typeof navigator.storage?.persist,
}))`;

const chooseLanguage = (tag: string) => `(() => {
  const choice = document.querySelector('select[name="language"]');
  choice.value = ${JSON.stringify(tag)};
  choice.dispatchEvent(new Event('change', { bubbles: true }));
  return true;
})()`;
/** Where the line of pages begins and ends, and whether each family of the app writes Hebrew with letters of its own. */
const LOOKS = `document.fonts.ready.then(() => {
  const middle = (page) => {
    const box = document.querySelector('[data-page="' + page + '"]').getBoundingClientRect();
    return box.x + box.width / 2;
  };
  const pen = document.createElement('canvas').getContext('2d');
  const widthPx = (family) => ((pen.font = '64px ' + family), pen.measureText('הגעלה וליבון').width);
  return {
    firstX: middle('kitchen'),
    lastX: middle('record'),
    overflowPx: document.documentElement.scrollWidth - innerWidth,
    title: document.querySelector('h1').innerText,
    ownLetters: ['Assistant', 'Frank Ruhl Libre'].map(
      (family) => Math.abs(widthPx('"' + family + '", monospace') - widthPx('monospace')) > 1,
    ),
  };
})`;
type Looks = {
  readonly firstX: number;
  readonly lastX: number;
  readonly overflowPx: number;
  readonly title: string;
  readonly ownLetters: readonly boolean[];
};

async function expectOwnFilesOnly(page: EnginePage): Promise<void> {
  expect(await page.see<string[]>('refused')).toEqual([]);
  expect(await page.see<string[]>(ELSEWHERE)).toEqual([]);
}

for (const engine of ENGINES)
  describe(engine.name, () => {
    if (!('start' in engine)) {
      it(`plays a run`, ({ skip }) => skip(`not installed; to get it: ${engine.howToGet}`));
      return;
    }
    let site: Site;
    let page: EnginePage;
    /** An engine that is installed and does not start is left out, by name. */
    let whyNot: string | undefined;
    const profile = mkdtempSync(join(tmpdir(), 'engine-'));

    beforeAll(async () => {
      site = await serve();
      try {
        page = await engine.start(profile);
      } catch (error) {
        whyNot = `could not be started: ${String(error)}`;
      }
      console.log(`${engine.name}: ${whyNot ?? engine.version}`);
    });
    beforeEach(({ skip }) => {
      if (whyNot !== undefined) skip(whyNot);
    });
    afterAll(async () => {
      if (whyNot === undefined) await page.kill();
      await site.stop();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    });

    it('opens a demo, has its fonts, decodes the alarm and keeps everything for offline', async () => {
      await page.open(`${site.url}/#/plan/flat-coils`);
      await waitFor(page, `document.querySelector('.plan-place') !== null`);
      await page.see(WATCH_POLICY);
      const families = await page.see<string[]>(
        `document.fonts.ready.then((fonts) => [...fonts].filter(({ status }) => status === 'loaded')
          .map(({ family }) => family.replaceAll('"', '')))`,
      );
      expect(new Set(families).size).toBeGreaterThanOrEqual(2);
      await waitFor(page, `navigator.serviceWorker.controller !== null`);
      const sounds = await waitFor<string[]>(
        page,
        `${SOUNDS}.then((urls) => (urls.length === 4 ? urls : null))`,
      );
      for (const url of sounds) {
        const lengthS = await page.see<number>(
          `fetch(${JSON.stringify(url)})
            .then((answer) => answer.arrayBuffer())
            .then((bytes) => new OfflineAudioContext(1, 44100, 44100).decodeAudioData(bytes))
            .then(({ duration }) => duration)`,
        );
        expect(lengthS, url).toBeGreaterThan(0.1);
      }
      const storage = await page.see<{ quota: number | null; persist: string }>(STORAGE);
      expect(storage.quota === null || storage.quota > 50e6, JSON.stringify(storage)).toBe(true);
      await expectOwnFilesOnly(page);
      await picture(page, `${engine.name}-plan`);
    });

    it('reads from right to left in Hebrew, with letters of its own, and back again', async () => {
      const before = await page.see<Looks>(LOOKS);
      expect(before.firstX).toBeLessThan(before.lastX);
      await page.see(chooseLanguage('he'));
      await waitFor(
        page,
        `document.documentElement.dir === 'rtl' && document.documentElement.lang === 'he'`,
      );
      await waitFor(page, `/[א-ת]/.test(document.querySelector('h1').innerText)`);
      const looks = await page.see<Looks>(LOOKS);
      await picture(page, `${engine.name}-hebrew`);
      expect(looks.firstX).toBeGreaterThan(looks.lastX);
      expect(looks.ownLetters).toEqual([true, true]);
      expect(looks.overflowPx).toBeLessThanOrEqual(0);
      await page.see(chooseLanguage('en'));
      await waitFor(page, `document.documentElement.dir === 'ltr'`);
      // The demo is opened anew, in the words of the language.
      const { title } = before;
      await waitFor(page, `document.querySelector('h1').innerText === ${JSON.stringify(title)}`);
    });

    it('asks where it was when the page is loaded anew in a glow, with the server gone', async () => {
      await beginRun(page, site.url);
      await page.see(WATCH_POLICY);
      const before = await actUntil(page, { kind: 'glow', stage: 'hold' }, 400);
      await expectOwnFilesOnly(page);
      await picture(page, `${engine.name}-glow`);
      await site.stop();
      await page.open(`${site.url}/?again#/run`);
      await waitFor(page, `document.querySelector('.review') !== null`);
      expect(before.status).toBe('running');
      expect((await look(page)).status).toBe('reviewing');
      await picture(page, `${engine.name}-review`);
    });

    it('goes on after a kill where its profile is kept', async ({ skip }) => {
      if (!engine.keepsProfile) skip('its driver gives only windows that forget');
      await page.kill();
      page = await engine.start(profile);
      site = await serve(undefined, site.port);
      await page.open(`${site.url}/#/run`);
      await waitFor(page, `document.querySelector('.review') !== null`);
      expect((await look(page)).status).toBe('reviewing');
    });

    it('plays the run to its end and shows the record', async () => {
      await page.see(WATCH_POLICY);
      const end = await actUntil(page, { status: 'closed' }, 1500);
      expect(end.status).toBe('closed');
      await press(page, '[data-action="record"]');
      const text = await waitFor<string>(page, `document.querySelector('main article')?.innerText`);
      expect(text).toContain('Flat with coils');
      await expectOwnFilesOnly(page);
      await picture(page, `${engine.name}-record`);
    });
  });
