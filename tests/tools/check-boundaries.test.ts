import { describe, expect, it } from 'vitest';
import { brokenBoundaries } from '../../tools/check-boundaries.ts';

const broken = (file: string, text: string) => brokenBoundaries('.', new Map([[file, text]]));

describe('the boundary check', () => {
  it.each([
    [
      'src/core/run/x.ts',
      `import { boilTime } from '../physics/index.ts';`,
      'run knows no physics',
    ],
    [
      'src/core/physics/x.ts',
      `import type { Kitchen } from '../kitchen/index.ts';`,
      'physics knows no kitchen',
    ],
    ['src/core/schedule/x.ts', `import type { Plan } from '../plan/index.ts';`, 'generic'],
    [
      'src/core/plan/x.ts',
      `import { readClocks } from '../../host/clocks/index.ts';`,
      'core imports only core',
    ],
    ['src/core/plan/x.ts', `import { get } from 'idb-keyval';`, 'core uses no package'],
    ['src/core/plan/x.ts', `import { inRange } from '../quantity/out-of-range.ts';`, 'index.ts'],
    [
      'src/app/run/x.tsx',
      `import { boilTime } from '../../core/physics/index.ts';`,
      'computes no physics',
    ],
    ['src/host/sound/x.ts', `import { App } from '../../app/app.tsx';`, 'below the app'],
    ['src/cli/plan.ts', `import { readClocks } from '../host/index.ts';`, 'no browser'],
  ])('refuses %s with %s', (file, text, why) => {
    const found = broken(file, text);
    expect(found).toHaveLength(1);
    expect(found[0]?.why).toContain(why);
  });

  it('lets the ways of the house pass', () => {
    expect(
      broken(
        'src/core/plan/x.ts',
        `import { boilTime } from '../physics/index.ts';\nimport rows from '../../../shared/cautions.json';`,
      ),
    ).toEqual([]);
    expect(broken('src/app/run/x.tsx', `import { view } from '../../core/run/index.ts';`)).toEqual(
      [],
    );
  });
});
