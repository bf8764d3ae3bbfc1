import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commitOf, layOut } from '../../compare/past-version.ts';
import { pause, type Screen } from './screen.ts';

/** The last commit whose plans and journals are of version 1; another one when GLOWPOUR_OLD names it. */
const OLD = process.env['GLOWPOUR_OLD'] ?? 'f58df2ff93a5e6498bda69a0ea992354678a1ff8';

/** An app built from the past, or why there is none here. */
export type OldBuild = { readonly commit: string } | { readonly missing: string };

/** Looks whether this copy of the repository holds the old version: a shallow one does not. */
export function findOldBuild(): OldBuild {
  const commit = commitOf(OLD);
  if (commit !== undefined) return { commit };
  return {
    missing: `commit ${OLD.slice(0, 7)} is not in this copy of the repository; fetch the whole history, or name another by GLOWPOUR_OLD`,
  };
}

/**
 * Folder of the app as it was built from a commit. Built once on a machine: it
 * stays in the folder for temporary files under the name of the commit.
 */
export function builtFrom(commit: string): string {
  const kept = join(tmpdir(), `glowpour-built-${commit}`);
  if (existsSync(kept)) return kept;
  const work = mkdtempSync(join(tmpdir(), 'glowpour-old-'));
  try {
    const sources = join(work, 'sources');
    layOut(commit, sources);
    const vite = join(process.cwd(), 'node_modules/vite/bin/vite.js');
    execFileSync(process.execPath, [vite, 'build', '--outDir', join(work, 'dist')], {
      cwd: sources,
      env: { ...process.env, NODE_ENV: 'production' },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    // Whole or not at all: another process may look for it, or have built it, meanwhile.
    if (!existsSync(kept)) renameSync(join(work, 'dist'), kept);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
  return kept;
}

/**
 * Steering of the old app. It never changes any more, so its words and classes
 * are written out here, apart from those with which the present one is steered.
 */
async function tapOld(screen: Screen, wanted: RegExp): Promise<void> {
  const place = await screen.waitFor<{ x: number; y: number }>(
    `(() => {
      const wanted = new RegExp(${JSON.stringify(wanted.source)}, 'i');
      const one = [...document.querySelectorAll('button, a, label')].find(
        (e) => wanted.test(e.innerText.trim()) && e.getClientRects().length > 0 && !e.matches(':disabled'));
      if (!one) return null;
      one.scrollIntoView({ block: 'center' });
      const box = one.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    })()`,
    `a button ${wanted.source} of the old app`,
  );
  // Past the guard against bounces.
  await screen.shift({ wallMs: 400, monoMs: 400 });
  await screen.page.mouse.click(place.x, place.y);
}

/** From the welcome screen of the old app to a begun run of the flat with coils. */
export async function beginOldRun(screen: Screen): Promise<void> {
  await tapOld(screen, /^Flat with coils/);
  await tapOld(screen, /^Start the run/);
  await screen.waitFor("document.querySelector('.start-screen')", 'the start screen');
  await tapOld(screen, /^Play the alarm/);
  await screen.waitFor(
    "document.querySelectorAll('.hearing button, .hearing input').length > 1",
    'the answer of the hearing check',
  );
  if (await screen.see<boolean>("document.body.innerText.includes('I heard it')"))
    await tapOld(screen, /^I heard it/);
  else await screen.see("document.querySelector('.hearing input').click()");
  await tapOld(screen, /^Start$/);
  await screen.waitFor(`${OLD_STATUS} === 'running'`, 'the run of the old app begins');
}

const OLD_STATUS = "document.querySelector('.run-place')?.dataset.status";
const OLD_LOOK = `JSON.stringify([...document.querySelectorAll('.run-place')].map((e) => [e.dataset.status, e.innerText]))`;

/** What a person would do next in the old app: answer, confirm, or wait. */
const OLD_ACT = `(() => {
  hands.shift({ wallMs: 400, monoMs: 400 });
  const find = (selector) => [...document.querySelectorAll(selector)].find((e) => e.getClientRects().length > 0);
  const target = find('.arm-screen') ?? find('.clock-question .button--ember') ?? find('.main-action:not(:disabled)');
  if (target) return void target.click();
  const wakeInS = Number(find('.run-place')?.dataset.wakeInS || 60);
  hands.jump(Math.ceil(wakeInS * 1000) + 1000);
})()`;

/** Works in the old app until the sentence of its stage is such a one. */
export async function workInOldRun(screen: Screen, sentence: RegExp, most = 300): Promise<string> {
  for (let n = 0; n < most; n += 1) {
    const now = await screen.see<string>(
      "document.querySelector('.stage-sentence')?.innerText.trim() ?? ''",
    );
    if (sentence.test(now)) return now;
    const before = await screen.see<string>(OLD_LOOK);
    await screen.see(OLD_ACT);
    for (let looks = 0; looks < 40 && (await screen.see<string>(OLD_LOOK)) === before; looks += 1)
      await pause(20);
  }
  throw new Error(`The old app does not come to ${sentence.source} in ${most} acts.`);
}

/** What the old app has on the disk: the numbers and kinds of its records, and the fixtures it works on. */
export type OldRun = {
  readonly records: readonly { readonly seq: number; readonly kind: string }[];
  readonly fixtureNames: readonly string[];
};

export function storedOldRun(screen: Screen): Promise<OldRun> {
  return screen.see(
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = () => {
        const db = open.result;
        const all = db.transaction(['records'], 'readonly').objectStore('records').getAll();
        all.onsuccess = () => {
          db.close();
          resolve({
            records: all.result.map((r) => ({ seq: r.seq, kind: r.fact.body.kind })),
            fixtureNames: all.result[0].fact.body.plan.kitchen.fixtures.map(({ name }) => name),
          });
        };
        all.onerror = () => reject(all.error);
      };
    })`,
  );
}
