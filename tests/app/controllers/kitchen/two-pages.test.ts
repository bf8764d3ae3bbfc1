import { beforeEach, describe, expect, it } from 'vitest';
import { demoText, flat, tablet } from './desk.ts';

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
