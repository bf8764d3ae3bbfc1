import { describe, expect, it } from 'vitest';
import { createTicks, readTicks } from '../../../../src/app/controllers/kitchen/ticks.ts';

function store(stored: Record<string, unknown> = {}) {
  return {
    stored,
    readAll: async () => ({ ...stored }),
    write: async (name: string, value: string | number | boolean) => {
      stored[name] = value;
    },
  };
}

/** All that was promised has come. */
const settled = () => new Promise((go) => setTimeout(go, 0));

describe('ticks', () => {
  it('are kept by kitchen, and read again', async () => {
    const settings = store();
    const ticks = createTicks({ settings, tell: () => {} })('Flat');
    ticks.set('jugs', true);
    ticks.set('mop', true);
    ticks.set('jugs', false);
    await settled();
    const again = createTicks({ settings, tell: () => {} });
    await settled();
    expect(again('Flat').has('mop')).toBe(true);
    expect(again('Flat').has('jugs')).toBe(false);
    expect(again('Hall').has('mop')).toBe(false);
  });

  it('that are set before the old ones are read stay', async () => {
    const settings = store({ 'ticks:Flat': '["jugs"]' });
    const ticks = createTicks({ settings, tell: () => {} })('Flat');
    ticks.set('mop', true);
    await settled();
    expect(ticks.has('mop')).toBe(true);
    expect(ticks.has('jugs')).toBe(true);
    expect(settings.stored['ticks:Flat']).toBe('["jugs","mop"]');
  });

  it('wait for a store that fails at first, and lose nothing of it', async () => {
    const settings = store({ 'ticks:Flat': '["jugs"]' });
    let fails = true;
    const readAll = () => (fails ? Promise.reject(new Error('held')) : settings.readAll());
    const ticks = createTicks({ settings: { ...settings, readAll }, tell: () => {} })('Flat');
    await settled();
    ticks.set('mop', true);
    await settled();
    expect(ticks.has('mop')).toBe(true);
    expect(settings.stored['ticks:Flat']).toBe('["jugs"]');
    fails = false;
    ticks.set('rags', true);
    await settled();
    expect(settings.stored['ticks:Flat']).toBe('["jugs","mop","rags"]');
  });

  it('are those of a kitchen whatever it is called', async () => {
    const settings = store();
    const ticks = createTicks({ settings, tell: () => {} });
    for (const name of ['constructor', '__proto__', 'toString']) {
      expect(ticks(name).has('mop'), name).toBe(false);
      ticks(name).set('mop', true);
      expect(ticks(name).has('mop'), name).toBe(true);
    }
  });

  it('that cannot be kept are told', async () => {
    const told: string[] = [];
    const settings = { ...store(), write: () => Promise.reject(new Error('full')) };
    createTicks({ settings, tell: ({ key }) => told.push(key) })('Flat').set('mop', true);
    await settled();
    expect(told).toEqual(['shell.choice-not-kept']);
  });

  it('of another app tick nothing', () => {
    expect([7, '{', '{"a":1}', '[1,"mop"]'].map(readTicks)).toEqual([[], [], [], ['mop']]);
  });
});
