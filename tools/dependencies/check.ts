/**
 * Fails on what is bundled and has a known vulnerability, was withdrawn by its makers, or was left
 * by them. What the registry does not tell is said to be not known; with --strict that fails, too.
 */
import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { promisify } from 'node:util';
import { bundledLicences } from '../check-licences.ts';
import { type Known, unmaintained, vulnerable } from './judge.ts';

const run = promisify(execFile);
const LIMIT_MS = 60_000;

/** What npm prints as JSON, also where it ends with a failure; undefined where it is none. */
async function npmSays(...words: readonly string[]): Promise<unknown> {
  const options = { timeout: LIMIT_MS, maxBuffer: 2 ** 26 };
  const printed = await run('npm', [...words, '--json'], options).catch((error: unknown) => error);
  const { stdout } = printed as { readonly stdout?: string };
  try {
    return JSON.parse(stdout ?? '');
  } catch {
    return undefined;
  }
}

async function knownOf(name: string): Promise<Known | undefined> {
  const manifest = readFileSync(`node_modules/${name}/package.json`, 'utf8');
  const { version } = JSON.parse(manifest) as { readonly version: string };
  const told = await npmSays('view', `${name}@${version}`, 'version', 'deprecated', 'time');
  if (typeof told === 'string') return { name, version };
  if (typeof told !== 'object' || told === null || !('version' in told)) return undefined;
  const { deprecated, time } = told as {
    readonly deprecated?: string;
    readonly time?: Readonly<Record<string, string>>;
  };
  const { created: _created, modified: _modified, ...releases } = time ?? {};
  const days = Object.values(releases).map((day) => Date.parse(day));
  return {
    name,
    version,
    deprecated,
    ...(days.length > 0 && { lastReleaseMs: Math.max(...days) }),
  };
}

const names = [...bundledLicences('.').keys()];
const [audit, packages] = await Promise.all([
  npmSays('audit', '--omit=dev'),
  Promise.all(names.map(knownOf)),
]);
const weak = vulnerable(audit);
const known = packages.filter((one) => one !== undefined);
const undated = known.filter(({ lastReleaseMs }) => lastReleaseMs === undefined);
const unknown = [
  ...(weak === undefined ? ['vulnerabilities: the registry gave no answer'] : []),
  ...names.filter((_, index) => !packages[index]).map((name) => `${name}: nothing was told`),
  ...undated.map(({ name }) => `${name}: the day of its last release was not told`),
];
const faults = [...(weak ?? []), ...unmaintained(known, Date.now())];
console.log(`${names.length} packages are bundled.`);
for (const one of unknown) console.log(`Not known: ${one}.`);
for (const one of faults) console.error(`${one}.`);
const isStrict = process.argv.includes('--strict');
process.exitCode = faults.length > 0 || (isStrict && unknown.length > 0) ? 1 : 0;
