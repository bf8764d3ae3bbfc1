import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  formatKitchen,
  parseKitchen,
  problemMessage,
  type Kitchen,
} from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import type { SavedKitchen } from '../../../src/host/kitchens/index.ts';
import { createKitchenController } from '../../../src/app/controllers/kitchen/kitchen-controller.ts';
import { withOpening } from '../../../src/app/controllers/kitchen/kitchen-opening.ts';
import { freeName, PUT_BACK_MS } from '../../../src/app/controllers/kitchen/kitchen-library.ts';
import { askHere } from './planner/ask-here.ts';
import { latestWriter } from '../../../src/app/controllers/kitchen/latest-writer.ts';

const FLAT = readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8');

const demoText = (id: string): Promise<string | undefined> =>
  Promise.resolve(id === 'flat-coils' ? FLAT : undefined);

function flat(): Kitchen {
  const outcome = parseKitchen(FLAT);
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

/** Both stores in memory; `failing` makes each write reject. */
function tablet(textOf = demoText) {
  const rows = new Map<string, SavedKitchen>();
  const settings = new Map<string, unknown>();
  const told: Message[] = [];
  const world = { wallMs: 1000, ids: 0, failing: false, rows, settings, writes: 0, told };
  const tell = (message: Message): void => void told.push(message);
  const desk = () =>
    withOpening(
      createKitchenController({
        store: {
          list: async () => [...rows.values()].toSorted((a, b) => b.savedWallMs - a.savedWallMs),
          read: async (id) => rows.get(id),
          save: async (row) => {
            world.writes += 1;
            if (world.failing) throw new Error('full');
            rows.set(row.id, row);
          },
          remove: async (id) => void rows.delete(id),
        },
        settings: {
          readAll: async () => Object.fromEntries(settings),
          write: async (name, value) => void settings.set(name, value),
        },
        nowMs: () => (world.wallMs += 1),
        newId: () => `k${(world.ids += 1)}`,
        tell,
        ask: askHere,
      }),
      textOf,
      tell,
    );
  return { world, desk };
}

let t: ReturnType<typeof tablet>;
beforeEach(() => {
  t = tablet();
});

describe('a kitchen that is slow to open', () => {
  /** The demo comes when it is let come. */
  function slow() {
    let letCome = (): void => undefined;
    const waits = new Promise<void>((come) => {
      letCome = come;
    });
    t = tablet(async (id) => {
      if (t.world.ids > 0) await waits;
      return demoText(id);
    });
    return { letCome };
  }

  it('does not lie over one that was opened meanwhile', async () => {
    const { letCome } = slow();
    const desk = t.desk();
    await desk.openDemo('flat-coils');
    desk.edit({ ...flat(), altitudeM: 500 });
    await desk.written();
    const id = desk.keptId() ?? '';
    const late = desk.openDemo('flat-coils');
    expect(await desk.open(id)).toBe(true);
    letCome();
    expect(await late).toBe(false);
    expect(desk.opened()).toEqual({ kind: 'kept', id });
    expect(desk.kitchen()?.altitudeM).toBe(500);
  });

  it('does not lie over an edit of the one that was open', async () => {
    const { letCome } = slow();
    const desk = t.desk();
    await desk.openDemo('flat-coils');
    t.world.ids = 1;
    const late = desk.openDemo('flat-coils');
    desk.edit({ ...flat(), altitudeM: 500 });
    letCome();
    expect(await late).toBe(false);
    expect(desk.opened()?.kind).toBe('kept');
    expect(desk.kitchen()?.altitudeM).toBe(500);
  });

  it('opens the one that was wished for last', async () => {
    const desk = t.desk();
    const [first, second] = [desk.openDemo('flat-coils'), desk.openDemo('flat-coils')];
    expect(await Promise.all([first, second])).toEqual([false, true]);
  });
});

describe('one kitchen on two pages', () => {
  async function both() {
    const first = t.desk();
    await first.openDemo('flat-coils');
    first.edit(flat());
    await first.written();
    const id = first.keptId() ?? '';
    const second = t.desk();
    expect(await second.open(id)).toBe(true);
    return { first, second, id };
  }

  it('keeps what was changed on either, and says so', async () => {
    const { first, second, id } = await both();
    first.edit({ ...flat(), altitudeM: 500 });
    await first.written();
    second.edit({ ...flat(), altitudeM: 700 });
    second.edit({ ...flat(), altitudeM: 800 });
    await second.written();
    expect(t.world.rows.get(id)?.text).toContain('"altitudeM": 500');
    expect(second.kitchen()).toMatchObject({ name: 'Flat with coils (2)', altitudeM: 800 });
    const own = t.world.rows.get(second.keptId() ?? '');
    expect(own?.id).not.toBe(id);
    expect(own?.text).toContain('"altitudeM": 800');
    expect(t.world.rows.size).toBe(2);
    expect(t.world.told.map(({ key }) => key)).toEqual(['shell.kitchen.both-kept']);
    second.edit({ ...(second.kitchen() ?? flat()), altitudeM: 900 });
    await second.written();
    expect(t.world.rows.size).toBe(2);
  });

  it('goes on in turns as long as each has read what the other wrote', async () => {
    const { first, second, id } = await both();
    first.edit({ ...flat(), altitudeM: 500 });
    await first.written();
    await second.open(id);
    second.edit({ ...flat(), altitudeM: 700 });
    await second.written();
    expect(second.keptId()).toBe(id);
    expect(t.world.rows.size).toBe(1);
    expect(t.world.told).toEqual([]);
  });

  it('stays deleted when the other changes it; the change is a kitchen of its own', async () => {
    const { first, second, id } = await both();
    await first.remove(id);
    second.edit({ ...flat(), altitudeM: 700 });
    await second.written();
    expect(t.world.rows.get(id)?.removedWallMs).toBeGreaterThan(0);
    expect(second.keptId()).not.toBe(id);
    expect(t.world.rows.get(second.keptId() ?? '')?.text).toContain('"altitudeM": 700');
  });
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
