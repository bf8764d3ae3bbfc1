import { beforeEach, describe, expect, it } from 'vitest';
import { message } from '../../../src/core/messages/index.ts';
import { translatorOf } from '../../support/translators.ts';
import { LANGUAGE, t } from '../support/language.ts';
import { middleOf, surveyor } from '../support/surveyor.ts';

const me = surveyor(async () => {
  await me.screen.openDemo('flat-coils');
});
beforeEach(async () => {
  await me.goTo('kitchen');
  await change();
  await me.piece('Table').waitFor();
  await me.piece('Table').focus();
});

const change = () => me.button('kitchen.change').click();
const undo = (done: 'moved' | 'resized') =>
  me.button('survey.undo-step', { step: message(`survey.done.${done}`, { fixture: 'Table' }) });
const undoLast = () => me.named(t('survey.undo')).first();
const FIELDS = {
  left: 'survey.size.from-left',
  front: 'survey.size.from-front',
  length: 'survey.size.length',
} as const;
const shown = (field: keyof typeof FIELDS) => me.field(FIELDS[field]).inputValue();
/** The kitchen is in a country whose tapes have inches; the tests think in centimetres. */
const inUS = await translatorOf(LANGUAGE, 'us-customary');
const cmOf = (value: number) => message('survey.quantity.tape', { metres: value / 100 });
const cmText = (value: number): string => inUS.say(cmOf(value));
/** "29 15/16 in", "6 ft 3 1/2 in". */
const cm = (text: string): number => {
  const [, feet = 0, whole = 0, above = 0, below = 1] =
    /^(?:(\d+) ft ?)?(?:(\d+)(?!\/))?(?:\s?(\d+)\/(\d+))?/u.exec(text) ?? [];
  return (Number(feet) * 12 + Number(whole) + Number(above) / Number(below)) * 2.54;
};
/** Shown to a sixteenth of an inch. */
const ROUNDED_CM = 0.3;
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
      await me.screen.picture('screens/5-survey-dragging');
    });
    expect(await me.page.locator('.ed-guides path').count()).toBe(0);
    expect(await shown('left')).toBe(cmText(76));
    await undo('moved').click();
    expect(await shown('left')).toBe(cmText(120));
    await me
      .button('survey.redo-step', { step: message('survey.done.moved', { fixture: 'Table' }) })
      .click();
    expect(await shown('left')).toBe(cmText(76));
    await me.piece('Table').focus();
    await me.page.keyboard.press('Control+z');
    expect(await shown('left')).toBe(cmText(120));
    await me.page.keyboard.press('Control+Shift+Z');
    expect(await shown('left')).toBe(cmText(76));
    await me.page.keyboard.press('Control+z');
  });

  it('moves nothing on a way under 8 px, and nothing that was not chosen before', async () => {
    const before = await me.kitchen();
    await change();
    await me.piece('Table').focus();
    await me.drag(await middleOf(me.piece('Table').locator('.kp-shape')), { x: 7, y: 0 });
    await me.drag(await middleOf(me.piece('Fridge with freezer on top')), { x: 90, y: 40 });
    await me.sheetOf('Fridge with freezer on top').waitFor();
    expect(await me.kitchen()).toEqual(before);
  });

  it('resizes by a corner of at least 44 px, the corner across from it staying', async () => {
    const [left, length] = [await shown('left'), await shown('length')];
    expect(await me.page.locator('.ed-corner').count()).toBe(4);
    const right = me.page.locator('.ed-corner[data-n="1"] .ed-hit');
    const hit = await right.boundingBox();
    expect(Math.min(hit?.width ?? 0, hit?.height ?? 0)).toBeGreaterThanOrEqual(44);
    await me.drag(await middleOf(right), { x: 60, y: 0 });
    expect(await shown('left')).toBe(left);
    expect(cm(await shown('length'))).toBeGreaterThan(cm(length) + 10);
    await undo('resized').click();
    expect(await shown('length')).toBe(length);
  });

  it('follows one finger and does nothing for drops: short, wide, or several at once', async () => {
    const before = await me.kitchen();
    await change();
    await me.piece('Table').focus();
    const table = await middleOf(me.piece('Table').locator('.kp-shape'));
    const fridge = await middleOf(me.piece('Fridge with freezer on top'));
    const away = { x: table.x + 60, y: table.y };
    await me.touch([fridge], { heldMs: 5 });
    await me.touch([fridge], { heldMs: 120, radiusPx: 130 });
    await me.touch([fridge, table], { heldMs: 120 });
    await me.touch([table], { heldMs: 120, to: [{ x: table.x + 6, y: table.y }] });
    await me.touch([table, fridge], { heldMs: 120, to: [away] });
    await me.sheetOf('Table').waitFor();
    expect(await me.kitchen()).toEqual(before);
    await change();
    await me.piece('Table').waitFor();
    await me.touch([fridge], { heldMs: 120 });
    await me.sheetOf('Fridge with freezer on top').waitFor();
    await me.touch([table], { heldMs: 120 });
    await me.touch([table], { heldMs: 120, to: [{ x: table.x + 30, y: table.y }, away] });
    expect(cm(await shown('left'))).toBeGreaterThan(120);
    await undo('moved').click();
  });

  it('is looked at nearer and wholly by buttons, and pulled along by its floor', async () => {
    const whole = await pxPerM();
    await me.button('survey.editor.nearer').click();
    expect(await pxPerM()).toBeGreaterThan(whole * 1.2);
    const before = await middleOf(me.piece('Table').locator('.kp-shape'));
    const corner = await me.page.locator('svg.editor-plan').boundingBox();
    const floor = { x: (corner?.x ?? 0) + 20, y: (corner?.y ?? 0) + (corner?.height ?? 0) - 20 };
    await me.drag(floor, { x: 50, y: 0 });
    expect((await middleOf(me.piece('Table').locator('.kp-shape'))).x).toBeCloseTo(
      before.x + 50,
      -1,
    );
    await me.button('survey.editor.whole-room').click();
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
    const [x, y] = [await shown('left'), await shown('front')];
    await me.page.keyboard.press('ArrowRight');
    await me.page.keyboard.press('ArrowUp');
    expect(Math.abs(cm(await shown('left')) - (cm(x) + 5))).toBeLessThan(ROUNDED_CM);
    expect(Math.abs(cm(await shown('front')) - (cm(y) + 5))).toBeLessThan(ROUNDED_CM);
    const length = await shown('length');
    await me.page.keyboard.press('Shift+ArrowRight');
    expect(Math.abs(cm(await shown('length')) - (cm(length) + 5))).toBeLessThan(ROUNDED_CM);
    await me.page.keyboard.press('Control+z');
    expect(await shown('length')).toBe(length);
    expect(await named()).toMatch(/^Table,/);
    await me.page.keyboard.press('Enter');
    expect(await me.page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
    await me.piece('Table').focus();
    await me.page.keyboard.press('Delete');
    expect(await me.piece('Table').count()).toBe(0);
    await me.page.keyboard.press('Control+z');
    await me.piece('Table').focus();
    await me.page.keyboard.press('Control+z');
    expect(await shown('left')).toBe(x);
  });

  it('keeps the old number when a typed one is not allowed, and says what is', async () => {
    const field = me.field('survey.size.length');
    await field.fill('wide');
    await field.press('Enter');
    const why = message('survey.typed.not-understood', {
      typed: 'wide',
      example: cmOf(252.73),
      least: cmOf(5.08),
      most: cmOf(1999.93),
    });
    const at = message('survey.typed.at', { field: t(FIELDS.length), why });
    await me.page.getByText(inUS.t('survey.typed.stays', { why: at, old: cmOf(120) })).waitFor();
    await me.picture('5-survey-typed-wrong');
    expect(await field.inputValue()).toBe(cmText(120));
    await field.fill('48 in');
    await field.press('Enter');
    expect(await field.inputValue()).toBe(cmText(121.92));
    await undoLast().click();
    expect(await field.inputValue()).toBe(cmText(120));
  });

  it('says plainly that steam clean is not a purge', async () => {
    await me.piece('Oven of the range').focus();
    await me.pick('survey.cleaning.steam.name');
    await me.page.getByText(t('survey.oven.steam-trap')).waitFor();
    await me.picture('5-survey-steam-clean');
    await undoLast().click();
  });

  it('draws a counter round a corner, with corners one by one and edges at a wall', async () => {
    await me.button('survey.sheet.next').click();
    await me.button('survey.fixtures.run').click();
    await me.type(me.field('survey.run.piece', { number: 1 }), '2.4 m');
    await me.type(me.field('survey.run.piece', { number: 2 }), '1.8 m');
    await me.picture('5-survey-round-corners');
    await me.button('survey.run.draw').click();
    await me.button('survey.shape.open').click();
    expect(await me.page.locator('.ed-corner').count()).toBe(6);
    await me.picture('5-survey-corners');
    const made = async () => {
      const counter = (await me.kitchen()).fixtures.findLast((f) => f.kind === 'counter');
      if (!counter) throw new Error('No counter was drawn.');
      return counter;
    };
    const counter = await made();
    expect(counter.outline.length).toBe(6);
    expect(counter.backEdges.length).toBe(2);
    const openCounter = async () => {
      await change();
      await me.named(counter.name).last().click();
    };
    await openCounter();
    const far = inUS.t('survey.shape.edge', {
      side: message('survey.shape.side.far'),
      length: cmOf(240),
    });
    await me.named(far).click();
    expect((await made()).backEdges.length).toBe(1);
    await openCounter();
    await me.button('survey.shape.open').click();
    await me.page.locator('.ed-edge').first().click();
    expect(await me.page.locator('.ed-corner').count()).toBe(7);
    await me.button('survey.shape.take-out-corner', { number: 2 }).click();
    expect(await me.page.locator('.ed-corner').count()).toBe(6);
    await me.button('survey.take-out').last().click();
    expect((await me.kitchen()).fixtures.filter((f) => f.kind === 'counter').length).toBe(2);
    expect(me.faults).toEqual([]);
  });
});
