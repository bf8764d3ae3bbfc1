import { beforeEach, describe, expect, it } from 'vitest';
import { bringBack } from '../../../src/app/controllers/backup/bring-back.ts';
import { everythingAsText } from '../../../src/app/controllers/backup/everything.ts';
import { encodeEntries, exportJournal } from '../../../src/core/journal/index.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import type { SavedKitchen } from '../../../src/host/kitchens/index.ts';
import { DEMO_TEXTS } from '../../core/kitchen/demos.ts';
import { planOfDemo } from '../../core/plan/support/plans.ts';
import { inEnglish } from '../../support/english.ts';
import { MemoryStore } from './memory-store.ts';

const OPENED_MS = Date.UTC(2026, 2, 1, 18);
const entries = encodeEntries(
  simulateRun(planOfDemo('flat-coils'), { startWallMs: OPENED_MS }).facts,
);

/** A tablet that keeps in memory. */
function tablet() {
  const rows = new Map<string, SavedKitchen>();
  const settings = new Map<string, unknown>();
  const journals = new MemoryStore();
  let ids = 0;
  return {
    rows,
    stored: settings,
    journals,
    kitchens: {
      list: async () => [...rows.values()],
      read: async (id: string) => rows.get(id),
      save: async (row: SavedKitchen) => void rows.set(row.id, row),
      remove: async (id: string) => void rows.delete(id),
    },
    settings: {
      readAll: async () => Object.fromEntries(settings),
      write: async (name: string, value: string | number | boolean) =>
        void settings.set(name, value),
    },
    exportText: async (id: string) => exportJournal(await journals.readAll(id)),
    newId: () => `new-${(ids += 1)}`,
    readClocks: () => ({ wallMs: Date.UTC(2027, 0, 1), monoMs: 0, session: 's' }),
  };
}

let from: ReturnType<typeof tablet>;
let to: ReturnType<typeof tablet>;
beforeEach(async () => {
  from = tablet();
  to = tablet();
  for (const [at, [id, text]] of DEMO_TEXTS.entries()) {
    const { name } = JSON.parse(text) as { name: string };
    from.rows.set(id, { id, name, savedWallMs: at, text });
  }
  from.rows.set('gone', { ...[...from.rows.values()][0]!, id: 'gone', removedWallMs: 5 });
  from.stored.set('theme', 'night').set('ticks:Flat', '["mop"]').set('run-note-ticks', '{}');
  const run = { id: 'run', name: 'Flat with coils', openedWallMs: OPENED_MS, closed: true };
  const journal = await from.journals.openRun(run);
  await journal.append(entries);
});

const whole = async (text: string) => {
  const outcome = await bringBack(to, text);
  if ('refused' in outcome) throw new Error(inEnglish.say(outcome.refused));
  return outcome;
};

describe('everything that a tablet keeps', () => {
  it('is on another tablet what it was on the first', async () => {
    const text = await everythingAsText(from);
    expect(await whole(text)).toEqual({ kitchens: 4, runs: 1, same: 0, left: [] });
    const texts = (of: typeof from) =>
      [...of.rows.values()].filter((row) => !row.removedWallMs).map((row) => row.text);
    expect(texts(to)).toEqual(texts(from));
    const [run] = await to.journals.listRuns();
    expect(run).toMatchObject({ openedWallMs: OPENED_MS, closed: true, closedAs: 'completed' });
    expect(await to.exportText(run?.id ?? '')).toBe(await from.exportText('run'));
    // What is of one page of one run stays where it was.
    expect(Object.fromEntries(to.stored)).toEqual({ theme: 'night', 'ticks:Flat': '["mop"]' });
    // All of it again: the same file, but for what was left behind and the name of the run here.
    const again = (await everythingAsText(to)).replace(run?.id ?? '', 'run');
    expect(JSON.parse(again)).toEqual(JSON.parse(text));
  });

  it('brought twice adds nothing, and changes nothing that is here', async () => {
    const text = await everythingAsText(from);
    await whole(text);
    to.stored.set('theme', 'day');
    const before = [...to.rows.values()];
    expect(await whole(text)).toEqual({ kitchens: 0, runs: 0, same: 5, left: [] });
    expect([...to.rows.values()]).toEqual(before);
    expect(to.stored.get('theme')).toBe('day');
  });

  it('comes under a free name where the name was given away', async () => {
    const [row] = [...from.rows.values()];
    to.rows.set('mine', { ...row!, id: 'mine', text: '{}' });
    const text = await everythingAsText(from);
    expect(await whole(text)).toMatchObject({ kitchens: 4, same: 0 });
    const names = () => [...to.rows.values()].map(({ name }) => name);
    expect(names()).toContain(`${row!.name} (2)`);
    expect(to.rows.get('mine')?.text).toBe('{}');
    // It is here now, by whatever name: once more adds no third.
    expect(await whole(text)).toMatchObject({ kitchens: 0, same: 5 });
    expect(names()).toHaveLength(5);
    expect(names()).not.toContain(`${row!.name} (3)`);
  });

  it('comes twice where a person keeps it twice, whichever was saved last', async () => {
    const [row] = [...from.rows.values()];
    const doubled = (name: string, savedWallMs: number): SavedKitchen => {
      const text = JSON.stringify({ ...(JSON.parse(row!.text) as object), name });
      return { id: name, name, savedWallMs, text };
    };
    from.rows.clear();
    for (const [at, name] of ['Flat (2)', 'Flat', 'Flat before the move'].entries())
      from.rows.set(name, doubled(name, at));
    const text = await everythingAsText(from);
    expect(await whole(text)).toMatchObject({ kitchens: 3 });
    expect([...to.rows.values()].map(({ name }) => name)).toEqual([...from.rows.keys()]);
    expect(await whole(text)).toMatchObject({ kitchens: 0, same: 4 });
  });

  it('leaves out the same measurements of a run under its name here', async () => {
    const leftOut = '{"boil kettle":[2]}';
    from.stored.set('left-out:run', leftOut).set('left-out:of no run', leftOut);
    const text = await everythingAsText(from);
    await whole(text);
    const [run] = await to.journals.listRuns();
    const choices = { theme: 'night', 'ticks:Flat': '["mop"]', [`left-out:${run!.id}`]: leftOut };
    expect(Object.fromEntries(to.stored)).toEqual(choices);
    // A run that is here already: what was chosen for it here stands, or comes where nothing was.
    to.stored.set(`left-out:${run!.id}`, '{}');
    await whole(text);
    expect(to.stored.get(`left-out:${run!.id}`)).toBe('{}');
    to.stored.delete(`left-out:${run!.id}`);
    await whole(text);
    expect(Object.fromEntries(to.stored)).toEqual(choices);
  });

  it('leaves out measurements of a file that does not name its runs where the run is here by that name', async () => {
    from.stored.set('left-out:run', '{"boil kettle":[2]}');
    const text = (await everythingAsText(from)).replace('"id":"run",', '');
    from.stored.clear();
    to = from;
    await whole(text);
    expect(to.stored.get('left-out:run')).toBe('{"boil kettle":[2]}');
  });

  it('leaves out a run that was changed, says so, and brings the rest', async () => {
    const text = await everythingAsText(from);
    const changed = text.replace('"kind":"run-started"', '"kind":"run-started","extra":1');
    expect(changed).not.toBe(text);
    const { kitchens, runs, left } = await whole(changed);
    expect({ kitchens, runs }).toEqual({ kitchens: 4, runs: 0 });
    expect(left.map((one: Message) => inEnglish.say(one))).toEqual([
      expect.stringMatching(/^runs\[0\]\.journal \(Flat with coils\): .*not whole at record/),
    ]);
    expect(await to.journals.listRuns()).toEqual([]);
  });

  it('knows a run that has gone on since the file was made', async () => {
    const going = { id: 'going', name: 'Flat with coils', openedWallMs: OPENED_MS, closed: false };
    const journal = await to.journals.openRun(going);
    const most = entries.length - 20;
    await journal.append(entries.slice(0, most));
    const text = await everythingAsText(to);
    await journal.append(entries.slice(most));
    await journal.describe({ ...going, closed: true });
    expect(await whole(text)).toEqual({ kitchens: 0, runs: 0, same: 1, left: [] });
    expect(await to.journals.listRuns()).toHaveLength(1);
  });

  it('leaves out a run that is nested beyond reason, and brings what stands after it', async () => {
    const text = await everythingAsText(from);
    const deep = `{"name":"Deep","openedWallMs":5,"journal":{"entries":${'['.repeat(20_000)}${']'.repeat(20_000)}}}`;
    const { runs, left } = await whole(text.replace('"runs":[', `"runs":[${deep},`));
    expect(runs).toBe(1);
    expect(left.map((one) => inEnglish.say(one))).toEqual([
      expect.stringMatching(/^runs\[0\]\.journal \(Deep\): /),
    ]);
    expect(to.stored.get('theme')).toBe('night');
  });

  it('writes nothing of a file that is none', async () => {
    expect(await bringBack(to, '{"format":"x"}')).toHaveProperty('refused');
    expect(to.rows.size + to.stored.size).toBe(0);
  });
});
