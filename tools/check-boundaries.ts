/**
 * Fails when a file imports across a boundary of the house (DEVELOPERS.md,
 * "Boundaries"). The linter bans globals and cycles; this names the layers.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';

export type Broken = { readonly file: string; readonly imports: string; readonly why: string };

/** Packages that are pure and may be used by the core. */
const PURE_PACKAGES = ['clipper2-ts', 'suncalc'];

const IMPORT = /(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g;

/** The room of a file: `src/core/run`, `src/host`, `shared`. */
function roomOf(path: string): string {
  const parts = path.split('/');
  if (parts[0] === 'src')
    return parts[1] === 'core' ? parts.slice(0, 3).join('/') : `src/${parts[1]}`;
  return parts[0] ?? '';
}

function whyForbidden(from: string, to: string): string | undefined {
  const here = roomOf(from);
  const there = roomOf(to);
  if (here.startsWith('src/core') && !there.startsWith('src/core') && there !== 'shared')
    return 'core imports only core and the shared tables';
  if (
    here === 'src/core/physics' &&
    there.startsWith('src/core/') &&
    !['src/core/physics', 'src/core/quantity'].includes(there)
  )
    return 'physics knows no kitchen, plan or run: pass numbers';
  if (here === 'src/core/run' && there === 'src/core/physics')
    return 'run knows no physics: numbers come in the plan';
  if (
    ['src/core/schedule', 'src/core/lanes'].includes(here) &&
    there.startsWith('src/core/') &&
    ![here, 'src/core/quantity'].includes(there)
  )
    return 'schedule and lanes are generic: no kitchens in them';
  if (here === 'src/host' && there === 'src/app') return 'host is below the app';
  if (here === 'src/app' && there === 'src/core/physics')
    return 'the app shows what the plan says; it computes no physics';
  if (here === 'src/app' && there === 'src/cli')
    return 'the app and the command line share only the core';
  if (here === 'src/cli' && ['src/app', 'src/host'].includes(there))
    return 'the command line has no browser';
  if (
    here !== there &&
    to.startsWith('src/core/') &&
    !to.endsWith('/index.ts') &&
    to.split('/').length > 3
  )
    return 'enter a folder by its index.ts';
  if (
    here !== there &&
    to.startsWith('src/host/') &&
    here === 'src/app' &&
    !/^src\/host(\/[^/]+)?\/index\.ts$/.test(to) &&
    to.split('/').length > 3
  )
    return 'enter a folder by its index.ts';
  return undefined;
}

function* sources(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.tsx?$/.test(entry.name)) yield path;
  }
}

/** Every import of every source file that crosses a boundary. */
export function brokenBoundaries(root: string, fileText?: ReadonlyMap<string, string>): Broken[] {
  const broken: Broken[] = [];
  const files =
    fileText ??
    new Map(
      [...sources(join(root, 'src'))].map((path) => [
        relative(root, path),
        readFileSync(path, 'utf8'),
      ]),
    );
  for (const [file, text] of files) {
    for (const [, target = ''] of text.matchAll(IMPORT)) {
      if (!target.startsWith('.')) {
        if (file.startsWith('src/core/') && !PURE_PACKAGES.includes(target))
          broken.push({
            file,
            imports: target,
            why: `core uses no package but ${PURE_PACKAGES.join(', ')}`,
          });
        continue;
      }
      const to = normalize(join(dirname(file), target));
      const why = whyForbidden(file, to);
      if (why) broken.push({ file, imports: to, why });
    }
  }
  return broken;
}

if (process.argv[1]?.endsWith('check-boundaries.ts')) {
  const broken = brokenBoundaries(process.cwd());
  for (const { file, imports, why } of broken) console.error(`${file} imports ${imports}: ${why}.`);
  console.log(
    broken.length === 0 ? 'Boundaries hold.' : `${broken.length} imports cross a boundary.`,
  );
  process.exit(broken.length === 0 ? 0 : 1);
}
