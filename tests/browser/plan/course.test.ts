import { afterEach, describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

/** The first screen of the Plan: its course as a picture. */
const on = onTablet('test');

/** A Friday morning in March: a Sabbath lies inside the work. */
const FRIDAY = Date.parse('2027-03-05T13:00:00Z');
/** Two days before the eve of Passover. */
const MONDAY = Date.parse('2027-04-19T05:00:00Z');
const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

/** Words of the picture that lie over each other, what reaches out of it, and how many words there are. */
const WORDS = `(() => {
  const svg = document.querySelector('[data-course] svg');
  const frame = svg.getBoundingClientRect();
  const words = [...svg.querySelectorAll('text')].map((one) => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    // Of a line of text the letters alone, not its leading.
    return { text: one.textContent, left: left + 0.5, right: right - 0.5, top: top + 3, bottom: bottom - 4 };
  }).filter((one) => one.text !== '');
  const meets = (a, b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  return {
    count: words.length,
    over: words.flatMap((a, i) => words.slice(i + 1).filter((b) => meets(a, b)).map((b) => a.text + ' over ' + b.text)),
    outside: words.filter((a) => a.left < frame.left - 1 || a.right > frame.right + 1).map((a) => a.text),
    top: frame.top,
  };
})()`;
type Words = { count: number; over: string[]; outside: string[]; top: number };

const locate = (selector: string) => on.screen.page.locator(selector);

afterEach(async () => {
  await on.end();
});

async function openPlan(demo: 'hall' | 'flat-coils' | 'mountain-gas', wallMs: number) {
  await on.start({ wallMs });
  const screen = await on.open();
  await screen.openDemo(demo);
  await screen.waitForElement('[data-course] .course-bar');
  await screen.waitForElement('.course-sure');
  return screen;
}

describe('the first screen of the Plan', () => {
  it.each([
    ['flat-coils', FRIDAY],
    ['hall', MONDAY],
    ['mountain-gas', FRIDAY],
  ] as const)('%s: a picture in which no name lies over another', async (demo, wallMs) => {
    const screen = await openPlan(demo, wallMs);
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await expect
        .poll(() => screen.see<number>(`document.querySelector('[data-course] svg').clientWidth`))
        .toBeLessThanOrEqual(width);
      await expect
        .poll(async () => (await screen.see<Words>(WORDS)).over, { timeout: 3000 })
        .toEqual([]);
      const { count, outside, top } = await screen.see<Words>(WORDS);
      await screen.picture(`course/${demo}-${width}`);
      expect.soft(outside, `${demo} ${width}`).toEqual([]);
      expect(count).toBeGreaterThan(12);
      // On a phone what is close before a Sabbath, and until when it may begin, stands over it.
      expect(top, 'it begins in the first screen').toBeLessThan(
        height * (width < 600 ? 0.8 : 0.75),
      );
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
    const text = await locate('.plan-place').innerText();
    expect(text).not.toMatch(/Day \d|\+\d+:\d\d/);
    expect(text).toMatch(/free from \w+ (morning|afternoon|evening|night) \d\d:\d\d to/);
  });

  it('has a lane a person, the Sabbath by name, and by when it ends nine times in ten', async () => {
    const screen = await openPlan('flat-coils', FRIDAY);
    const picture = locate('[data-course]');
    expect(await picture.getByText(t('crew.you'), { exact: true }).count()).toBe(1);
    expect(await picture.getByText(/Helper/).count()).toBe(0);
    await picture.locator('svg').getByText('Sabbath', { exact: true }).waitFor();
    await picture.getByText(/ends Sunday afternoon .*nine times in ten by/).waitFor();
    await screen.goTo('kitchen');
    await screen.field('kitchen.choices.people').selectOption('3');
    await screen.goTo('plan');
    await picture.getByText(t('crew.helper', { number: 2 })).waitFor();
  });

  it('opens the step of a bar by a press beside it, and by keys', async () => {
    const screen = await openPlan('flat-coils', FRIDAY);
    const sheet = screen.dialog();
    const oven = locate('.course-bar--rest').first();
    const box = await oven.boundingBox();
    await screen.page.mouse.click((box?.x ?? 0) - 6, (box?.y ?? 0) + 5);
    await sheet
      .getByText(/to \w+ (morning|afternoon|evening|night) \d\d:\d\d/)
      .first()
      .waitFor();
    await screen.picture('course/step');
    await screen.press('close-step');
    await sheet.waitFor({ state: 'detached' });

    const stop = locate('.course-bar[tabindex="0"]');
    expect(await stop.count()).toBe(1);
    const first = await stop.getAttribute('aria-label');
    expect(first).toMatch(/^You: .*Friday morning \d\d:\d\d to \d\d:\d\d$/);
    await stop.focus();
    await screen.page.keyboard.press('ArrowRight');
    expect(await stop.getAttribute('aria-label')).not.toBe(first);
    await screen.page.keyboard.press('ArrowDown');
    await screen.page.keyboard.press('Home');
    expect(await stop.getAttribute('aria-label')).toBe(first);
    await screen.page.keyboard.press('Enter');
    await sheet.waitFor();
    expect(await sheet.innerText()).toMatch(/Friday morning .*, You/);
    await screen.closeDialog();
    // The focus is where it was.
    expect(await screen.see<boolean>(`document.activeElement.matches('.course-bar')`)).toBe(true);
  });

  it('is drawn in the colours that a reader forces', async () => {
    const screen = await openPlan('flat-coils', FRIDAY);
    await screen.page.emulateMedia({ forcedColors: 'active' });
    await screen.picture('course/forced-colours');
    const [bar, paper] = await screen.see<string[]>(
      `[getComputedStyle(document.querySelector('.course-bar--clean rect')).fill, getComputedStyle(document.body).backgroundColor]`,
    );
    expect(bar).not.toBe(paper);
  });
});

describe('a plan that is late', () => {
  it('says so first, draws what runs over, and tells by itself what would help', async () => {
    const screen = await openPlan('mountain-gas', MONDAY);
    const begin = locate('.begin-when input');
    await begin.fill('2027-04-20T15:00');
    await begin.blur();
    await expect
      .poll(() => locate('[data-verdict] h2').innerText(), { timeout: 60_000 })
      .toMatch(/^Too late for \d of 6 places: nothing is purged after candle lighting, /);
    const close = await locate('.verdict-closed').innerText();
    expect(close).toMatch(/^Not possible any more\. Clean, close up and keep out of use /);
    expect(close).toContain('Wood table');
    // What a run would refuse is drawn so, from candle lighting on.
    // Drawn anew while the plan is still worked on.
    await expect
      .poll(async () => {
        const gone = await locate('.course-bar--gone').first().boundingBox();
        const candles = await locate('.course-candles').boundingBox();
        return gone && candles ? gone.x + gone.width - candles.x : 0;
      })
      .toBeGreaterThan(0);
    expect(await locate('.course-thread').count()).toBe(0);
    const over = await locate('.course-overrun').boundingBox();
    expect(over?.width).toBeGreaterThan(20);
    await locate('.advice-list > li').first().waitFor({ timeout: 120_000 });
    expect(await locate('.advice > .advice-list > li').count()).toBeGreaterThan(1);
    await screen.resize(1280, 800);
    await screen.picture('course/late');
    const top = (await locate('.advice-list').first().boundingBox())?.y ?? Infinity;
    expect(top).toBeLessThan(800);
    const was = await begin.inputValue();
    const begins = locate('.advice-list [data-change="start"] [data-action="take-advice"]');
    if (!(await begins.first().isVisible())) await locate('.advice summary').click();
    await begins.first().click();
    await expect.poll(() => begin.inputValue(), { timeout: 30_000 }).not.toBe(was);
    await locate('[data-action="undo-advice"]').click();
    await expect.poll(() => begin.inputValue(), { timeout: 30_000 }).toBe(was);
  });
});

describe('on paper', () => {
  it('a small kitchen is one sheet for the wall: the picture, and who does what when', async () => {
    const screen = await openPlan('flat-coils', FRIDAY);
    // What the print button does, without the browser's own dialog.
    await screen.page.evaluate(() => (document.documentElement.dataset['printOnly'] = 'wall'));
    const pdf = (await screen.page.pdf({ format: 'A4' })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await screen.page.emulateMedia({ media: 'print' });
    expect(await locate('[data-course]').isVisible()).toBe(true);
    expect(await locate('.step-row').first().isVisible()).toBe(true);
    for (const gone of ['.begin-when', '.methods', '.notices-part', '.advice', '.shopping-list'])
      expect(await locate(gone).first().isVisible(), gone).toBe(false);
    expect(await locate('.button:visible').count()).toBe(0);
    await screen.picture('course/wall');
  });
});

describe('the parts below', () => {
  it('kettles of one counter are one row that opens, under the part of its day', async () => {
    const screen = await openPlan('hall', MONDAY);
    const row = locate('.step-row').filter({ hasText: /Island: boiling water, \d+ kettles/ });
    // What is further down is drawn a moment later.
    await row.waitFor({ state: 'attached' });
    expect(await row.count()).toBe(1);
    expect(await row.locator('.step-inner').isVisible()).toBe(false);
    await row.locator('summary').first().click();
    await row.locator('.step-inner').waitFor();
    expect(await row.locator('.step-inner > li').count()).toBeGreaterThan(8);
    const headings = await locate('.steps-part h3').allInnerTexts();
    expect(headings[0]).toMatch(/^\w+ \d+ \w+, (morning|afternoon|evening)$/);
    await screen.picture('course/steps');
  });

  it('methods are a table with each source once', async () => {
    const screen = await openPlan('hall', MONDAY);
    await screen.openPart('methods');
    const rows = await locate('table.methods tbody tr').count();
    const notes = await locate('.method-notes li').allInnerTexts();
    expect(notes.length).toBeLessThan(rows);
    expect(new Set(notes).size).toBe(notes.length);
    const letters = await locate('table.methods sup').allInnerTexts();
    expect(letters).toHaveLength(rows);
    expect(new Set(letters).size).toBe(notes.length);
    await screen.picture('course/methods');
  });

  it('what is grave stands first with something to press, the rest behind one press', async () => {
    await openPlan('mountain-gas', FRIDAY);
    const shown = locate('.notices-part > .notices > li');
    const many = await shown.count();
    expect(many).toBeGreaterThan(0);
    expect(many).toBeLessThanOrEqual(3);
    expect(await shown.locator('.button').count()).toBe(many);
    expect(await locate('.notices-part details .notices').isVisible()).toBe(false);
    await locate('.notices-part summary').click();
    await locate('.notices-part details .notices').waitFor();
  });
});
