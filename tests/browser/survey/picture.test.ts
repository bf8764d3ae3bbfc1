import { describe, expect, it } from 'vitest';
import { message } from '../../../src/core/messages/index.ts';
import { t } from '../support/language.ts';
import { axeFindsNothing } from '../support/axe.ts';
import { middleOf, surveyor } from '../support/surveyor.ts';

const me = surveyor();

const FIRST_SIZES = [
  [1280, 800],
  [800, 1280],
  [960, 600],
  [390, 844],
] as const;
const LEAST_TOUCH_PX = 44;

/** Wholly on the screen, without scrolling. */
async function isInSight(selector: string, count: number): Promise<boolean> {
  return me.screen.see<boolean>(`(() => {
    const all = [...document.querySelectorAll(${JSON.stringify(selector)})];
    return all.length === ${count} && all.every((one) => {
      const box = one.getBoundingClientRect();
      return box.width > 40 && box.height > 20 && box.top >= 0 && box.left >= 0
        && box.bottom <= innerHeight && box.right <= innerWidth;
    });
  })()`);
}

const face = (wall: 'far' | 'left' | 'right' | 'near') => me.named(t(`survey.face.${wall}`));
const front = (name: string) =>
  me.page.locator('svg.editor-front').getByRole('button', { name: new RegExp(`^${name},`) });
const hoodName = 'Hood over the range';

async function openEditor(): Promise<void> {
  await me.goTo('kitchen');
  await me.button('kitchen.change').click();
  await me.screen.waitForElement('svg.editor-plan');
}

async function hood() {
  const found = (await me.kitchen()).fixtures.find(({ id }) => id === 'hood');
  if (found?.kind !== 'hood' || !found.wallPlace) throw new Error('The hood hangs nowhere.');
  return found;
}

describe('the first screen', () => {
  it('says what it is for, what to do, and shows four kitchens, all at once', async () => {
    await me.screen.waitForElement('.demo .room-picture .kp-bowl');
    for (const [width, height] of FIRST_SIZES) {
      await me.screen.resize(width, height);
      await me.screen.waitFor(
        'document.querySelectorAll(".demo .room-picture").length === 4',
        'four kitchens as pictures',
      );
      const where = `${width} × ${height}`;
      expect(await isInSight('.welcome h1', 1), `${where}: what it is for`).toBe(true);
      expect(await isInSight('.welcome .button--ember', 1), `${where}: what to do`).toBe(true);
      expect(await isInSight('.welcome .button', 2), `${where}: a file`).toBe(true);
      expect(await isInSight('.demo .room-picture', 4), `${where}: four kitchens`).toBe(true);
      expect(await isInSight('.demo .demo-name', 4), `${where}: their names`).toBe(true);
      expect(await me.screen.widthPx()).toBeLessThanOrEqual(width);
    }
    const words = await me.screen.see<string>('document.querySelector("main").innerText');
    expect(words).toMatch(/kosher/i);
    // No wall of words: about what is read in the time of a glance at each picture.
    expect(words.split(/\s+/).length).toBeLessThan(85);
  });

  it('leads from the picture of a kitchen to the editor, with what was pressed chosen', async () => {
    await me.screen.resize(1180, 820);
    await me.screen.openDemo('flat-coils');
    await me.goTo('kitchen');
    await me.screen.waitForElement('.kitchen-picture .room-picture');
    const fridge = me.page.locator('.kitchen-picture .kp-fixture').filter({
      has: me.page.locator('.kp-shape--fridge'),
    });
    // Beside the drawing that says what it is.
    await fridge.locator('.kp-shape').click({ position: { x: 6, y: 6 } });
    await me.sheetOf('Fridge with freezer on top').waitFor();
  });
});

describe('one wall from the front', () => {
  it('shows what stands and hangs there, and moves it by drag and undoes it', async () => {
    await openEditor();
    await face('far').click();
    for (const name of ['Fridge', hoodName, 'Kitchen sink', 'Wall cupboard', 'Window'])
      expect(
        await front(name)
          .or(front(`${name}[^,]*`))
          .count(),
        name,
      ).toBeGreaterThan(0);
    await axeFindsNothing(me.screen, 'a wall from the front');
    await front(hoodName).focus();
    const pxPerM = ((await front(hoodName).locator('.kp-shape').boundingBox())?.width ?? 0) / 0.76;
    await me.drag(await middleOf(front(hoodName)), { x: -0.4 * pxPerM, y: -0.3 * pxPerM });
    await me
      .button('survey.undo-step', {
        step: message('survey.done.moved', { fixture: hoodName }),
      })
      .waitFor();
    const moved = await hood();
    expect(moved.wallPlace?.atM).toBeLessThan(1.3);
    expect(moved.heights?.fromM).toBeGreaterThan(1.8);
    expect((moved.heights?.toM ?? 0) - (moved.heights?.fromM ?? 0)).toBeCloseTo(0.18, 6);
    await openEditor();
    await face('far').click();
    await me.named(t('survey.undo')).first().click();
    expect((await hood()).wallPlace?.atM).toBe(1.52);
  });

  it('moves and resizes by keys, and says where a thing is', async () => {
    await openEditor();
    await face('far').click();
    await front(hoodName).focus();
    await me.page.keyboard.press('ArrowLeft');
    await me.page.keyboard.press('ArrowUp');
    await me.page.keyboard.press('Shift+ArrowRight');
    const said = await me.page.locator('.editor [role="status"]').innerText();
    expect(said).toContain(hoodName);
    const now = await hood();
    expect(now.wallPlace?.atM).toBeCloseTo(1.45, 6);
    expect(now.wallPlace?.widthM).toBeCloseTo(0.8, 6);
    expect(now.heights?.fromM).toBeCloseTo(1.65, 6);
  });

  it('pulls what hangs by handles that a finger can hold', async () => {
    await openEditor();
    await face('far').click();
    await front(hoodName).focus();
    const handles = me.page.locator('.ed-corner .ed-hit');
    expect(await handles.count()).toBe(4);
    const hit = await handles.first().boundingBox();
    expect(Math.min(hit?.width ?? 0, hit?.height ?? 0)).toBeGreaterThanOrEqual(LEAST_TOUCH_PX);
    const before = (await hood()).wallPlace?.widthM ?? 0;
    await openEditor();
    await face('far').click();
    await front(hoodName).focus();
    await me.drag(await middleOf(handles.nth(1)), { x: 60, y: 0 });
    expect((await hood()).wallPlace?.widthM).toBeGreaterThan(before + 0.1);
  });
});

describe('doors, windows and walls', () => {
  it('adds a door, turns it by key, takes it out and puts it back', async () => {
    await openEditor();
    const count = async () => (await me.kitchen()).room.openings?.length ?? 0;
    const before = await count();
    await openEditor();
    await me.page
      .locator('.offer')
      .filter({ hasText: t('survey.opening.door.tells') })
      .click();
    await me.sheetOf(t('survey.opening.door')).waitFor();
    const added = me.page.locator('.ed-opening--selected');
    const hit = await added.locator('.ed-hit').boundingBox();
    expect(Math.min(hit?.width ?? 0, hit?.height ?? 0)).toBeGreaterThanOrEqual(LEAST_TOUCH_PX);
    await added.focus();
    await me.page.keyboard.press('t');
    expect((await me.kitchen()).room.openings?.at(-1)?.hinge).toBe('right');
    await openEditor();
    await me.page.locator('.ed-opening').last().focus();
    await me.page.keyboard.press('Delete');
    expect(await count()).toBe(before);
    await openEditor();
    await me.named(t('survey.undo')).first().click();
    expect(await count()).toBe(before + 1);
  });

  it('drags a window along its wall', async () => {
    await openEditor();
    const window = me.page.locator('.ed-opening[data-id="window-sink"]');
    await window.focus();
    await me.drag(await middleOf(window.locator('.rm-gap')), { x: -90, y: 0 });
    const at = (await me.kitchen()).room.openings?.find(({ id }) => id === 'window-sink');
    expect(at?.atM).toBeLessThan(2.4);
    expect(at?.wall).toEqual([2, 3]);
  });

  it('pushes a wall out by finger and by arrows; its door stays where it is', async () => {
    await openEditor();
    await me.named(t('survey.editor.walls')).last().click();
    const knob = me.page.locator('.ed-wall-knob').nth(1);
    await knob.focus();
    await me.page.keyboard.press('ArrowRight');
    await me.page.keyboard.press('ArrowRight');
    expect((await me.kitchen()).room.outline?.[1]?.[0]).toBeCloseTo(3.76, 6);
    expect((await me.kitchen()).room.floorAreaM2).toBeCloseTo(8.8 + 0.1 * 2.4, 2);
  });

  it('shows lengths on demand, and nothing bars anyone', async () => {
    await openEditor();
    expect(await me.page.locator('.ed-lengths text').count()).toBe(0);
    await me.named(t('survey.editor.lengths')).last().click();
    expect(await me.page.locator('.ed-lengths text').count()).toBeGreaterThan(6);
    await axeFindsNothing(me.screen, 'the editor with lengths');
    expect(me.faults).toEqual([]);
  });
});
