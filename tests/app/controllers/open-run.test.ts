import { expect, it } from 'vitest';
import { OpenRun } from '../../../src/app/controllers/run/open-run.ts';
import { RunSession } from '../../../src/app/controllers/run/run-session.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

const quiet = { onView: () => undefined, onTrouble: () => undefined, onRefusal: () => undefined };

it('a press in the moment in which a page takes a run over waits for it, and is not lost', async () => {
  const store = new MemoryStore();
  const deps = (session: string) => ({
    store,
    readClocks: () => ({ wallMs: NEW_YEAR_MS, monoMs: 0, session }),
    newId: () => 'run',
    builtWallMs: BUILT_MS,
  });
  const first = await RunSession.draft(smallPlan, deps('first'), quiet);
  await first.send({ kind: 'start-run' });
  const open = new OpenRun(deps('second'), { ...quiet, onOtherLead: () => undefined });
  const taken = open.reopen(first.entry);
  expect(open.session).toBeUndefined();
  const pressed = open.led().then((led) => led?.send({ kind: 'stop-run', reason: 'x' }));
  await taken;
  expect(await pressed).toBe(true);
  expect(store.records.get('run')?.map(({ fact }) => fact.body.kind)).toContain('closing-begun');
});
