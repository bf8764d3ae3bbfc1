/**
 * Tries whether the tests notice: applies each entry of tests/mutations to a
 * copy of the tree, runs the tests it names, and says which changes survived.
 * Exit 1 on a survivor, on an entry that no longer fits, or on a test that
 * fails without any change. Arguments: ids (or parts of them) to try only those.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MUTATIONS, type Mutation } from '../tests/mutations/index.ts';

type Verdict = 'killed' | 'SURVIVED' | 'could-not-apply' | 'does-not-run';

const ROOT = join(import.meta.dirname, '..');
/** What the named tests need; the working tree itself is never touched. */
const NEEDED = [
  'src',
  'shared',
  'demo-kitchens',
  'tests/core',
  'tests/support',
  'package.json',
  'vitest.config.ts',
];
const CONFIGS = ['tsconfig.json', 'tsconfig.base.json', 'tests/tsconfig.json'];
/** A change may make a loop endless; then its tests do not end either, and that is noticed, ms. */
const LIMIT_MS = 120_000;

type Outcome = 'passed' | 'failed' | 'does-not-run';

function copyTree(): string {
  const folder = mkdtempSync(join(tmpdir(), 'mutate-'));
  for (const path of [...NEEDED, ...CONFIGS])
    cpSync(join(ROOT, path), join(folder, path), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** Failed means that a test failed, not that a file could not be read. */
function runTests(folder: string, tests: readonly string[]): Outcome {
  const report = join(folder, 'report.json');
  rmSync(report, { force: true });
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const done = spawnSync(
    process.execPath,
    [vitest, 'run', '--bail=1', '--reporter=json', `--outputFile=${report}`, ...tests],
    { cwd: folder, timeout: LIMIT_MS, stdio: 'ignore' },
  );
  if (done.status === 0) return 'passed';
  // Killed at the limit: an endless loop is a failure that everybody notices.
  if (done.signal !== null) return 'failed';
  try {
    const { numFailedTests } = JSON.parse(readFileSync(report, 'utf8')) as {
      numFailedTests: number;
    };
    return numFailedTests > 0 ? 'failed' : 'does-not-run';
  } catch {
    return 'does-not-run';
  }
}

function verdictOf(folder: string, { file, find, replace, tests }: Mutation): Verdict {
  const path = join(folder, file);
  const text = readFileSync(path, 'utf8');
  if (text.split(find).length !== 2) return 'could-not-apply';
  writeFileSync(
    path,
    text.replace(find, () => replace),
  );
  try {
    const outcome = runTests(folder, tests);
    if (outcome === 'does-not-run') return outcome;
    return outcome === 'failed' ? 'killed' : 'SURVIVED';
  } finally {
    writeFileSync(path, text);
  }
}

const wanted = process.argv.slice(2);
const chosen = MUTATIONS.filter(
  ({ id }) => wanted.length === 0 || wanted.some((part) => id.includes(part)),
);
const folder = copyTree();
const counts: Record<Verdict, number> = {
  killed: 0,
  SURVIVED: 0,
  'could-not-apply': 0,
  'does-not-run': 0,
};
try {
  const tests = [...new Set(chosen.flatMap((one) => one.tests))];
  const before = chosen.length === 0 ? 'failed' : runTests(folder, tests);
  if (before !== 'passed') {
    console.error(
      chosen.length === 0 ? 'No entry has that id.' : 'The tests fail without any change.',
    );
    process.exitCode = 1;
  } else {
    for (const mutation of chosen) {
      const verdict = verdictOf(folder, mutation);
      counts[verdict] += 1;
      const { breaks, id, why } = mutation;
      console.log(`${verdict.padEnd(15)} ${breaks.join(' ').padEnd(12)} ${id}`);
      if (verdict !== 'killed') console.log(`                ${mutation.file}: ${why}`);
    }
    console.log(
      `${counts.killed} of ${chosen.length} killed, ${counts.SURVIVED} survived, ` +
        `${counts['could-not-apply']} no longer fit, ${counts['does-not-run']} do not run.`,
    );
    if (counts.killed < chosen.length) process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
