import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isUpright, type Polygon } from '../../../src/core/geometry/index.ts';
import {
  fixtureOf,
  outlineOf,
  parseKitchen,
  type Kitchen,
} from '../../../src/core/kitchen/index.ts';
import {
  consumersOf,
  onCircuit,
  pullCorner,
  resizeAtWall,
} from '../../../src/core/editing/index.ts';

function flat(): Kitchen {
  const outcome = parseKitchen(readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8'));
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

function outlineIn(kitchen: Kitchen, id: string): Polygon | undefined {
  const fixture = fixtureOf(kitchen, id);
  return fixture && outlineOf(fixture);
}

describe('sizes', () => {
  it('pulled by a corner leave the corner across where it is', () => {
    const pulled = pullCorner(flat(), 'table', 2, [2.6, 1.25]);
    expect(outlineIn(pulled, 'table')).toEqual([
      [1.2, 0.3],
      [2.6, 0.3],
      [2.6, 1.25],
      [1.2, 1.25],
    ]);
    const back = pullCorner(flat(), 'table', 0, [1, 0.2]);
    expect(outlineIn(back, 'table')?.[2]).toEqual([2.4, 1.05]);
  });
  it('never turn inside out', () => {
    const outline = outlineIn(pullCorner(flat(), 'table', 2, [0, 0]), 'table');
    expect(outline && isUpright(outline)).toBe(true);
  });
  it('typed at a wall grow into the room', () => {
    const outline = outlineIn(resizeAtWall(flat(), 'counter-left', 0.72, 0.7), 'counter-left');
    expect(Math.max(...(outline ?? []).map((p) => p[1]))).toBeCloseTo(2.4, 6);
    expect(Math.min(...(outline ?? []).map((p) => p[1]))).toBeCloseTo(1.7, 6);
  });
});

describe('circuits', () => {
  it('take a thing with all its burners on one breaker, or let it go', () => {
    const told = onCircuit(flat(), { kind: 'fixture', id: 'range-top' }, 'sockets-left');
    const range = told.fixtures.find((f) => f.id === 'range-top');
    expect(range?.kind === 'cooktop' && range.burners.map((b) => b.circuit)).toEqual(
      Array.from({ length: 4 }, () => 'sockets-left'),
    );
    const off = onCircuit(flat(), { kind: 'vessel', id: 'kettle' }, undefined);
    expect(consumersOf(off).find(({ id }) => id === 'kettle')).not.toHaveProperty('circuit');
    expect(off.vessels[0] && 'circuit' in off.vessels[0]).toBe(false);
  });
});
