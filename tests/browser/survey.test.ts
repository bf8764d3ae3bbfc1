import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseKitchen, type Kitchen, type Polygon } from '../../src/core/kitchen/index.ts';
import { Surveyor } from './support/surveyor.ts';

/** What a first-time user may need to describe the flat, taps and typed fields and drags together. */
const MOST_INTERACTIONS = 60;
const SAME_SIZE_M = 0.02;

let me: Surveyor;
beforeAll(async () => {
  me = await Surveyor.begin();
});
afterAll(() => me.end());

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
    await me.page.goto(me.url);
    await me.tap('Describe your kitchen');
    await me.choose('Country', 'United States');
    await me.type('Name of the kitchen', 'Our flat');
    await me.type('Altitude', '20 m');
    await me.picture('5-survey-where');
    await me.tap('Next: What stands in it');

    await me.add('Fridge');
    await me.tap('Add the next');
    await me.add('Counter');
    await me.type('Length', '72 cm');
    await me.pick('Granite');
    await me.pick('Smooth');
    await me.picture('5-survey-counter');
    await me.tap('Copy');
    await me.type('Length', '1.38 m');
    await me.tap('Add the next');
    await me.add('Sink');
    await me.type('Length', '60 cm');
    await me.type('Depth', '50 cm');
    await me.pick('Smooth');
    await me.picture('5-survey-sink');
    await me.tap('Add the next');
    await me.add('Electric coils');
    await me.type('Depth', '68 cm');
    await me.picture('5-survey-cooktop');
    await me.tap('Add the next');
    await me.add('Oven Cleans itself by burning');
    await me.type('Length of the cycle', '4 h');
    await me.picture('5-survey-oven');
    await me.tap('Add the next');
    await me.add('Hood');
    await me.pick('Enamelled steel');
    await me.pick('Recirculating');
    await me.picture('5-survey-hood');
    await me.tap('Add the next');
    await me.add('Microwave');
    await me.pick('Enamelled steel');
    await me.tap('Add the next');
    await me.add('Cupboard');
    await me.pick('Laminate');
    await me.pick('Smooth');
    await me.tap('Add the next');
    await me.add('Cupboard');
    await me.pick('Wood, raw');
    await me.tap('Take out shelf 3');
    await me.tap('Take out shelf 2');
    await me.type('Shelf 1, length', '1.3 m');
    await me.type('Shelf 1, depth', '55 cm');
    await me.tap('Add the next');
    await me.add('Drawer');
    await me.pick('Wood, raw');
    await me.tap('Add the next');
    await me.add('Table');
    await me.type('Length', '1.2 m');
    await me.type('Depth', '75 cm');
    await me.pick('Laminate');
    await me.pick('Smooth');
    await me.picture('5-survey-table');
    await me.tap('Next: Water and power');
    await me.pick('Steel');
    await me.picture('5-survey-water');
    await me.tap('Next: Room and air');
    await me.picture('5-survey-air');
    await me.tap('Next: The household');
    await me.pick('Sephardic custom');
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
    await me.page.goto('about:blank');
    expect(await me.kitchen()).toEqual(before);
    await me.button('See the plan').click();
    await me.page.getByRole('heading', { name: 'Our flat' }).waitFor();
    await me.button('Start the run').waitFor();
  });

  it('says what is still to tell, and goes there', async () => {
    await me.page.goto(`${me.url}/#/kitchen/fixtures`);
    await me.button(/^Still to tell: \d+$/).click();
    await me.picture('5-survey-still-to-tell');
    await me.button(/^Which circuit feeds Oven/).click();
    await me.page.getByRole('heading', { name: 'Oven', exact: true }).waitFor();
    await expect
      .poll(() => me.page.evaluate(() => document.activeElement?.tagName ?? ''))
      .toBe('SELECT');
    await me.choose('Circuit', 'Counter sockets 2, 20 A');
    expect((await me.kitchen()).fixtures.find((f) => f.kind === 'oven')).toMatchObject({
      circuit: 'sockets-2',
    });
    expect(me.faults).toEqual([]);
  });
});
