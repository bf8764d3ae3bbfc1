/**
 * Fails the build when the first load or the offline cache outgrows its
 * budget. First load: index.html, every style sheet and script it names or
 * imports statically, and the sentences that come with the page in whichever
 * language has the most of them, gzip. Cache: everything the service worker keeps.
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** kB = 1000 bytes, as browsers' network panels count. */
export const FIRST_LOAD_KB = 90;
/** Half of it are four languages, so that a tablet may change its own without a network; it travels as a third. */
export const OFFLINE_KB = 3000;

/** The chunk of a language that the page waits for, src/core/messages/<language>/first-sections.ts. */
const FIRST_SENTENCES = /^first-sections-.+\.js$/;

/** The largest of the chunks that the page waits for, one a language. */
function firstSentences(dist: string): string {
  const [largest] = readdirSync(join(dist, 'assets'))
    .filter((file) => FIRST_SENTENCES.test(file))
    .map((file) => `assets/${file}`)
    .toSorted((a, b) => gzipKb(join(dist, b)) - gzipKb(join(dist, a)));
  if (!largest)
    throw new Error(
      'dist/assets has no first-sections-*.js; allowed: one for each language. Name it so in src/core/messages/languages.',
    );
  return largest;
}

/** Files the page shows nothing without: reached without a dynamic import, and the first sentences. */
export function firstLoadFiles(dist: string): string[] {
  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  const queue = [
    ...[...html.matchAll(/(?:src|href)="(?:\.\/|\/)?(assets\/[^"]+\.(?:js|css))"/g)].map(
      (m) => m[1] ?? '',
    ),
    firstSentences(dist),
  ];
  return ['index.html', ...reached(dist, queue)];
}

/** Files, and what they reach without a dynamic import. */
function reached(dist: string, from: readonly string[]): Set<string> {
  const queue = [...from];
  const seen = new Set<string>();
  while (queue.length > 0) {
    const file = queue.pop() ?? '';
    if (seen.has(file)) continue;
    seen.add(file);
    if (!file.endsWith('.js')) continue;
    const text = readFileSync(join(dist, file), 'utf8');
    for (const [, target = ''] of text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g))
      queue.push(`assets/${target}`);
  }
  return seen;
}

/** What the planner's worker would load of the page: it has no page to show it on. */
function ofPageInWorker(dist: string): string[] {
  const workers = readdirSync(join(dist, 'assets')).filter((file) =>
    /^planner-worker-.+\.js$/.test(file),
  );
  if (workers.length !== 1)
    throw new Error(
      `dist/assets has ${workers.length} planner-worker-*.js; allowed: 1. See tools/vite-plugin-planner.ts.`,
    );
  return [
    ...reached(
      dist,
      workers.map((file) => `assets/${file}`),
    ),
  ].filter((file) => /^assets\/(first|index)-/.test(file));
}

function gzipKb(path: string): number {
  return gzipSync(readFileSync(path), { level: 9 }).length / 1000;
}

function allFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? allFiles(join(folder, entry.name)) : [join(folder, entry.name)],
  );
}

/** Sizes in kB and whether they keep the budgets. */
export function measure(dist: string): {
  firstKb: number;
  offlineKb: number;
  files: [string, number][];
  ok: boolean;
} {
  const files = firstLoadFiles(dist).map((file): [string, number] => [
    file,
    gzipKb(join(dist, file)),
  ]);
  const firstKb = files.reduce((sum, [, kb]) => sum + kb, 0);
  const offlineKb = allFiles(dist).reduce((sum, file) => sum + statSync(file).size / 1000, 0);
  return { firstKb, offlineKb, files, ok: firstKb <= FIRST_LOAD_KB && offlineKb <= OFFLINE_KB };
}

if (process.argv[1]?.endsWith('check-size.ts')) {
  const dist = join(process.cwd(), 'dist');
  if (!existsSync(dist)) throw new Error('dist/ is missing: run "npm run build" first.');
  const { firstKb, offlineKb, files, ok } = measure(dist);
  for (const [file, kb] of files) console.log(`${kb.toFixed(1).padStart(8)} kB gzip  ${file}`);
  const later = readdirSync(join(dist, 'assets')).filter((file) =>
    /^(planner|work-off)-/.test(file),
  );
  for (const file of later)
    console.log(
      `${gzipKb(join(dist, 'assets', file))
        .toFixed(1)
        .padStart(8)} kB gzip  assets/${file} (after the first load, for a new plan)`,
    );
  console.log(
    `First load ${firstKb.toFixed(1)} kB gzip of ${FIRST_LOAD_KB}; offline cache ${offlineKb.toFixed(0)} kB of ${OFFLINE_KB}.`,
  );
  const inWorker = ofPageInWorker(dist);
  if (inWorker.length > 0) {
    console.error(
      `The planner's worker loads ${inWorker.join(', ')} of the page: take what it shares out of tools/first-piece.ts.`,
    );
    process.exit(1);
  }
  if (!ok) {
    console.error('Over budget: split what a run does not need at once, or take it out.');
    process.exit(1);
  }
}
