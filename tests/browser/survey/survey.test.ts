import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseKitchen, type Kitchen, type Polygon } from '../../../src/core/kitchen/index.ts';
import { t } from '../support/language.ts';
import { surveyor } from '../support/surveyor.ts';

/** What a first-time user may need to describe the flat, taps and typed fields and drags together. */
const MOST_INTERACTIONS = 60;
const SAME_SIZE_M = 0.02;

const me = surveyor();

function demo(): Kitchen {
  const outcome = parseKitchen(readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8'));
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

function sides(outline: Polygon | undefined): readonly number[] {
  if (!outline) return [];
  const xs = outline.map((p) => p[0]);
  const ys = outline.map((p) => p[1]);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

type Fixture = Kitchen['fixtures'][number];

/** What is told in words and must come out the same. */
function wordsOf(f: Fixture) {
  return {
    kind: f.kind,
    material: 'material' in f ? f.material : '',
    condition: 'condition' in f ? f.condition : '',
    burners: f.kind === 'cooktop' ? f.burners.map((b) => `${b.type} ${b.ratedW} W`).toSorted() : [],
    cleaning: f.kind === 'oven' ? `${f.cleaning} ${f.cycleMin} min` : '',
  };
}

/** Every length of it: the drawn sides, the bowls, the shelves. */
function lengthsOf(f: Fixture): readonly number[] {
  return [
    ...sides('outline' in f ? f.outline : undefined),
    ...(f.kind === 'sink' ? f.bowls.flatMap((b) => [b.lengthM, b.widthM, b.depthM]) : []),
    ...('shelves' in f ? f.shelves.flatMap((s) => [s.lengthM, s.widthM]) : []),
  ];
}

function inOrder(kitchen: Kitchen): readonly Fixture[] {
  const key = (f: Fixture) => `${JSON.stringify(wordsOf(f))} ${lengthsOf(f)[0]?.toFixed(1)}`;
  return kitchen.fixtures.toSorted((a, b) => key(a).localeCompare(key(b)));
}

describe('a kitchen described from nothing', () => {
  it(`is the flat of the first demo within ${MOST_INTERACTIONS} interactions`, async () => {
    const next = () => me.tap(me.button('survey.sheet.next'));
    const size = (side: 'length' | 'depth', text: string) =>
      me.type(me.field(`survey.size.${side}`), text);
    await me.tap(me.button('kitchen.welcome.begin'));
    await me.choose(me.field('survey.where.country'), t('survey.country.US'));
    await me.type(me.field('survey.where.name'), 'Our flat');
    await me.type(me.field('survey.where.altitude'), '20 m');
    await me.picture('5-survey-where');
    await me.tap(me.button('survey.next.fixtures'));

    await me.add('fridge');
    await next();
    await me.add('counter');
    await size('length', '72 cm');
    await me.pick('common.material.granite');
    await me.pick('common.condition.smooth');
    await me.picture('5-survey-counter');
    await me.tap(me.button('survey.sheet.copy'));
    await size('length', '1.38 m');
    await next();
    await me.add('sink-1');
    await size('length', '60 cm');
    await size('depth', '50 cm');
    await me.pick('common.condition.smooth');
    await me.picture('5-survey-sink');
    await next();
    await me.add('coil-4');
    await size('depth', '68 cm');
    await me.picture('5-survey-cooktop');
    await next();
    await me.add('oven-pyrolytic');
    await me.type(me.field('survey.oven.cycle'), '4 h');
    await me.picture('5-survey-oven');
    await next();
    await me.add('hood');
    await me.pick('common.material.enamelled-steel');
    await me.pick('survey.hood.recirculating.name');
    await me.picture('5-survey-hood');
    await next();
    await me.add('microwave');
    await me.pick('common.material.enamelled-steel');
    await next();
    await me.add('cupboard');
    await me.pick('common.material.laminate');
    await me.pick('common.condition.smooth');
    await next();
    await me.add('cupboard');
    await me.pick('common.material.raw-wood');
    await me.tap(me.button('survey.shelves.take-out', { number: 3 }));
    await me.tap(me.button('survey.shelves.take-out', { number: 2 }));
    await me.type(me.field('survey.shelves.length', { number: 1 }), '1.3 m');
    await me.type(me.field('survey.shelves.depth', { number: 1 }), '55 cm');
    await next();
    await me.add('drawer');
    await me.pick('common.material.raw-wood');
    await next();
    await me.add('table');
    await size('length', '1.2 m');
    await size('depth', '75 cm');
    await me.pick('common.material.laminate');
    await me.pick('common.condition.smooth');
    await me.picture('5-survey-table');
    await me.tap(me.button('survey.next.water'));
    await me.pick('survey.body.steel');
    await me.picture('5-survey-water');
    await me.tap(me.button('survey.next.air'));
    await me.picture('5-survey-air');
    await me.tap(me.button('survey.next.people'));
    await me.pick('common.custom.sephardic');
    await me.picture('5-survey-household');
    console.log(
      `Interactions to describe the flat: ${me.interactions} (at most ${MOST_INTERACTIONS})`,
    );
    expect(me.interactions).toBeLessThanOrEqual(MOST_INTERACTIONS);

    const made = await me.kitchen();
    const [want, got] = [inOrder(demo()), inOrder(made)];
    expect(got.map(wordsOf)).toEqual(want.map(wordsOf));
    for (const [i, fixture] of want.entries()) {
      const lengths = got[i] ? lengthsOf(got[i]) : [];
      expect(lengths.length, fixture.name).toBe(lengthsOf(fixture).length);
      for (const [n, lengthM] of lengthsOf(fixture).entries())
        expect(
          Math.abs(lengthM - (lengths[n] ?? 0)),
          `${fixture.name}: length ${n}`,
        ).toBeLessThanOrEqual(SAME_SIZE_M);
    }
    const kettles = (k: Kitchen) =>
      k.vessels.map((v) => [v.kind, v.body, v.maxFillL, v.ratedW, v.ratedV, v.count]);
    expect(kettles(made)).toEqual(kettles(demo()));
    expect(made.household.custom).toBe('sephardic');
  });

  it('is still there after a reload, and opens as a plan', async () => {
    const before = await me.kitchen();
    await me.on.load('kitchen');
    expect(await me.kitchen()).toEqual(before);
    await me.button('kitchen.see-plan').click();
    await me.sheetOf('Our flat').waitFor();
    await me.button('plan-page.start-run').waitFor();
  });

  it('says what is still to tell, and goes there', async () => {
    const oven = (await me.kitchen()).fixtures.find((f) => f.kind === 'oven');
    if (!oven) throw new Error('No oven was told.');
    await me.goTo('kitchen/fixtures');
    await me.page.locator('.survey-head').getByRole('button').last().click();
    await me.screen.dialog().waitFor();
    await me.picture('5-survey-still-to-tell');
    await me.named(t('survey.ask.circuit', { fixture: oven.name })).click();
    await me.sheetOf(oven.name).waitFor();
    await expect
      .poll(() => me.page.evaluate(() => document.activeElement?.tagName ?? ''))
      .toBe('SELECT');
    await me.field('survey.water.circuit').selectOption({ value: 'sockets-2' });
    expect((await me.kitchen()).fixtures.find((f) => f.kind === 'oven')).toMatchObject({
      circuit: 'sockets-2',
    });
    expect(me.faults).toEqual([]);
  });
});
