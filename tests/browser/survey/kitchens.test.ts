import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { surveyor } from '../support/surveyor.ts';

const me = surveyor(async () => {
  await me.button('kitchen.welcome.begin').click();
  await me.type(me.field('survey.where.name'), 'Our flat');
  // A town brings altitude, clock and sun; what is typed afterwards replaces it.
  await me.field('survey.where.town').fill('denv');
  await me.named('Denver').click();
  const altitude = me.field('survey.where.altitude');
  await me.page.locator('.chapter', { hasText: 'America/Denver' }).waitFor();
  expect(Number.parseFloat(await altitude.inputValue())).toBeGreaterThan(1500);
  await me.type(altitude, '20 m');
  await me.goTo('kitchen/fixtures');
  await me.add('counter');
});

/** A kitchen in the list of those kept on the tablet. */
const row = (name: string) => me.page.locator('.kitchens-list').getByText(name, { exact: true });

/** The small buttons of a kitchen in the list. */
async function openRow(name: string): Promise<void> {
  const line = me.page.locator('.kitchen-row', { has: me.page.getByText(name, { exact: true }) });
  await line.getByRole('button', { name: t('kitchen.kept.more') }).click();
}

async function openFile(text: string): Promise<void> {
  const chooser = me.page.waitForEvent('filechooser');
  await me.button('kitchen.open-file').click();
  await (
    await chooser
  ).setFiles({
    name: 'flat.kitchen.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

describe('several kitchens on one tablet', () => {
  it('go out as a file, are deleted, put back, and come in again equal', async () => {
    const before = await me.kitchen();
    const text = await me.fileText();
    await openRow('Our flat');
    await me.button('kitchen.kept.delete').click();
    await me.picture('5-kitchens-delete');
    await me.button('kitchen.kept.delete-it').click();
    await me.button('kitchen.kept.put-back').waitFor();
    expect(await row('Our flat').count()).toBe(0);

    await openFile(text.replace('"altitudeM": 20', '"altitudeM": 90000'));
    await me.screen.heading('kitchen.problems.file').waitFor();
    const problems = await me.page.locator('.problems').innerText();
    expect(problems.replaceAll(/[\s,]/g, '')).toMatch(/altitudeM.*90000.*5000/);
    await me.picture('5-kitchens-bad-file');
    expect(await me.button('kitchen.save-file').count()).toBe(0);

    await openFile(text);
    await me.button('plan-page.start-run').waitFor();
    expect(await me.kitchen()).toEqual(before);
    await me.button('kitchen.kept.put-back').click();
    await row('Our flat (2)').waitFor();
  });

  it('begin from a demo, which stays as it is, and are renamed and duplicated', async () => {
    await me.goTo('kitchen');
    await me.screen.openDemo('mountain-gas');
    await me.goTo('kitchen');
    await me.page.getByText(t('kitchen.yours.demo')).waitFor();
    expect(await row('Mountain house with gas').count()).toBe(0);
    await me.field('kitchen.choices.people').selectOption('4');
    await row('Mountain house with gas').waitFor();
    await me.picture('5-kitchens-list');
    await openRow('Mountain house with gas');
    await me.field('kitchen.kept.another-name').fill('Hut');
    await me.button('kitchen.kept.rename').click();
    await row('Hut').waitFor();
    await me.button('kitchen.kept.duplicate').click();
    await row('Hut (2)').waitFor();
    await row('Our flat').click();
    await me.sheetOf('Our flat').waitFor();
    await me.on.load('kitchen');
    await me.sheetOf('Our flat').waitFor();
    expect(me.faults).toEqual([]);
  });
});
