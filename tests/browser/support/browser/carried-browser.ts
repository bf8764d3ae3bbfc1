import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** What is set while the package unpacks, and put back afterwards. */
const TOUCHED = ['AWS_EXECUTION_ENV', 'LD_LIBRARY_PATH', 'FONTCONFIG_PATH', 'TMPDIR'] as const;

function versionOf(name: string): string {
  const main = createRequire(import.meta.url).resolve(name);
  for (let at = dirname(main); at !== dirname(at); at = dirname(at)) {
    const file = join(at, 'package.json');
    if (!existsSync(file)) continue;
    const { version } = JSON.parse(readFileSync(file, 'utf8')) as { version?: string };
    if (version !== undefined) return version;
  }
  throw new Error(`${name} has no package.json with a version. Install the packages anew.`);
}

/**
 * Has the package unpack its browser into a folder. It brings its own copies
 * of the few system libraries it wants, but unpacks them only where it
 * believes to run in a cloud function; so it is told so meanwhile.
 */
async function unpackInto(folder: string): Promise<void> {
  const before = new Map(TOUCHED.map((name) => [name, process.env[name]]));
  process.env['AWS_EXECUTION_ENV'] = 'AWS_Lambda_nodejs20.x';
  process.env['TMPDIR'] = folder;
  try {
    const { default: carried } = await import('@sparticuz/chromium');
    await carried.executablePath();
  } finally {
    for (const [name, value] of before) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

/** Its list of fonts names the folder where the package unpacks them in a cloud function. */
function tellFonts(file: string, folder: string): void {
  const text = readFileSync(file, 'utf8');
  writeFileSync(file, text.replace('<dir>/tmp/fonts</dir>', `<dir>${folder}</dir>`));
}

/**
 * Folder of the browser inside the registry package (x64 Linux), unpacked once
 * on a machine; undefined elsewhere. It is whole or not there at all: a second
 * process may look for it, or unpack it, at the same moment.
 */
export async function carriedBrowser(): Promise<
  { readonly path: string; readonly env: Readonly<Record<string, string>> } | undefined
> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  const kept = join(tmpdir(), `glowpour-chromium-${versionOf('@sparticuz/chromium')}`);
  if (!existsSync(kept)) {
    const work = mkdtempSync(join(tmpdir(), 'glowpour-unpack-'));
    try {
      await unpackInto(work);
      tellFonts(join(work, 'fonts', 'fonts.conf'), join(kept, 'fonts'));
      renameSync(work, kept);
    } catch (error) {
      rmSync(work, { recursive: true, force: true });
      if (!existsSync(kept)) throw error;
    }
  }
  return {
    path: join(kept, 'chromium'),
    env: {
      LD_LIBRARY_PATH: join(kept, 'al2023', 'lib'),
      FONTCONFIG_PATH: join(kept, 'fonts'),
    },
  };
}
