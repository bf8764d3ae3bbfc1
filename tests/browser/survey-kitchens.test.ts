import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Surveyor } from './support/surveyor.ts';

let me: Surveyor;
beforeAll(async () => {
  me = await Surveyor.begin();
  await me.page.goto(me.url);
  await me.button('Describe your kitchen').click();
  await me.type('Name of the kitchen', 'Our flat');
  // A town brings altitude, clock and sun; what is typed afterwards replaces it.
  await me.field('Town, or the largest one near').fill('denv');
  await me.pick('Denver');
  expect(Number.parseFloat(await me.field('Altitude').inputValue())).toBeGreaterThan(1500);
  await me.page.getByText(/clock of America\/Denver/).waitFor();
  await me.type('Altitude', '20 m');
  await me.page.goto(`${me.url}/#/kitchen/fixtures`);
  await me.add('Counter');
});
afterAll(() => me.end());

/** A kitchen in the list of those kept on the tablet. */
const row = (name: string) => me.page.locator('.kitchens-list').getByText(name, { exact: true });

async function openFile(text: string): Promise<void> {
  const chooser = me.page.waitForEvent('filechooser');
  await me.button('Open a kitchen file').click();
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
    await me.button('More for “Our flat”').click();
    await me.button('Delete').click();
    await me.picture('5-kitchens-delete');
    await me.button('Delete it').click();
    await me.button('Put back').waitFor();
    expect(await row('Our flat').count()).toBe(0);

    await openFile(text.replace('"altitudeM": 20', '"altitudeM": 90000'));
    await me.page.getByRole('heading', { name: 'This file could not be read' }).waitFor();
    expect(await me.page.locator('.problems').innerText()).toMatch(
      /altitudeM[\s\S]*Found 90000[\s\S]*Allowed:[\s\S]*5000/,
    );
    await me.picture('5-kitchens-bad-file');
    expect(await me.button('Save as file').count()).toBe(0);

    await openFile(text);
    await me.button('Start the run').waitFor();
    expect(await me.kitchen()).toEqual(before);
    await me.button('Put back').click();
    await row('Our flat (2)').waitFor();
  });

  it('begin from a demo, which stays as it is, and are renamed and duplicated', async () => {
    await me.page.goto(`${me.url}/#/kitchen`);
    await me.page.getByRole('button', { name: /^Mountain house/ }).click();
    await me.button('Start the run').waitFor();
    await me.page.goto(`${me.url}/#/kitchen`);
    await me.page.getByText(/as a demo has it/).waitFor();
    expect(await row('Mountain house with gas').count()).toBe(0);
    await me.page.getByLabel('People working').selectOption('4');
    await row('Mountain house with gas').waitFor();
    await me.picture('5-kitchens-list');
    await me.button('More for “Mountain house with gas”').click();
    await me.page.getByLabel('Another name').fill('Hut');
    await me.button('Rename').click();
    await row('Hut').waitFor();
    await me.button('Duplicate').click();
    await row('Hut (2)').waitFor();
    await row('Our flat').click();
    await me.page.getByRole('heading', { name: 'Our flat', level: 1 }).waitFor();
    await me.page.reload();
    await me.page.getByRole('heading', { name: 'Our flat', level: 1 }).waitFor();
    expect(me.faults).toEqual([]);
  });
});
