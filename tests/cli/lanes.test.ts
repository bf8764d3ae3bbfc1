import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { lanesFromFile, lanesReckoning } from '../../src/cli/reckon/solvers/lanes.ts';

const folder = mkdtempSync(join(tmpdir(), 'lanes-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(content: unknown) {
  const path = join(folder, 'surface.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return lanesFromFile(path);
}

const outer = [
  [0, 0],
  [2.4, 0],
  [2.4, 0.6],
  [0, 0.6],
];

describe('reckon lanes', () => {
  it('is registered by its name', () => {
    expect(lanesReckoning.name).toBe('lanes');
  });

  it('prints lanes, length, area, coverage and lifts', () => {
    const answer = run({ outer, holes: [], swathM: 0.12, backEdge: [0, 1], startAt: 'back' });
    expect(answer).toMatchObject({
      pathLengthM: 12.48,
      areaM2: 1.44,
      coverage: 1,
      lifts: 0,
      repairs: [],
      edgeLanes: [{ kind: 'front' }],
    });
    expect(answer).toHaveProperty('lanes.0.points.0', [0, 0.06]);
  });

  it('takes several back edges, and none', () => {
    const hole = [
      [0.9, 0.1],
      [1.5, 0.1],
      [1.5, 0.5],
      [0.9, 0.5],
    ];
    const two = [
      [0, 1],
      [3, 0],
    ];
    expect(run({ outer, holes: [hole], swathM: 0.1, backEdges: two })).toMatchObject({
      coverage: 1,
    });
    expect(run({ outer, swathM: 0.1 })).toMatchObject({ coverage: 1 });
  });

  it.each([
    ['not json', '{"outer":', 'file'],
    ['a list', [], 'file'],
    ['an unknown field', { outer, swathM: 0.1, swath: 1 }, 'file'],
    ['no swath', { outer }, 'swathM'],
    ['a swath too wide', { outer, swathM: 5 }, 'swathM'],
    ['a back edge that is none', { outer, swathM: 0.1, backEdge: [0, 7] }, 'backEdges[0]'],
    ['a back edge in words', { outer, swathM: 0.1, backEdge: 'wall' }, 'backEdge'],
    ['a side that is none', { outer, swathM: 0.1, startAt: 'left' }, 'startAt'],
    ['no outline', { swathM: 0.1 }, 'outer'],
    ['holes that are no list', { outer, swathM: 0.1, holes: 3 }, 'holes'],
    ['a hole that is no ring', { outer, swathM: 0.1, holes: [3] }, 'holes[0]'],
    [
      'a line',
      {
        outer: [
          [0, 0],
          [1, 0],
          [2, 0],
        ],
        swathM: 0.1,
      },
      'outer',
    ],
  ])('refuses %s', (_, content, input) => {
    const answer = run(content);
    expect(answer).toHaveProperty('error.input', input);
    expect(answer).toHaveProperty('error.allowed');
    expect(answer).toHaveProperty('error.message', expect.stringContaining('allowed:'));
  });

  it('refuses a file that is not there', () => {
    expect(lanesFromFile(join(folder, 'none.json'))).toHaveProperty('error.input', 'file');
  });
});
