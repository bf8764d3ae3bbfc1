import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { middleOf, Surveyor } from './support/surveyor.ts';

let me: Surveyor;
beforeAll(async () => {
  me = await Surveyor.begin();
  await me.page.goto(me.url);
  await me.page.getByRole('button', { name: /^Flat with coils/ }).click();
  await me.button('Start the run').waitFor();
});
afterAll(() => me.end());
beforeEach(async () => {
  await me.page.goto(`${me.url}/#/kitchen`);
  await me.button('Change it').click();
  await me.piece('Table').waitFor();
  await me.piece('Table').focus();
});

const shown = (label: string) => me.field(label).inputValue();
const cm = (text: string) => Number.parseFloat(text);
/** Screen pixels per metre: the table is 1.2 m long. */
async function pxPerM(): Promise<number> {
  const box = await me.piece('Table').locator('.kp-shape').boundingBox();
  return (box?.width ?? 0) / 1.2;
}

describe('the plan under a finger', () => {
  it('moves what was chosen, snaps it to what is near with a line, undoes and redoes', async () => {
    const middle = await middleOf(me.piece('Table').locator('.kp-shape'));
    // 44 cm to the left its side is in line with the fridge's.
    await me.drag(middle, { x: -0.43 * (await pxPerM()), y: 0 }, async () => {
      expect(await me.page.locator('.ed-guides path').count()).toBeGreaterThan(0);
      await me.page.screenshot({ path: 'test-artifacts/screens/5-survey-dragging.png' });
    });
    expect(await me.page.locator('.ed-guides path').count()).toBe(0);
    expect(await shown('From the left')).toBe('76 cm');
    await me.button('Undo: Table moved').click();
    expect(await shown('From the left')).toBe('120 cm');
    await me.button('Redo: Table moved').click();
    expect(await shown('From the left')).toBe('76 cm');
    await me.piece('Table').focus();
    await me.page.keyboard.press('Control+z');
    expect(await shown('From the left')).toBe('120 cm');
    await me.page.keyboard.press('Control+Shift+Z');
    expect(await shown('From the left')).toBe('76 cm');
    await me.page.keyboard.press('Control+z');
  });

  it('moves nothing on a way under 8 px, and nothing that was not chosen before', async () => {
    const before = await me.kitchen();
    await me.button('Change it').click();
    await me.piece('Table').focus();
    await me.drag(await middleOf(me.piece('Table').locator('.kp-shape')), { x: 7, y: 0 });
    await me.drag(await middleOf(me.piece('Fridge with freezer on top')), { x: 90, y: 40 });
    await me.page.getByRole('heading', { name: 'Fridge with freezer on top' }).waitFor();
    expect(await me.kitchen()).toEqual(before);
  });

  it('resizes by a corner of at least 44 px, the corner across from it staying', async () => {
    const [left, length] = [await shown('From the left'), await shown('Length')];
    expect(await me.page.locator('.ed-corner').count()).toBe(4);
    const right = me.page.locator('.ed-corner[data-n="1"] .ed-hit');
    const hit = await right.boundingBox();
    expect(Math.min(hit?.width ?? 0, hit?.height ?? 0)).toBeGreaterThanOrEqual(44);
    await me.drag(await middleOf(right), { x: 60, y: 0 });
    expect(await shown('From the left')).toBe(left);
    expect(cm(await shown('Length'))).toBeGreaterThan(cm(length) + 10);
    await me.button('Undo: Table resized').click();
    expect(await shown('Length')).toBe(length);
  });

  it('follows one finger and does nothing for drops: short, wide, or several at once', async () => {
    const before = await me.kitchen();
    await me.button('Change it').click();
    await me.piece('Table').focus();
    const table = await middleOf(me.piece('Table').locator('.kp-shape'));
    const fridge = await middleOf(me.piece('Fridge with freezer on top'));
    const away = { x: table.x + 60, y: table.y };
    await me.touch([fridge], { heldMs: 5 });
    await me.touch([fridge], { heldMs: 120, radiusPx: 130 });
    await me.touch([fridge, table], { heldMs: 120 });
    await me.touch([table], { heldMs: 120, to: [{ x: table.x + 6, y: table.y }] });
    await me.touch([table, fridge], { heldMs: 120, to: [away] });
    await me.page.getByRole('heading', { name: 'Table', exact: true }).waitFor();
    expect(await me.kitchen()).toEqual(before);
    await me.button('Change it').click();
    await me.piece('Table').waitFor();
    await me.touch([fridge], { heldMs: 120 });
    await me.page.getByRole('heading', { name: 'Fridge with freezer on top' }).waitFor();
    await me.touch([table], { heldMs: 120 });
    await me.touch([table], { heldMs: 120, to: [{ x: table.x + 30, y: table.y }, away] });
    expect(cm(await shown('From the left'))).toBeGreaterThan(120);
    await me.button('Undo: Table moved').click();
  });

  it('is looked at nearer and wholly by buttons, and pulled along by its floor', async () => {
    const whole = await pxPerM();
    await me.button('Nearer').click();
    expect(await pxPerM()).toBeGreaterThan(whole * 1.2);
    const before = await middleOf(me.piece('Table').locator('.kp-shape'));
    const corner = await me.page.locator('svg.editor-plan').boundingBox();
    const floor = { x: (corner?.x ?? 0) + 20, y: (corner?.y ?? 0) + (corner?.height ?? 0) - 20 };
    await me.drag(floor, { x: 50, y: 0 });
    expect((await middleOf(me.piece('Table').locator('.kp-shape'))).x).toBeCloseTo(
      before.x + 50,
      -1,
    );
    await me.button('Whole room').click();
    expect(await pxPerM()).toBeCloseTo(whole, 0);
  });
});

describe('the plan by keyboard and by typing', () => {
  it('goes by Tab, arrows, Enter and Delete', async () => {
    const named = () =>
      me.page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    await me.piece('Counter left of the range').focus();
    await me.page.keyboard.press('Tab');
    expect(await named()).toMatch(/^Counter with the sink,/);
    await me.piece('Table').focus();
    const [x, y] = [await shown('From the left'), await shown('From the front')];
    await me.page.keyboard.press('ArrowRight');
    await me.page.keyboard.press('Shift+ArrowUp');
    expect(cm(await shown('From the left'))).toBeCloseTo(cm(x) + 1, 1);
    expect(cm(await shown('From the front'))).toBeCloseTo(cm(y) + 10, 1);
    expect(await named()).toMatch(/^Table,/);
    await me.page.keyboard.press('Enter');
    expect(await me.page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
    await me.piece('Table').focus();
    await me.page.keyboard.press('Delete');
    expect(await me.piece('Table').count()).toBe(0);
    await me.page.keyboard.press('Control+z');
    await me.piece('Table').focus();
    await me.page.keyboard.press('Control+z');
    expect(await shown('From the left')).toBe(x);
  });

  it('keeps the old number when a typed one is not allowed, and says what is', async () => {
    const field = me.field('Length');
    await field.fill('wide');
    await field.press('Enter');
    expect(await me.page.getByText('“wide” is not understood').innerText()).toMatch(
      /Write it like 60 cm, 24 in or 0\.6; allowed: 5 cm to 20 m\. It stays 120 cm\./,
    );
    await me.picture('5-survey-typed-wrong');
    expect(await field.inputValue()).toBe('120 cm');
    await field.fill('48 in');
    await field.press('Enter');
    expect(await field.inputValue()).toBe('121.9 cm');
    await me.button(/^Undo/).click();
    expect(await field.inputValue()).toBe('120 cm');
  });

  it('says plainly that steam clean is not a purge', async () => {
    await me.piece('Oven of the range').focus();
    await me.pick('Steam clean');
    await me.page.getByText(/^Steam clean is not a purge\. The plan treats/).waitFor();
    await me.picture('5-survey-steam-clean');
    await me.button(/^Undo/).click();
  });

  it('draws a counter round a corner, with corners one by one and edges at a wall', async () => {
    await me.button('Add the next').click();
    await me.button('A counter round corners').click();
    await me.type('Piece 1', '2.4 m');
    await me.type('Piece 2', '1.8 m');
    await me.picture('5-survey-round-corners');
    await me.button('Draw it').click();
    await me.button('Corners one by one').click();
    expect(await me.page.locator('.ed-corner').count()).toBe(6);
    await me.picture('5-survey-corners');
    const made = async () => (await me.kitchen()).fixtures.findLast((f) => f.kind === 'counter');
    const counter = await made();
    expect(counter?.outline.length).toBe(6);
    expect(counter?.backEdges.length).toBe(2);
    await me.button('Change it').click();
    await me
      .button(new RegExp(`^${counter?.name ?? ''}`))
      .last()
      .click();
    await me.button(/^far side, 240 cm/).click();
    expect((await made())?.backEdges.length).toBe(1);
    await me.button('Change it').click();
    await me
      .button(new RegExp(`^${counter?.name ?? ''}`))
      .last()
      .click();
    await me.button('Corners one by one').click();
    await me.page.locator('.ed-edge').first().click();
    expect(await me.page.locator('.ed-corner').count()).toBe(7);
    await me.button('Take out corner 2').click();
    expect(await me.page.locator('.ed-corner').count()).toBe(6);
    await me.button('Take out').last().click();
    expect((await me.kitchen()).fixtures.filter((f) => f.kind === 'counter').length).toBe(2);
    expect(me.faults).toEqual([]);
  });
});
