import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';

function git(...words: readonly string[]): string {
  return execFileSync('git', words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] }).trim();
}

/** Full name of a commit, or undefined when this copy of the repository does not hold it (a shallow one). */
export function commitOf(ref: string): string | undefined {
  try {
    return git('rev-parse', '--verify', '--quiet', `${ref}^{commit}`);
  } catch {
    return undefined;
  }
}

/**
 * Lays the files of a commit out in a folder, with the packages of this
 * checkout. Nothing of the repository itself is touched, and nothing has to be
 * tidied up in it.
 * @param folder that does not exist yet
 * @throws Error when git cannot give the commit, or the packages are not installed
 */
export function layOut(commit: string, folder: string): void {
  const packages = join(process.cwd(), 'node_modules');
  if (!existsSync(packages)) throw new Error(`${packages} is not there. Run npm ci first.`);
  mkdirSync(folder, { recursive: true });
  const archive = `${folder}.tar`;
  git('archive', '--format=tar', `--output=${archive}`, commit);
  execFileSync('tar', ['-xf', archive, '-C', folder]);
  rmSync(archive);
  symlinkSync(packages, join(folder, 'node_modules'), 'dir');
}
