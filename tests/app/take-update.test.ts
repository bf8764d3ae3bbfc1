import { expect, it } from 'vitest';
import { takeUpdate } from '../../src/app/page-actions.ts';
import { JournalStoreError } from '../../src/core/journal/index.ts';
import type { Updates } from '../../src/host/updates/index.ts';

async function toldOf(take: Updates['apply']): Promise<string[]> {
  const told: string[] = [];
  const updates = { waiting: () => true, isReplaced: () => false, take, check: () => undefined };
  await takeUpdate({ updates, tell: ({ key }) => void told.push(key) });
  return told;
}

it('says why a newer version was not taken', async () => {
  expect(await toldOf(async () => 'run-open')).toEqual(['shell.update.run-open']);
  expect(await toldOf(() => Promise.reject(new JournalStoreError('held', 'x')))).toEqual([
    'shell.storage.held',
  ]);
  expect(await toldOf(async () => 'reloading')).toEqual([]);
});
