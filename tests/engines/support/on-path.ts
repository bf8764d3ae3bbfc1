import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Where a program stands, of several names the first that is there. */
export function onPath(...names: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  for (const name of names)
    for (const folder of folders) if (existsSync(join(folder, name))) return join(folder, name);
  return undefined;
}

/** What a program says of its version. */
export function versionOf(program: string, ...args: readonly string[]): string {
  return execFileSync(program, ['--version', ...args], { encoding: 'utf8' }).trim();
}
