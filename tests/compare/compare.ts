/**
 * Compares what two versions make of the demo kitchens: plans, printed plans,
 * simulated runs and their records. `npm run compare -- REF [--all] [--plans]`:
 * the working tree beside a commit. Fails on any difference that is not in
 * `known-differences.ts`. With `--plans` runs and records are left out: the
 * engine of the version before let through what this one guards, so that a
 * disturbed run goes another way from the first guard on.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { comparedOf, differencesOf, type Area } from './differences.ts';
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

/** What the engine alone decides. */
const OF_RUNS: readonly Area[] = ['run', 'record'];

type Options = { readonly showAll: boolean; readonly plansOnly: boolean };

async function compare(commit: string, { showAll, plansOnly }: Options): Promise<boolean> {
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
    const found = differencesOf(before, after).filter(
      ({ area }) => !plansOnly || !OF_RUNS.includes(area),
    );
    const all = judged(found, KNOWN);
    for (const line of reportLines(all, comparedOf(before), KNOWN, { showAll, plansOnly }))
      console.log(line);
    return all.every(({ known }) => known !== undefined);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const words = process.argv.slice(2);
const refs = words.filter((word) => !word.startsWith('--'));
const [ref] = refs;
const strange = words.find((word) => word.startsWith('--') && !['--all', '--plans'].includes(word));
if (ref === undefined || refs.length > 1 || strange !== undefined) {
  console.error('Use: npm run compare -- REF [--all] [--plans]');
  process.exit(2);
}
const commit = commitOf(ref);
if (commit === undefined) {
  console.error(`${ref} is no commit of this copy of the repository. Fetch it, or name another.`);
  process.exit(2);
}
console.log(`Before: ${commit.slice(0, 7)} (${ref}). After: the working tree.`);
const options = { showAll: words.includes('--all'), plansOnly: words.includes('--plans') };
process.exit((await compare(commit, options)) ? 0 : 1);
