/**
 * Takes each mend of the engine out, in a copy of the tree, and plays the
 * simulation until it finds the promise broken again. Exit 1 when a mend can
 * be missing unseen, or when an entry no longer fits the source. Arguments:
 * points to try only those; GLOWPOUR_SIMULATIONS: runs at most for each.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MENDS, type Mend } from './table.ts';

const ROOT = join(import.meta.dirname, '..', '..', '..');
const NEEDED = [
  'src',
  'shared',
  'demo-kitchens',
  'tests/core',
  'tests/support',
  'tests/simulation',
  'package.json',
];
const CONFIGS = ['tsconfig.json', 'tsconfig.base.json', 'tests/tsconfig.json'];
const RUNS = process.env['GLOWPOUR_SIMULATIONS'] ?? '2000';

type Met = { readonly seed: number; readonly way: string; readonly text: string };

function copyTree(): string {
  const folder = mkdtempSync(join(tmpdir(), 'mends-'));
  for (const path of [...NEEDED, ...CONFIGS])
    cpSync(join(ROOT, path), join(folder, path), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** Takes the mend out; gives what puts it back, or null when an entry does not fit the source. */
function takeOut(folder: string, { patches }: Mend): (() => void) | null {
  const before: (readonly [path: string, text: string])[] = [];
  const putBack = (): void => {
    for (const [path, text] of before.toReversed()) writeFileSync(path, text);
  };
  for (const { file, find, replace } of patches) {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8');
    if (text.split(find).length !== 2) {
      putBack();
      return null;
    }
    before.push([path, text]);
    writeFileSync(
      path,
      text.replace(find, () => replace),
    );
  }
  return putBack;
}

function play(folder: string, { promise, ways }: Mend): Met | null {
  const script = join(folder, 'tests/simulation/mends-taken-out/until-found.ts');
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  const done = spawnSync(process.execPath, [tsx, script, promise, ways.join('|'), RUNS], {
    cwd: folder,
    encoding: 'utf8',
  });
  if (done.status !== 0) throw new Error(done.stderr.slice(0, 2000));
  return JSON.parse(done.stdout.trim().split('\n').at(-1) ?? 'null') as Met | null;
}

function rowOf(folder: string, mend: Mend): string {
  const { point, promise, what } = mend;
  const row = (seed: string, how: string): string =>
    `| ${[point, promise, what, seed, how].join(' | ')} |`;
  const putBack = takeOut(folder, mend);
  if (!putBack) return row('—', 'NO LONGER FITS the source');
  try {
    const met = play(folder, mend);
    return met ? row(String(met.seed), met.text) : row('—', `NOT FOUND in ${RUNS} runs`);
  } finally {
    putBack();
  }
}

const wanted = process.argv.slice(2);
const chosen = MENDS.filter(({ point }) => wanted.length === 0 || wanted.includes(point));
const folder = copyTree();
try {
  console.log('| point | promise | mend taken out | found after runs | for instance |');
  console.log('| --- | --- | --- | --- | --- |');
  let missed = 0;
  for (const mend of chosen) {
    const row = rowOf(folder, mend);
    if (/NOT FOUND|NO LONGER/.test(row)) missed += 1;
    console.log(row);
  }
  console.log(`${chosen.length - missed} of ${chosen.length} mends taken out were found.`);
  if (missed > 0 || chosen.length === 0) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
