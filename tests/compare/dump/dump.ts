/**
 * Plays all scenes in one version and writes down what came of them:
 * `tsx tests/compare/dump/dump.ts before|after FOLDER FILE`, in the folder of that version.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Build } from './build.ts';
import { factDumps } from './run-dump.ts';
import { planDump, sentences, type Json } from './plan-dump.ts';
import { scenesOf } from './scenes.ts';

/** What came of one version, by the name of the scene. */
export type Dump = {
  readonly plans: Readonly<Record<string, Json>>;
  readonly facts: Readonly<Record<string, readonly Json[]>>;
  readonly planTexts: Readonly<Record<string, readonly string[]>>;
  readonly sentences: Readonly<Record<string, readonly string[]>>;
  readonly records: Readonly<Record<string, readonly string[]>>;
};

function dumpOf(build: Build, root: string): Dump {
  const folder = join(root, 'demo-kitchens');
  const plans: Record<string, Json> = {};
  const facts: Record<string, readonly Json[]> = {};
  const planTexts: Record<string, readonly string[]> = {};
  const told: Record<string, readonly string[]> = {};
  const records: Record<string, readonly string[]> = {};
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.kitchen.json'))) {
    const kitchenText = readFileSync(join(folder, file), 'utf8');
    for (const scene of scenesOf(file, kitchenText)) {
      const { plan, text, run } = build.plan(kitchenText, scene);
      plans[scene.name] = planDump(plan);
      planTexts[scene.name] = text.split('\n');
      told[scene.name] = sentences(plan);
      for (const disturbed of [false, true]) {
        const played = run(disturbed);
        const name = `${scene.name}, ${disturbed ? 'disturbed' : 'undisturbed'}`;
        facts[name] = factDumps(played);
        records[name] = played.record.split('\n');
      }
    }
  }
  return { plans, facts, planTexts, sentences: told, records };
}

/** Only the version that is asked for is loaded: the other may not load at all. */
async function buildOf(version: string, root: string): Promise<Build> {
  if (version === 'before') return (await import('./dump-before.ts')).buildBefore(root);
  return (await import('./dump-after.ts')).buildAfter;
}

const [version, root, file] = process.argv.slice(2);
if (process.argv[1]?.endsWith('dump.ts')) {
  if ((version !== 'before' && version !== 'after') || root === undefined || file === undefined)
    throw new Error('Use: tsx tests/compare/dump/dump.ts before|after FOLDER FILE');
  writeFileSync(file, JSON.stringify(dumpOf(await buildOf(version, root), root)));
}
