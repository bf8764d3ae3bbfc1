/**
 * Compares what two versions make of the demo kitchens: plans, printed plans,
 * simulated runs and their records. `npm run compare -- REF [--all]`: the
 * working tree beside a commit. Fails on any difference that is not in
 * `known-differences.ts`.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { comparedOf, differencesOf } from './differences.ts';
import type { Dump } from './dump/dump.ts';
import { KNOWN } from './known-differences.ts';
import { commitOf, layOut } from './past-version.ts';
import { judged, reportLines } from './report.ts';

const DUMP = join(import.meta.dirname, 'dump/dump.ts');

/** Each version in a process of its own: they share no module. */
async function dumped(version: 'before' | 'after', root: string, file: string): Promise<Dump> {
  const child = spawn(process.execPath, ['--import', 'tsx', DUMP, version, root, file], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  const code = await new Promise((resolve) => child.once('exit', resolve));
  if (code !== 0) throw new Error(`The version ${version} could not be played (${String(code)}).`);
  return JSON.parse(readFileSync(file, 'utf8')) as Dump;
}

async function compare(commit: string, showAll: boolean): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), 'glowpour-compare-'));
  try {
    const root = join(folder, 'before');
    layOut(commit, root);
    const playing = [
      dumped('before', root, join(folder, 'before.json')),
      dumped('after', process.cwd(), join(folder, 'after.json')),
    ] as const;
    // The folder must outlive both, whichever fails.
    await Promise.allSettled(playing);
    const [before, after] = await Promise.all(playing);
    const all = judged(differencesOf(before, after), KNOWN);
    for (const line of reportLines(all, comparedOf(before), KNOWN, showAll)) console.log(line);
    return all.every(({ known }) => known !== undefined);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const words = process.argv.slice(2);
const refs = words.filter((word) => !word.startsWith('--'));
const [ref] = refs;
const strange = words.find((word) => word.startsWith('--') && word !== '--all');
if (ref === undefined || refs.length > 1 || strange !== undefined) {
  console.error('Use: npm run compare -- REF [--all]');
  process.exit(2);
}
const commit = commitOf(ref);
if (commit === undefined) {
  console.error(`${ref} is no commit of this copy of the repository. Fetch it, or name another.`);
  process.exit(2);
}
console.log(`Before: ${commit.slice(0, 7)} (${ref}). After: the working tree.`);
process.exit((await compare(commit, words.includes('--all'))) ? 0 : 1);
