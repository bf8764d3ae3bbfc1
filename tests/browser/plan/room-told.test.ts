import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { surveyor } from '../support/surveyor.ts';

/** Hood and window: what nobody told is not none, and what the room does not bear is said once. */
const me = surveyor();

const told = (path: string) => me.page.locator(`[data-path="${path}"] .toggle--on`).allInnerTexts();

/** The gas demo in a small room that has neither hood nor window. */
function airless(): string {
  const file = join(import.meta.dirname, '../../../demo-kitchens/mountain-gas.kitchen.json');
  const kitchen = JSON.parse(readFileSync(file, 'utf8')) as {
    readonly fixtures: readonly Record<string, unknown>[];
  };
  // Without its walls nothing hangs on them.
  const fixtures = kitchen.fixtures.map(({ wallPlace: _place, ...fixture }) => fixture);
  const room = {
    floorAreaM2: 8,
    heightM: 2.4,
    hood: { kind: 'none', flowLS: 0 },
    window: { areaM2: 0, heightM: 0 },
  };
  return JSON.stringify({ ...kitchen, fixtures, room });
}

describe('the room as it is told', () => {
  it('has nothing chosen until somebody tells, and the hood of the survey is the hood of the room', async () => {
    await me.button('kitchen.welcome.begin').click();
    await me.field('survey.where.name').waitFor();
    await me.goTo('kitchen/air');
    await me.page.locator('[data-path="room.window"]').waitFor();
    expect(await told('room.hood')).toEqual([]);
    expect(await told('room.window')).toEqual([]);
    await me.goTo('kitchen/fixtures');
    await me.add('hood');
    await me.page.locator('[data-path="room.hood"]').waitFor();
    expect(await told('room.hood')).toEqual([]);
    await me.pick('survey.hood.recirculating.name');
    await me.goTo('kitchen/air');
    await me.page.locator('[data-path="room.window"]').waitFor();
    const [hood, ...others] = await told('room.hood');
    expect(hood).toContain(t('survey.hood.recirculating.name'));
    expect(others).toEqual([]);
    expect(await told('room.window')).toEqual([]);
  });
});

describe('a room that does not bear it', () => {
  it('is said in one notice, first and as a stop, and no flame is lit before air has a way out', async () => {
    const { screen } = me;
    await me.goTo('kitchen');
    const chooser = me.page.waitForEvent('filechooser');
    await me.button('kitchen.open-file').click();
    await (
      await chooser
    ).setFiles({
      name: 'small.kitchen.json',
      mimeType: 'application/json',
      buffer: Buffer.from(airless()),
    });
    await screen.waitForElement('.plan-place');
    const notices = me.page.locator('.notices li');
    const all = await notices.allInnerTexts();
    const aboutAir = all.filter((text) => text.includes(t('plan.notice.no-air')));
    expect(aboutAir).toHaveLength(1);
    expect(all[0]).toBe(aboutAir[0]);
    expect(all.filter((text) => /burners? at a time/.test(text))).toEqual(aboutAir);
    expect(await notices.first().getAttribute('class')).toBe('notice--stop');
    const colours = await screen.see<string[]>(
      `[...document.querySelectorAll('.notice--stop, .notice--know')].map((one) => getComputedStyle(one).borderInlineStartColor)`,
    );
    expect(new Set(colours).size).toBeGreaterThan(1);
    await screen.picture('room/one-notice');
    await me.button('plan-page.start-run').click();
    await screen.waitForElement('.start-screen');
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');
    for (let acts = 0; acts < 1500; acts += 1) {
      const seen = await screen.look();
      if (seen.gate === 'burner-air') break;
      expect(seen.stage === 'light' && seen.action === 'confirm').toBe(false);
      await screen.act();
    }
    expect(await me.page.locator('.gate-ask').innerText()).toBe(
      t('cautions.burner-air.ask-way-out'),
    );
    expect(await me.page.locator('[data-action="go-past"]').count()).toBe(0);
    expect(me.faults).toEqual([]);
  });
});
