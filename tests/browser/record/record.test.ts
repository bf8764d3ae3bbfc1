import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';
import type { DemoId, Screen } from '../support/screen.ts';

const folder = mkdtempSync(join(tmpdir(), 'glowpour-record-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const on = onTablet('test');

/** The record of a played run, brought in from its file; and that file. */
async function recordOf(demo: DemoId): Promise<{ readonly screen: Screen; readonly file: string }> {
  const screen = await on.open('record');
  const file = runFile(playedFacts(demo, { disturbed: true }));
  await bringIn(screen, file, folder);
  return { screen, file };
}

const PAPERS = [
  { name: 'A4', paperWidth: 8.27, paperHeight: 11.69 },
  { name: 'Letter', paperWidth: 8.5, paperHeight: 11 },
] as const;

/** As many pages as the browser makes of it, by the page objects of the file (ISO 32000-1, 7.7.3.3). */
async function pagesOn({ cdp }: Screen, paper: (typeof PAPERS)[number]): Promise<number> {
  const { paperWidth, paperHeight } = paper;
  const { data } = await cdp.send('Page.printToPDF', { paperWidth, paperHeight });
  const text = Buffer.from(data, 'base64').toString('latin1');
  return text.match(/\/Type\s*\/Page\b(?!s)/gu)?.length ?? 0;
}

/** What stands past the side of the screen, or is cut off at its own edge. */
function cutOff(screen: Screen): Promise<readonly string[]> {
  return screen.see(
    `[...document.querySelectorAll('.record-sheet :is(h2, h3, p, li, th, td, summary, caption)')]
      .filter((one) => one.getClientRects().length > 0)
      .filter((one) => one.getBoundingClientRect().right > innerWidth + 1 || one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== 'inline')
      .map((one) => one.tagName + ' ' + one.textContent)`,
  );
}

/** First digits of the SHA-256 of a file, as they are shown. */
function digestOf(file: string): string {
  const sum = createHash('sha256').update(file).digest('hex');
  return sum.slice(0, 16).replace(/(.{4})(?=.)/gu, '$1 ');
}

describe('the record of a finished run', () => {
  it('says whose kitchen, the verdict and what is lacking before anything else', async () => {
    const { screen } = await recordOf('flat-coils');
    await screen.resize(1280, 800);
    const seen = async (selector: string) => {
      const box = await screen.page.locator(selector).boundingBox();
      if (!box) throw new Error(`${selector} is not shown.`);
      return box;
    };
    const lacks = screen.page.locator('.record-lacks li');
    expect(await lacks.first().innerText()).toContain('The element is broken');
    const boxes = [await seen('.record-verdict'), await seen('.record-lacks')];
    for (const box of boxes) expect(box.y + box.height).toBeLessThan(800);
    // Begun at ten in the morning where the kitchen is.
    expect(await screen.page.locator('.record-facts').innerText()).toContain('10:00');
    const states = await screen.see<Record<string, number>>(
      `[...document.querySelectorAll(".record-table [data-state]")].reduce((all, { dataset: { state } }) => ({ ...all, [state]: (all[state] ?? 0) + 1 }), {})`,
    );
    expect(states).toEqual({
      poured: 3,
      steamed: 1,
      heated: 1,
      'not-purged': 1,
      cleaned: 3,
      covered: 3,
    });
    await screen.picture('record/landscape');
  });

  it('tells everything moment by moment behind one press', async () => {
    const { screen } = await recordOf('flat-coils');
    expect(await screen.page.locator('.record-text').count()).toBe(0);
    await screen.page.locator('.record-moments summary').click();
    const text = await screen.page.locator('.record-text').innerText();
    expect(text).toContain(t('report.section.notes'));
    expect(text).toContain('The landlord was here at noon');
  });

  // The mountain house has batches of utensils to tell of.
  it.each([
    ['flat-coils', 2],
    ['mountain-gas', 3],
    ['flat-glass-230', 2],
  ] as const)(
    'prints %s on %s sheets at most, black on white, without a button',
    async (demo, most) => {
      const { screen } = await recordOf(demo);
      await screen.setTheme('night');
      for (const paper of PAPERS) {
        const pages = await pagesOn(screen, paper);
        expect.soft(pages, `${demo} on ${paper.name}`).toBeGreaterThan(0);
        expect.soft(pages, `${demo} on ${paper.name}`).toBeLessThanOrEqual(most);
      }
      await screen.page.emulateMedia({ media: 'print' });
      const left = await screen.see<readonly string[]>(
        `[...document.querySelectorAll('button, input, select, summary')]
          .filter((one) => one.getClientRects().length > 0)
          .map((one) => one.textContent)`,
      );
      expect(left).toEqual([]);
      const ink = await screen.see<readonly string[]>(
        `[...new Set([...document.querySelectorAll('.record-sheet *')]
          .filter((one) => one.getClientRects().length > 0)
          .map((one) => getComputedStyle(one).color))]`,
      );
      expect(ink.every((colour) => ['rgb(0, 0, 0)', 'rgb(51, 51, 51)'].includes(colour))).toBe(
        true,
      );
      await screen.picture(`record/print-${demo}`);
    },
  );

  it('shows the digest of the very file that is saved, here and where it is brought in', async () => {
    const { screen, file } = await recordOf('flat-coils');
    const shown = () => screen.page.locator('.record-digest strong').innerText();
    expect(await shown()).toBe(t('report.digest', { digest: digestOf(file) }));
    // One entry says something else, and all sums after it are made right again.
    const changed = playedFacts('flat-coils', { disturbed: true }).map((fact) =>
      fact.body.kind === 'noted'
        ? { ...fact, body: { ...fact.body, text: 'The landlord was not here' } }
        : fact,
    );
    await bringIn(screen, runFile(changed), folder);
    await screen.page.locator('.run-list a').nth(1).waitFor();
    const [one, other] = await screen.page.locator('.run-list a').all();
    await one?.click();
    const first = await shown();
    await other?.click();
    await expect.poll(shown).not.toBe(first);
    const wanted = [file, runFile(changed)].map((text) =>
      t('report.digest', { digest: digestOf(text) }),
    );
    expect([first, await shown()].toSorted()).toEqual(wanted.toSorted());
  });

  it('has another digest, and says so, when an entry was changed where it is stored', async () => {
    const { screen, file } = await recordOf('flat-coils');
    const shown = () => screen.page.locator('.record-digest strong').innerText();
    await screen.see(
      `new Promise((resolve, reject) => {
        const open = indexedDB.open('glowpour');
        open.onsuccess = () => {
          const write = open.result.transaction(['records'], 'readwrite');
          const cursor = write.objectStore('records').openCursor();
          cursor.onsuccess = () => {
            const at = cursor.result;
            if (!at) return;
            if (at.value.fact.body.kind === 'noted') {
              const { fact } = at.value;
              at.update({ ...at.value, fact: { ...fact, body: { ...fact.body, text: 'Nobody was here' } } });
            }
            at.continue();
          };
          write.oncomplete = () => { open.result.close(); resolve(true); };
          write.onerror = () => reject(write.error);
        };
      })`,
    );
    await on.load('record');
    await screen.page.locator('main article').waitFor();
    expect(await shown()).not.toBe(t('report.digest', { digest: digestOf(file) }));
    const first = screen.page.locator('.record-lacks li').first();
    expect(await first.innerText()).toContain(t('record-page.damaged'));
  });

  it('is cut off nowhere: on a phone, in forced colours, with letters twice as large', async () => {
    const { screen } = await recordOf('flat-coils');
    for (const [width, height] of [
      [1280, 800],
      [800, 1280],
      [390, 844],
    ] as const) {
      await screen.resize(width, height);
      for (const size of ['100%', '200%']) {
        await screen.see(
          `document.documentElement.style.fontSize = '${size === '100%' ? '' : '36px'}'`,
        );
        expect.soft(await screen.widthPx(), `${width}, ${size}`).toBeLessThanOrEqual(width);
        expect.soft(await cutOff(screen), `${width}, ${size}`).toEqual([]);
        await screen.picture(`record/${width}-${size === '100%' ? 'usual' : 'large'}`);
      }
      await screen.see(`document.documentElement.style.fontSize = ''`);
    }
    await screen.page.emulateMedia({ forcedColors: 'active' });
    expect(await cutOff(screen)).toEqual([]);
    await screen.picture('record/forced-colours');
  });

  it('has nothing that axe finds, closed and opened', async () => {
    const { screen } = await recordOf('flat-coils');
    await axeFindsNothing(screen, 'the record');
    await screen.page.locator('.record-moments summary').click();
    await axeFindsNothing(screen, 'the record, moment by moment');
    await screen.resize(390, 844);
    await axeFindsNothing(screen, 'the record on a phone');
  });
});
