import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';

const SUNDAY = Date.parse('2027-04-11T05:00:00Z');
const HANDOUTS = ['labels', 'rabbi', 'covers', 'utensils', 'shopping', 'crew', 'door'] as const;
const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;
/** The most pages of each, of a house with two sinks, on either paper. */
const MOST_PAGES = { rabbi: 2, covers: 3, utensils: 2, shopping: 2, crew: 2, door: 1 } as const;

/** Whether the settings of the tablet hold the tick. */
const KEPT_TICK = `new Promise((done) => {
  const asked = indexedDB.open('glowpour');
  asked.onsuccess = () => {
    const all = asked.result.transaction(['settings']).objectStore('settings').getAll();
    all.onsuccess = () => {
      asked.result.close();
      done(JSON.stringify(all.result).includes('mop'));
    };
  };
})`;

const on = onTablet('file', async (at) => {
  await at.start({ wallMs: SUNDAY });
  await at.open();
  await at.screen.openDemo('mountain-gas');
});

async function openHandout(id: (typeof HANDOUTS)[number]): Promise<void> {
  const { screen } = on;
  await screen.openPart('handouts');
  await screen.waitForElement('.handouts');
  await screen.pressAt(`[data-handout="${id}"]`);
  // What is worked out beside the page has come.
  await screen.waitFor(
    `document.querySelector('.around') !== null && document.querySelector('.around > [role="status"]:not(.around-about)') === null`,
    `${id} is worked out`,
  );
  // So has what each answer changes.
  const trying = JSON.stringify(screen.translator.t('handouts.rabbi.trying'));
  await screen.waitFor(
    `!document.querySelector('.around').textContent.includes(${trying})`,
    'all answers are tried',
  );
}

async function pagesOf(format: 'A4' | 'Letter'): Promise<number> {
  const { screen } = on;
  await screen.see(`void (document.documentElement.dataset.printOnly = 'handouts')`);
  const pdf = (await screen.page.pdf({ format, preferCSSPageSize: true })).toString('latin1');
  await screen.see(`void delete document.documentElement.dataset.printOnly`);
  return pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

describe('handouts of a house', () => {
  it.each(HANDOUTS)('%s: words stand apart on each screen', async (id) => {
    const { screen } = on;
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await openHandout(id);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
      await screen.picture(`handouts/${id}-${width}`);
      const wholePx = await screen.see<number>('document.documentElement.scrollHeight');
      await screen.resize(width, wholePx);
      const { over, cut, looked } = await wordTrouble(screen);
      expect({ over, cut }).toEqual({ over: [], cut: [] });
      expect(looked).toBeGreaterThan(20);
      // A sentence that is not loaded shows its key.
      expect(await screen.page.locator('.around').innerText()).not.toMatch(/[a-z]\.[a-z-]+\.[a-z]/);
    }
  });

  it.each(['rabbi', 'covers', 'utensils', 'shopping', 'crew', 'door'] as const)(
    '%s lies on as few pages as it should',
    async (id) => {
      await on.screen.resize(1280, 800);
      await openHandout(id);
      for (const format of ['A4', 'Letter'] as const)
        expect(await pagesOf(format)).toBeLessThanOrEqual(MOST_PAGES[id]);
    },
  );

  it('labels fill their pages, and no page is empty', async () => {
    const { screen } = on;
    await openHandout('labels');
    for (const [at, format] of (['A4', 'Letter'] as const).entries()) {
      await screen.page.locator('.labels-paper input').nth(at).check();
      const drawn = await screen.page.locator('.label-page').count();
      expect(drawn).toBeGreaterThan(1);
      expect(await pagesOf(format)).toBe(drawn);
    }
  });

  it('are no part of the whole plan on paper', async () => {
    const { screen } = on;
    await openHandout('door');
    await screen.page.emulateMedia({ media: 'print' });
    expect(await screen.page.locator('.part--handouts').isVisible()).toBe(false);
    expect(await screen.page.locator('.shopping-list').isVisible()).toBe(true);
    await screen.page.emulateMedia({ media: 'screen' });
  });

  it('utensils that are told are planned at once, and taken out again', async () => {
    const { screen } = on;
    await openHandout('utensils');
    const lines = () => screen.page.locator('.utensils-told li').count();
    const before = await lines();
    await screen.page.locator('.utensil-form summary').click();
    await screen.field('handouts.utensil.kind').selectOption('sieve');
    await screen.field('handouts.utensil.count').fill('3');
    await screen.press('add-utensil');
    const putAway = screen.page.locator('.utensils-part', {
      hasText: `3 × ${t('utensils.kind.sieve')}`,
    });
    await expect.poll(() => putAway.count()).toBeGreaterThan(0);
    expect(await lines()).toBe(before + 1);
    await screen.page.locator('[data-action="take-out-utensil"]').last().click();
    await expect.poll(lines).toBe(before);
  });

  it('ticks of what was bought outlive a reload', async () => {
    const { screen } = on;
    await openHandout('shopping');
    await screen.page.locator('[data-product="mop"]').check();
    // What is still on its way to the disk is not outlived.
    await screen.waitFor(KEPT_TICK, 'the tick on the disk');
    await screen.page.reload();
    await screen.waitForElement('.plan-place');
    await openHandout('shopping');
    await expect.poll(() => screen.page.locator('[data-product="mop"]').isChecked()).toBe(true);
    expect(await screen.page.locator('[data-product="jugs"]').isChecked()).toBe(false);
  });
});
