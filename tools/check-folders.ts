/**
 * Fails when a folder holds so many files that one does not find one's own.
 * Only files that lie in the folder itself count, not those in folders below.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** The most files of a folder. */
export const MOST_FILES = 14;

const ROOTS = ['src', 'tests', 'shared'];

/** A folder that may hold more, and why it is not split. */
type Exception = { readonly folder: string; readonly most: number; readonly why: string };

const FROZEN = 'one journal is three or four files, and a version lies as it was frozen';
const EXCEPTIONS: readonly Exception[] = [
  { folder: 'tests/core/journal/frozen/v1', most: 18, why: FROZEN },
  { folder: 'tests/core/journal/frozen/v2', most: 22, why: FROZEN },
];

type Crowded = { readonly folder: string; readonly files: number; readonly most: number };

/** Folders below a root by path, with the files that lie in each. */
function* folders(root: string, folder: string): Generator<[string, number]> {
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  yield [folder, entries.filter((entry) => entry.isFile() && !entry.name.startsWith('.')).length];
  for (const entry of entries)
    if (entry.isDirectory()) yield* folders(root, `${folder}/${entry.name}`);
}

/**
 * Folders over their limit, the fullest first, and exceptions that are not
 * needed: the folder is gone, or holds no more than any folder may.
 */
export function crowdedFolders(
  root: string,
  exceptions: readonly Exception[] = EXCEPTIONS,
): { crowded: Crowded[]; needless: Exception[] } {
  const counts = new Map(
    ROOTS.filter((folder) => existsSync(join(root, folder))).flatMap((folder) => [
      ...folders(root, folder),
    ]),
  );
  const allowed = new Map(exceptions.map(({ folder, most }) => [folder, most]));
  return {
    crowded: [...counts]
      .map(([folder, files]) => ({ folder, files, most: allowed.get(folder) ?? MOST_FILES }))
      .filter(({ files, most }) => files > most)
      .toSorted((a, b) => b.files - a.files || a.folder.localeCompare(b.folder)),
    needless: exceptions.filter(({ folder }) => (counts.get(folder) ?? 0) <= MOST_FILES),
  };
}

if (process.argv[1]?.endsWith('check-folders.ts')) {
  const { crowded, needless } = crowdedFolders(process.cwd());
  for (const { folder, files, most } of crowded)
    console.error(
      `${folder} holds ${files} files, at most ${most} are allowed: move what belongs together into a folder of its own.`,
    );
  for (const { folder } of needless)
    console.error(`${folder} needs no exception: delete it from tools/check-folders.ts.`);
  const ok = crowded.length === 0 && needless.length === 0;
  console.log(ok ? 'Folders are small enough.' : `${crowded.length} folders hold too many files.`);
  process.exit(ok ? 0 : 1);
}
