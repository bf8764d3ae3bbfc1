import { describe, expect, it } from 'vitest';
import { t } from './support/language.ts';
import { onTablet } from './support/on-tablet.ts';

const on = onTablet('test', async (at) => {
  await at.open();
});

describe('a whole purge of a demo kitchen', () => {
  it('survives the browser being killed in the middle of a glow, and ends with a record', async () => {
    await on.screen.beginRun();
    await on.screen.actUntil({ kind: 'glow', stage: 'hold' });
    await on.screen.jump(10 * 60_000);
    const before = await on.screen.look();
    const stepsDone = () => on.screen.page.locator('[data-action="steps"]').innerText();
    const stepsBefore = await stepsDone();
    await on.cutPower(14 * 60_000);

    const screen = await on.open();
    const review = screen.page.locator('.review');
    await review.waitFor();
    await screen.picture('review-after-power-cut');
    expect(before.status).toBe('running');
    expect(await review.locator('[data-question]').count()).toBeGreaterThan(0);
    expect(await stepsDone()).toBe(stepsBefore);

    const end = await screen.actUntil({ status: 'closed' }, 1500);
    expect(end.status).toBe('closed');
    await screen.picture('closed');
    await screen.press('record');
    const report = screen.page.getByRole('article', { name: t('record-page.region') });
    await report.waitFor();
    const text = await report.innerText();
    expect(text).toContain('Flat with coils');
    await screen.picture('record');
  });

  it('works offline from the second load on', async () => {
    const { screen } = on;
    // The worker answers once it controls the page.
    await screen.keptOffline();
    await on.tablet.context.setOffline(true);
    await on.load('kitchen');
    await screen.prepareRun('hall');
    const sounds = await screen.see<number>(
      `caches.keys()
        .then(([name]) => caches.open(name))
        .then((cache) => cache.keys())
        .then((requests) => requests.filter(({ url }) => url.endsWith('.wav')).length)`,
    );
    expect(sounds).toBe(4);
  });
});

describe('a kettle that runs out early', () => {
  it('has the rest of the counter shared out anew, and the pour goes on', async () => {
    const { screen } = on;
    await screen.beginRun();
    const planned = await screen.actUntil({ step: 'pour-counter-left-1', action: 'confirm' });
    expect(planned.kettles).toBeGreaterThan(1);
    await screen.press('ran-out');
    for (let n = 0; n < 5; n += 1) await screen.press('further-on');
    await screen.picture('ran-out');
    await screen.press('ran-out-here');
    await screen.until('the kettle told empty', ({ stage }) => stage !== 'pour');
    // A rest that ends this very second calls first.
    await screen.actUntil({ kind: 'pour', stage: 'cold' }, 5);
    const now = await screen.actUntil({ step: 'pour-counter-left-2' }, 20);
    expect(now.kettles).toBeGreaterThan(planned.kettles);
    await screen.picture('ran-out-after');
  });
});
