import { expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { wordTrouble } from '../support/overlaps.ts';
import type { Screen } from '../support/screen.ts';

/** The Kitchen page in each of its looks: no word over another, none cut, at four sizes and at twice the letters. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [960, 600],
  [390, 844],
] as const;

async function wrong(name: string): Promise<readonly string[]> {
  const found: string[] = [];
  for (const large of [false, true]) {
    await screen.cdp.send('Page.setFontSizes', { fontSizes: { standard: large ? 32 : 16 } });
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');
      const { over, cut, looked } = await wordTrouble(screen);
      const where = `${name} ${width}${large ? ' large' : ''}`;
      expect(looked, where).toBeGreaterThan(4);
      found.push(...over.map((one) => `${where}: ${one}`));
      found.push(...cut.map((one) => `${where}: cut: ${one}`));
      await screen.picture(`apart/kitchen-${name}-${width}${large ? '-large' : ''}`);
    }
  }
  await screen.cdp.send('Page.setFontSizes', { fontSizes: { standard: 16 } });
  await screen.resize(1280, 800);
  return found;
}

const press = (text: string) =>
  screen.page.locator('.editor').getByRole('button', { name: text }).first().click();

it('words stand apart on the first screen, the kitchen, and the editor in all its looks', async () => {
  await screen.waitForElement('.demo .room-picture');
  const found = [...(await wrong('first'))];
  for (const demo of ['flat-coils', 'hall'] as const) {
    await on.load('kitchen');
    await screen.waitForElement('.demo');
    await screen.openDemo(demo);
    await screen.goTo('kitchen');
    await screen.waitForElement('.kitchen-picture .room-picture');
    found.push(...(await wrong(`${demo}-home`)));
    await screen.button('kitchen.change').click();
    await screen.waitForElement('.editor-plan');
    for (const layer of ['lengths', 'names', 'walls'] as const) {
      await press(t(`survey.editor.${layer}`));
      found.push(...(await wrong(`${demo}-${layer}`)));
    }
    await screen.page.locator('.ed-piece').nth(2).focus();
    found.push(...(await wrong(`${demo}-chosen`)));
    await press(t('survey.face.far'));
    await press(t('survey.editor.lengths'));
    found.push(...(await wrong(`${demo}-front`)));
    await screen.page.locator('.ed-piece').nth(2).focus();
    found.push(...(await wrong(`${demo}-front-chosen`)));
  }
  expect(found).toEqual([]);
});
