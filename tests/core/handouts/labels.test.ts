import { describe, expect, it } from 'vitest';
import type { Designation, Kitchen } from '../../../src/core/kitchen/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { labelPages, labelsOf, markClashes } from '../../../src/core/handouts/index.ts';
import {
  LABEL,
  labelGrid,
  PAGE_HEAD_MM,
  PAPER_MARGIN_MM,
  PAPERS,
} from '../../../src/core/handouts/labels/paper.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const mountain = demoKitchen('mountain-gas.kitchen.json');

function marked(kitchen: Kitchen, by: Readonly<Record<string, Designation>>): Kitchen {
  return {
    ...kitchen,
    fixtures: kitchen.fixtures.map((one) => ({ ...one, designation: by[one.id] ?? 'undecided' })),
  };
}

const clashes = (kitchen: Kitchen) => markClashes(kitchen).map(({ text }) => inEnglish.say(text));

describe('labels on paper', () => {
  it.each(['a4', 'letter'] as const)('lie whole on %s, two beside each other', (paper) => {
    const { columns, rows } = labelGrid(paper);
    const { widthMm, heightMm } = PAPERS[paper];
    expect([columns, rows]).toEqual([2, 5]);
    expect(columns * LABEL.widthMm).toBeLessThanOrEqual(widthMm - 2 * PAPER_MARGIN_MM);
    expect(rows * LABEL.heightMm + PAGE_HEAD_MM).toBeLessThanOrEqual(
      heightMm - 2 * PAPER_MARGIN_MM,
    );
  });

  it('keep their order from page to page, and no page is empty', () => {
    const all = Array.from({ length: 23 }, (_, at) => at);
    const pages = labelPages(all, 'a4');
    expect(pages.map(({ length }) => length)).toEqual([10, 10, 3]);
    expect(pages.flat()).toEqual(all);
    expect(labelPages([], 'letter')).toEqual([]);
  });
});

describe('what is labelled', () => {
  const plan = buildPlan(mountain, { startWallMs: Date.parse('2026-03-29T06:00:00Z') });

  it('is each place that has a mark, and each rest of the plan with the hour it is planned to', () => {
    const { labels, undecided } = labelsOf(plan);
    const places = mountain.fixtures.filter(({ designation }) => designation !== 'undecided');
    expect(labels.flatMap((one) => (one.kind === 'mark' ? one.id : []))).toEqual(
      places.map(({ id }) => id),
    );
    expect(undecided).toHaveLength(mountain.fixtures.length - places.length);
    const rests = plan.steps.filter(({ kind }) => kind === 'rest');
    const resting = labels.flatMap((one) => (one.kind === 'resting' ? one : []));
    expect(resting.map(({ id }) => id)).toEqual(rests.map(({ id }) => id));
    for (const { id, plannedWallMs } of resting) {
      const startMs = plan.days!.startWallMs + plan.timetable.startS[id]! * 1000;
      expect(plannedWallMs! - startMs).toBe(24 * 3_600_000);
    }
  });

  it('tells no hour where the plan has no calendar', () => {
    const { days: _, ...bare } = plan;
    const resting = labelsOf(bare).labels.filter(({ kind }) => kind === 'resting');
    expect(resting.length).toBeGreaterThan(0);
    expect(resting.every((one) => !('plannedWallMs' in one))).toBe(true);
  });

  it('rests from a told last hot use until the whole rest is over', () => {
    const lastHotAt = '2026-03-28T20:00';
    const told = { ...mountain, household: { ...mountain.household, lastHotAt } };
    const planned = buildPlan(told, { startWallMs: Date.parse('2026-03-29T06:00:00Z') });
    const counted = planned.steps.filter(({ lastHotWallMs }) => lastHotWallMs !== undefined);
    expect(counted.length).toBeGreaterThan(0);
    const byId = new Map(labelsOf(planned).labels.map((one) => [one.id, one]));
    for (const { id, lastHotWallMs } of counted) {
      const label = byId.get(id);
      expect(label?.kind === 'resting' && label.plannedWallMs).toBeGreaterThanOrEqual(
        lastHotWallMs! + 24 * 3_600_000,
      );
    }
  });
});

describe('what labels do not settle', () => {
  it('is one oven, one sink, one drawer for both', () => {
    const [oven] = mountain.fixtures.filter(({ kind }) => kind === 'oven');
    const [one, two] = mountain.fixtures.filter(({ kind }) => kind === 'sink');
    const apart = marked(mountain, { [oven!.id]: 'meat', [one!.id]: 'meat', [two!.id]: 'dairy' });
    expect(clashes(apart)).toContain(
      `One oven for meat and dairy: ${oven!.name} (Meat). Ask your rabbi how both use it.`,
    );
    expect(clashes(apart).join()).not.toContain('No sink');
    const alike = marked(mountain, { [oven!.id]: 'dairy', [one!.id]: 'meat', [two!.id]: 'meat' });
    expect(clashes(alike)).toContain(`No sink is marked Dairy: ${one!.name} and ${two!.name}.`);
    const open = marked(mountain, { [oven!.id]: 'dairy' });
    expect(clashes(open).join()).not.toContain('No sink');
  });

  it('is an oven and a cooktop of one range that are marked apart', () => {
    const oven = mountain.fixtures.find((one) => one.kind === 'oven' && one.sharesRangeWith)!;
    const top = oven.kind === 'oven' ? oven.sharesRangeWith! : '';
    const apart = marked(mountain, { [oven.id]: 'meat', [top]: 'dairy' });
    expect(clashes(apart).some((one) => one.includes('are one appliance'))).toBe(true);
    const alike = marked(mountain, { [oven.id]: 'meat', [top]: 'meat' });
    expect(clashes(alike).some((one) => one.includes('are one appliance'))).toBe(false);
  });

  it('is nothing in a kitchen for one kind of food', () => {
    const { utensils: _, ...bare } = mountain;
    expect(clashes(marked(bare, {}))).toEqual([]);
  });
});
