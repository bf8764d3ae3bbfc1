import { describe, expect, it } from 'vitest';
import { hoursOf } from '../../../../src/core/advice/index.ts';
import { buildPlan, courseOf } from '../../../../src/core/plan/index.ts';
import { daysOf, partOfDay, partsOf, ticksOf } from '../../../../src/app/pictures/course/days.ts';
import { labelFor } from '../../../../src/app/pictures/course/bars.ts';
import { drawnDueS, inLines, textPx } from '../../../../src/app/pictures/course/frame.ts';
import { barAt, layoutOf } from '../../../../src/app/pictures/course/layout.ts';
import { DEMOS, kitchenOf } from '../../../core/plan/support/plans.ts';

/** A Friday at nine in New York. */
const START_MS = Date.parse('2027-03-05T14:00:00Z');
const WIDTHS = [1218, 762, 362];
const H = 3600;

function drawn(demo: (typeof DEMOS)[number], widthPx: number) {
  const plan = buildPlan(kitchenOf(demo), { startWallMs: START_MS });
  const course = courseOf(plan, hoursOf(plan).work);
  const clock = { startWallMs: START_MS, zone: plan.kitchen.place?.zone ?? 'UTC' };
  const ends = { nineInTenS: plan.timetable.finishS + H };
  const names = {
    person: (at: number) => (at === 0 ? 'You' : `Helper ${at}`),
    thing: ({ thing }: { thing: string }) => thing,
  };
  return { plan, course, clock, layout: layoutOf(plan, course, clock, ends, widthPx, names) };
}

describe.each(DEMOS)('the picture of %s', (demo) => {
  it.each(WIDTHS)('%s px wide: bars lie apart, inside, and rows under each other', (widthPx) => {
    const { layout } = drawn(demo, widthPx);
    const rows = [...layout.lanes, ...layout.rows];
    for (const { name, bars } of rows)
      bars.forEach(({ x, w }, n) => {
        expect(w, name).toBeGreaterThan(0);
        expect(x, name).toBeGreaterThanOrEqual(layout.frame.leftPx);
        expect(x + w, name).toBeLessThanOrEqual(widthPx + 2.5);
        const next = bars[n + 1];
        if (next) expect(x + w, name).toBeLessThanOrEqual(next.x + 1);
      });
    rows.slice(1).forEach((row, n) => {
      const before = rows[n];
      expect(row.y).toBeGreaterThanOrEqual((before?.y ?? 0) + (before?.heightPx ?? 0));
    });
    expect(layout.heightPx).toBeGreaterThan(rows.at(-1)?.y ?? 0);
  });

  it('its hours have room, in order, and none in folded nights', () => {
    const { course, clock, layout } = drawn(demo, 1218);
    const isIdle = (atS: number) => course.idle.some(({ fromS, toS }) => fromS <= atS && atS < toS);
    const ticks = ticksOf(layout.frame, clock, isIdle);
    expect(ticks.length).toBeGreaterThan(5);
    ticks.slice(1).forEach(({ x }, n) => expect(x - (ticks[n]?.x ?? x)).toBeGreaterThan(40));
    for (const { wallMs } of ticks) {
      expect(wallMs % (H * 1000)).toBe(0);
      expect(isIdle((wallMs - START_MS) / 1000)).toBe(false);
    }
    const days = daysOf(layout.frame, clock);
    expect(days.length).toBeGreaterThan(1);
    for (const { left, right } of [...days, ...partsOf(layout.frame, clock, isIdle)])
      expect(right).toBeGreaterThanOrEqual(left);
  });

  it('a press in a row, or a little beside a bar, means that bar', () => {
    const { layout } = drawn(demo, 1218);
    const [rest] = layout.rows;
    const [bar] = rest?.bars ?? [];
    if (!rest || !bar) throw new Error('nothing rests');
    expect(barAt(layout, bar.x + 1, rest.y + 1)).toBe(bar);
    expect(barAt(layout, bar.x - 10, rest.y + rest.heightPx - 1)).toBe(bar);
    expect(barAt(layout, bar.x - 60, rest.y + 1)).toBeUndefined();
    expect(barAt(layout, bar.x, layout.heightPx + 5)).toBeUndefined();
  });
});

describe('words of the picture', () => {
  it('are whole or not there: in the bar, behind it, or nowhere', () => {
    const texts = ['rests until Friday', 'Friday'];
    const wide = { x: 0, w: textPx('rests until Friday', 12) + 10 };
    expect(labelFor(wide, 1e3, texts, 12)).toEqual({ x: 5, text: texts[0], isInside: true });
    const narrow = { x: 0, w: textPx('Friday', 12) + 10 };
    expect(labelFor(narrow, 1e3, texts, 12)).toMatchObject({ text: 'Friday', isInside: true });
    expect(labelFor({ x: 0, w: 4 }, 1e3, texts, 12)).toMatchObject({ isInside: false });
    expect(labelFor({ x: 0, w: 4 }, 30, texts, 12)).toBeUndefined();
  });

  it('names are broken between words only', () => {
    expect(inLines('Counter left of the burners', 14, 120).join(' ')).toBe(
      'Counter left of the burners',
    );
    expect(inLines('Dampfbackofenreinigung', 14, 20)).toEqual(['Dampfbackofenreinigung']);
  });

  it('a deadline far behind the end is told, not drawn', () => {
    const due = (byS: number) => ({ due: { byS, doneS: 10 * H, of: 'purge' as const } });
    expect(drawnDueS(due(12 * H), 10 * H)).toBe(12 * H);
    expect(drawnDueS(due(4 * H), 10 * H)).toBe(4 * H);
    expect(drawnDueS(due(240 * H), 10 * H)).toBeUndefined();
    expect(drawnDueS(due(-1), 10 * H)).toBeUndefined();
    expect(drawnDueS({}, 10 * H)).toBeUndefined();
  });

  it('parts of the day are those of the kitchen’s wall', () => {
    const at = (iso: string) => partOfDay(Date.parse(iso), 'America/New_York');
    expect(at('2027-03-05T09:59:00Z')).toBe('night');
    expect(at('2027-03-05T10:00:00Z')).toBe('morning');
    expect(at('2027-03-05T17:00:00Z')).toBe('afternoon');
    expect(at('2027-03-05T23:00:00Z')).toBe('evening');
  });
});
