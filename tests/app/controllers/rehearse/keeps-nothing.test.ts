import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { createRehearsal } from '../../../../src/app/controllers/rehearse/rehearsal.ts';
import { createRehearsing } from '../../../../src/app/controllers/rehearse/rehearsing.ts';
import { chooseLanguage } from '../../../../src/app/context/language.ts';
import type { Message } from '../../../../src/core/messages/index.ts';
import { smallPlan } from '../../../core/run/support/fixtures.ts';

beforeAll(() => chooseLanguage(['en']));

/** All that a page could keep something in, lock, sound or tell other pages with. */
const OF_THE_DEVICE = [
  'indexedDB',
  'localStorage',
  'sessionStorage',
  'navigator',
  'caches',
  'BroadcastChannel',
  'AudioContext',
  'fetch',
  'Worker',
] as const;

/** Writes down each touch of one of them, and has nothing behind it. */
function spies(touched: string[]): void {
  for (const name of OF_THE_DEVICE) {
    const note = (what: PropertyKey): undefined => void touched.push(`${name}.${String(what)}`);
    vi.stubGlobal(
      name,
      new Proxy(() => undefined, {
        get: (_, what) => note(what),
        set: (_, what) => note(what) === undefined,
        apply: () => note('()'),
        construct: () => ({ made: note('new') }),
      }),
    );
  }
}

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a rehearsal keeps nothing', () => {
  it('touches no store, lock, sound or other page from its first screen to its last', async () => {
    const touched: string[] = [];
    let realMs = 0;
    spies(touched);
    const rehearsal = createRehearsal(smallPlan, {
      readMs: () => realMs,
      nowWallMs: () => Date.UTC(2026, 2, 1, 15),
      isStill: () => false,
    });
    await rehearsal.open();
    for (; rehearsal.ahead().kind !== 'over' && realMs < 600_000; realMs += 200)
      await rehearsal.beat();
    await rehearsal.send({ kind: 'note', text: 'Seen to the end.' });
    expect(rehearsal.view()?.closedAs).toBe('completed');
    expect(touched).toEqual([]);
    // The spies see what they are there to see.
    expect(localStorage.getItem).toBeUndefined();
    expect(touched).toEqual(['localStorage.getItem']);
  });
});

/** Real runs as they are wanted, and what was said. */
function beside() {
  const real = {
    isRead: true,
    openRun: undefined as unknown,
    isOpen: false,
    trouble: undefined as unknown,
  };
  const told: Message[] = [];
  const rehearsing = createRehearsing({
    runs: {
      isRead: () => real.isRead,
      openRun: () => real.openRun,
      isOpen: () => real.isOpen,
      trouble: () => real.trouble,
    },
    route: () => 'plan',
    tell: (message) => told.push(message),
  });
  return { real, told, rehearsing };
}

describe('a rehearsal beside real runs', () => {
  it('begins where no run is open, and is left', () => {
    const { rehearsing, told } = beside();
    rehearsing.begin(smallPlan);
    expect(rehearsing.plan()).toBe(smallPlan);
    expect(told).toEqual([]);
    rehearsing.leave();
    expect(rehearsing.plan()).toBeUndefined();
  });

  it.each([
    ['a run is open here', { isOpen: true }],
    ['a run is open in the store', { openRun: { id: 'one' } }],
    ['it is not known yet', { isRead: false }],
    ['the store cannot be read', { trouble: { kind: 'unreadable' } }],
  ])('is refused, and says why, while %s', (_, state) => {
    const { real, rehearsing, told } = beside();
    Object.assign(real, state);
    rehearsing.begin(smallPlan);
    expect(rehearsing.plan()).toBeUndefined();
    expect(told.map(({ key }) => key)).toEqual(['plan-page.rehearse.run-open']);
  });

  it('is gone as soon as a run opens: alarms never have it over them', () => {
    const { real, rehearsing } = beside();
    rehearsing.begin(smallPlan);
    real.openRun = { id: 'of another page' };
    expect(rehearsing.plan()).toBeUndefined();
  });
});
