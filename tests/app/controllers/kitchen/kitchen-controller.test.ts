import { beforeEach, describe, expect, it } from 'vitest';
import { formatKitchen, problemMessage } from '../../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { freeName, PUT_BACK_MS } from '../../../../src/app/controllers/kitchen/kitchen-library.ts';
import { flat, FLAT, tablet } from './desk.ts';
import { latestWriter } from '../../../../src/app/controllers/kitchen/latest-writer.ts';

let t: ReturnType<typeof tablet>;
beforeEach(() => {
  t = tablet();
});

describe('several kitchens on one tablet', () => {
  it('lays a demo on the desk as it is, and copies it with the first change', async () => {
    const desk = t.desk();
    expect(await desk.openDemo('flat-coils')).toBe(true);
    expect(desk.opened()).toEqual({ kind: 'demo', id: 'flat-coils' });
    expect(t.world.rows.size).toBe(0);
    desk.edit({ ...flat(), altitudeM: 500 });
    await desk.written();
    expect(desk.opened()).toEqual({ kind: 'kept', id: 'k1' });
    expect(desk.library.kept().map((row) => row.name)).toEqual(['Flat with coils']);
    await desk.openDemo('flat-coils');
    expect(desk.kitchen()?.altitudeM).toBe(20);
    desk.edit({ ...flat(), altitudeM: 600 });
    await desk.written();
    expect(desk.library.kept().map((row) => row.name)).toEqual([
      'Flat with coils (2)',
      'Flat with coils',
    ]);
  });

  it('comes back after a reload with what lay on the desk', async () => {
    const desk = t.desk();
    desk.keep({ ...flat(), name: 'First' });
    await desk.written();
    desk.keep({ ...flat(), name: 'Second' });
    await desk.written();
    await desk.open('k1');
    const later = t.desk();
    await later.openLast();
    expect(later.kitchen()?.name).toBe('First');
    expect(later.plan()?.steps.length).toBeGreaterThan(0);
  });

  it('takes over the one kitchen an app of before had kept', async () => {
    t.world.rows.set('desk', { id: 'desk', name: 'Old', savedWallMs: 1, text: FLAT });
    const desk = t.desk();
    await desk.openLast();
    expect(desk.opened()).toEqual({ kind: 'kept', id: 'desk' });
    desk.edit({ ...flat(), name: 'Old, changed' });
    await desk.written();
    expect(t.world.rows.get('desk')?.name).toBe('Old, changed');
  });

  it('renames, duplicates, deletes and puts back', async () => {
    const desk = t.desk();
    desk.keep({ ...flat(), name: 'A' });
    expect(await desk.rename('k1', '  B ')).toBe(true);
    await desk.written();
    expect(desk.kitchen()?.name).toBe('B');
    expect(await desk.rename('k1', ' ')).toBe(false);
    expect(await desk.duplicate('k1')).toBe(true);
    await desk.written();
    expect(desk.opened()).toEqual({ kind: 'kept', id: 'k2' });
    expect(desk.kitchen()?.name).toBe('B (2)');
    await desk.remove('k2');
    expect(desk.opened()).toEqual({ kind: 'kept', id: 'k1' });
    expect(desk.library.removed().map((row) => row.id)).toEqual(['k2']);
    await desk.library.putBack('k2');
    expect(desk.library.kept().map((row) => row.id)).toContain('k2');
    await desk.remove('k1');
    await desk.remove('k2');
    expect(desk.kitchen()).toBeUndefined();
    expect(desk.plan()).toBeUndefined();
    t.world.wallMs += PUT_BACK_MS + 10;
    await desk.library.refresh();
    expect(t.world.rows.size).toBe(0);
  });

  it('changes nothing for a bad file and says where it is bad', async () => {
    const desk = t.desk();
    desk.keep(flat());
    await desk.written();
    expect(await desk.openText(FLAT.replace('"altitudeM": 20', '"altitudeM": 90000'))).toBe(false);
    expect(desk.problems()[0]).toMatchObject({ path: 'altitudeM' });
    expect(inEnglish.say(problemMessage(desk.problems()[0]!))).toMatch(/90000.*5000/);
    expect(desk.kitchen()?.altitudeM).toBe(20);
    expect(desk.library.kept().length).toBe(1);
  });

  it('takes in a file beside the others', async () => {
    const desk = t.desk();
    desk.keep(flat());
    await desk.written();
    expect(await desk.openText(FLAT)).toBe(true);
    expect(desk.kitchen()).toEqual({ ...flat(), name: 'Flat with coils (2)' });
  });

  it('says when a kitchen cannot be kept', async () => {
    const desk = t.desk();
    t.world.failing = true;
    desk.keep(flat());
    await desk.written();
    expect(desk.writing()).toBe('failed');
    expect(t.world.told).toEqual([{ key: 'shell.failed', params: { why: 'full' } }]);
    t.world.failing = false;
    desk.keepAgain();
    await desk.written();
    expect(desk.writing()).toBe('idle');
    expect(t.world.rows.get('k1')?.text).toBe(formatKitchen(flat()));
    desk.edit({ ...flat(), altitudeM: 30 });
    await desk.written();
    expect(desk.writing()).toBe('idle');
    expect(t.world.rows.get('k1')?.text).toBe(formatKitchen({ ...flat(), altitudeM: 30 }));
  });

  it('keeps a kitchen that was only begun, and has no plan for it', async () => {
    const desk = t.desk();
    desk.keep({ ...flat(), fixtures: [] });
    await desk.written();
    const later = t.desk();
    await later.openLast();
    expect(later.kitchen()).toEqual({ ...flat(), fixtures: [] });
    expect(later.plan()).toBeUndefined();
    expect(later.planTrouble()).toBeUndefined();
  });
});

describe('the pieces', () => {
  it('writes the latest and passes over what it overtook', async () => {
    const written: string[] = [];
    const writer = latestWriter<{ id: string; n: number }>(
      async ({ id, n }) => {
        await Promise.resolve();
        written.push(`${id}${n}`);
      },
      () => undefined,
      () => undefined,
    );
    for (let n = 1; n <= 30; n += 1) writer.put({ id: 'a', n });
    writer.put({ id: 'b', n: 1 });
    await writer.done();
    expect(written).toEqual(['a1', 'a30', 'b1']);
  });
  it('finds a free name', () => {
    expect(freeName('Flat', [])).toBe('Flat');
    expect(freeName('Flat', ['Flat', 'Flat (2)'])).toBe('Flat (3)');
    expect(freeName('x'.repeat(80), ['x'.repeat(80)]).length).toBeLessThanOrEqual(80);
  });
});
