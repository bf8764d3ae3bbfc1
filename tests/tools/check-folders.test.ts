import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { crowdedFolders, MOST_FILES } from '../../tools/check-folders.ts';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'folders-'));
});
afterEach(() => rmSync(root, { recursive: true }));

function fill(folder: string, files: number): void {
  mkdirSync(join(root, folder), { recursive: true });
  for (let i = 0; i < files; i += 1) writeFileSync(join(root, folder, `f${i}.ts`), '');
}

describe('the folder check', () => {
  it('names each folder that holds too many files, the fullest first', () => {
    fill('src/core/run', MOST_FILES + 1);
    fill('tests/core', MOST_FILES + 3);
    fill('shared', MOST_FILES + 1);
    expect(crowdedFolders(root, []).crowded).toEqual([
      { folder: 'tests/core', files: MOST_FILES + 3, most: MOST_FILES },
      { folder: 'shared', files: MOST_FILES + 1, most: MOST_FILES },
      { folder: 'src/core/run', files: MOST_FILES + 1, most: MOST_FILES },
    ]);
  });

  it('counts neither folders, nor what lies in them, nor hidden files, nor other roots', () => {
    fill('src/core', MOST_FILES - 1);
    fill('src/core/run', MOST_FILES);
    writeFileSync(join(root, 'src/core/.hidden'), '');
    fill('tools', MOST_FILES + 1);
    expect(crowdedFolders(root, []).crowded).toEqual([]);
  });

  it('lets an exception hold as many as it says, and no more', () => {
    const exception = { folder: 'src/core', most: MOST_FILES + 2, why: 'a test' };
    fill('src/core', MOST_FILES + 2);
    expect(crowdedFolders(root, [exception])).toEqual({ crowded: [], needless: [] });
    fill('src/core', MOST_FILES + 3);
    expect(crowdedFolders(root, [exception]).crowded).toHaveLength(1);
  });

  it('names exceptions that nobody needs', () => {
    const gone = { folder: 'src/gone', most: 99, why: 'a test' };
    const small = { folder: 'src/core', most: 99, why: 'a test' };
    fill('src/core', MOST_FILES);
    expect(crowdedFolders(root, [gone, small]).needless).toEqual([gone, small]);
  });
});
