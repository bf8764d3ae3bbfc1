import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import extractOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import { afterEach, describe, expect, it } from 'vitest';

const CONFIG = join(import.meta.dirname, '../../.dependency-cruiser.cjs');

const roots: string[] = [];
afterEach(() => {
  for (const root of roots.splice(0)) rmSync(root, { recursive: true });
});

/** Files by path, each with its text. */
type Tree = Readonly<Record<string, string>>;

/** Names of the rules that a tree of files breaks, each once. */
async function brokenBy(tree: Tree): Promise<string[]> {
  const root = mkdtempSync(join(tmpdir(), 'boundaries-'));
  roots.push(root);
  for (const [path, text] of Object.entries(tree)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  const { output } = await cruise(['src'], { ...(await extractOptions(CONFIG)), baseDir: root });
  if (typeof output === 'string') throw new Error('The reporter gave text instead of an object.');
  return [...new Set(output.summary.violations.map((violation) => violation.rule.name))].toSorted();
}

/** One file imports another, which exists and imports nothing. */
const importing = (file: string, target: string, text: string): Tree => ({
  [target]: 'export type A = 1;\nexport const a = 1;\n',
  [file]: text,
});

describe('boundaries', () => {
  it.each([
    ['core/run', 'core/physics', ['knows-not:core/run']],
    ['core/physics', 'core/geometry', ['knows-only:core/physics']],
    ['core/physics', 'core/kitchen', ['knows-only:core/physics']],
    ['core/schedule', 'core/kitchen', ['knows-only:core/schedule']],
    ['core/pouring', 'core/kitchen', ['knows-only:core/pouring']],
    ['core/plan', 'core/run', ['layers:core/plan']],
    ['core/run', 'core/journal', ['layers:core/run']],
    ['core/report', 'core/calibration', ['layers:core/report']],
    ['core/plan', 'host/clocks', ['layers:core/plan']],
    ['host/sound', 'app/parts', ['knows-only:host', 'layers:host']],
    ['app/parts', 'core/physics', ['knows-not:app/*']],
    ['app/parts', 'app/pages/run', ['layers:app/parts']],
    ['app/pages/plan', 'app/pages/run', ['layers:app/pages/plan']],
    ['cli', 'host/clocks', ['knows-only:cli']],
    ['cli', 'app/parts', ['knows-only:cli']],
    ['app/parts', 'cli', ['layers:app/parts']],
  ])('refuses that %s imports %s, even a type alone', async (from, to, rules) => {
    const depth = '../'.repeat(from.split('/').length);
    const tree = importing(
      `src/${from}/x.ts`,
      `src/${to}/index.ts`,
      `import type { A } from '${depth}${to}/index.ts';\nexport type B = A;\n`,
    );
    expect(await brokenBy(tree)).toEqual(rules);
  });

  it.each([
    ['a type by name', `import { type A } from '../../core/physics/index.ts';\nexport type B = A;`],
    ['a type in place', `export type B = import('../../core/physics/index.ts').A;`],
    ['a type passed on', `export type { A } from '../../core/physics/index.ts';`],
    ['a value', `import { a } from '../../core/physics/index.ts';\nexport const b = <p>{a}</p>;`],
    ['a part loaded later', `export const later = () => import('../../core/physics/index.ts');`],
  ])('sees %s in a component', async (_, text) => {
    const tree = importing('src/app/parts/x.tsx', 'src/core/physics/index.ts', text);
    expect(await brokenBy(tree)).toEqual(['knows-not:app/*']);
  });

  it('refuses to enter a room past its index.ts', async () => {
    const text = `import { a } from '../units/range.ts';\nexport const b = a;`;
    expect(
      await brokenBy(importing('src/core/plan/x.ts', 'src/core/units/range.ts', text)),
    ).toEqual(['entry:core/units']);
  });

  it('refuses packages in the core, and node itself', async () => {
    expect(
      await brokenBy({ 'src/core/plan/x.ts': `import fs from 'node:fs';\nexport const b = fs;` }),
    ).toEqual(['core:packages']);
    expect(
      await brokenBy({ 'src/core/plan/x.ts': `import { get } from 'idb-keyval';\nget;` }),
    ).toContain('core:packages');
  });

  it('refuses a folder that has no place in the layers', async () => {
    const text = `import { a } from '../units/index.ts';\nexport const b = a;`;
    expect(
      await brokenBy(importing('src/core/misc/x.ts', 'src/core/units/index.ts', text)),
    ).toEqual(['rooms:unknown']);
  });

  it('refuses folders beside each other that import each other, by types alone and by other files', async () => {
    expect(
      await brokenBy({
        'src/core/run/decide/a.ts': `import type { B } from '../apply/b.ts';\nexport type A = B;`,
        'src/core/run/apply/b.ts': 'export type B = 1;',
        'src/core/run/apply/c.ts': `import type { D } from '../decide/d.ts';\nexport type C = D;`,
        'src/core/run/decide/d.ts': 'export type D = 1;',
      }),
    ).toEqual(['cycles:folders']);
  });

  it('refuses three folders in a circle', async () => {
    const next = (name: string) =>
      `import type { T } from '../${name}/b.ts';\nexport type X = T;\n`;
    expect(
      await brokenBy({
        'src/app/pages/run/step/a.ts': next('timers'),
        'src/app/pages/run/step/b.ts': 'export type T = 1;',
        'src/app/pages/run/timers/a.ts': next('voice'),
        'src/app/pages/run/timers/b.ts': 'export type T = 1;',
        'src/app/pages/run/voice/a.ts': next('step'),
        'src/app/pages/run/voice/b.ts': 'export type T = 1;',
      }),
    ).toEqual(['cycles:folders']);
  });

  it('refuses that a folder imports the files around it', async () => {
    const up = `import type { A } from '../state.ts';\nexport type B = A;`;
    expect(
      await brokenBy(importing('src/core/run/decide/x.ts', 'src/core/run/state.ts', up)),
    ).toEqual(['cycles:outer-folder']);
    const farUp = `import type { A } from '../../state.ts';\nexport type B = A;`;
    expect(
      await brokenBy(importing('src/app/pages/run/step/x.ts', 'src/app/pages/state.ts', farUp)),
    ).toContain('cycles:outermost-folder');
  });

  it('refuses two files that know each other by type', async () => {
    expect(
      await brokenBy({
        'src/core/run/a.ts': `import type { B } from './b.ts';\nexport type A = B;`,
        'src/core/run/b.ts': `import type { A } from './a.ts';\nexport type B = 1 | A;`,
      }),
    ).toEqual(['cycles:files']);
  });

  it('lets the ways of the house pass', async () => {
    expect(
      await brokenBy({
        'src/core/units/index.ts': `export * from './range.ts';`,
        'src/core/units/range.ts': 'export const a = 1;',
        'src/core/physics/common/constants.ts': 'export const c = 1;',
        'src/core/physics/index.ts': `export * from './water/boiling.ts';`,
        'src/core/physics/water/boiling.ts': `import { a } from '../../units/index.ts';\nimport { c } from '../common/constants.ts';\nexport const b = a + c;`,
        'src/core/plan/index.ts': `export * from './steps/pour.ts';`,
        'src/core/plan/steps/pour.ts': `import { b } from '../../physics/index.ts';\nimport rows from '../../../../shared/rows.json';\nexport const p = [b, rows];`,
        'src/core/run/index.ts': `export { p } from '../plan/index.ts';`,
        'src/app/pages/run/page.tsx': `import { p } from '../../../core/run/index.ts';\nexport const Page = () => <p>{p}</p>;`,
        'src/app/main.tsx': `export const page = () => import('./pages/run/page.tsx');`,
        'shared/rows.json': '[]',
      }),
    ).toEqual([]);
  });
});
