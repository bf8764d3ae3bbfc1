import * as fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatKitchen, parseKitchen, type Kitchen } from '../../../src/core/kitchen/index.ts';
import {
  addBurner,
  addCircuit,
  addFixture,
  addVessel,
  counterRun,
  newKitchen,
  problemsOf,
} from '../../../src/core/editing/index.ts';
import { someEdits } from './edits-arbitrary.ts';
import { inEnglish } from '../../support/english.ts';

const demos = readdirSync('demo-kitchens')
  .filter((file) => file.endsWith('.json'))
  .map((file): Kitchen => {
    const read = parseKitchen(readFileSync(`demo-kitchens/${file}`, 'utf8'));
    if ('problems' in read) throw new Error(JSON.stringify(read.problems));
    return read.kitchen;
  });
const starts: readonly Kitchen[] = [
  ...demos,
  newKitchen({ name: 'Ours', country: 'IL' }, inEnglish),
  newKitchen({ name: 'Ours', country: 'US' }, inEnglish),
];

/** What may rightly be missing while a kitchen is being told: a pot's burner. */
function expected(kitchen: Kitchen): readonly string[] {
  if (kitchen.fixtures.some(({ kind }) => kind === 'cooktop')) return [];
  return kitchen.vessels.flatMap(({ kind }, i) =>
    kind === 'pot' || kind === 'stove-kettle' ? [`vessels[${i}].burner`] : [],
  );
}

describe('any sequence of edits', () => {
  it('leaves a file that the reader takes, and the reader and problemsOf agree', () => {
    fc.assert(
      fc.property(fc.constantFrom(...starts), someEdits, (start, edits) => {
        let kitchen = start;
        for (const { run } of edits) kitchen = run(kitchen);
        expect(problemsOf(kitchen).map(({ path }) => path)).toEqual(expected(kitchen));
        const read = parseKitchen(formatKitchen(kitchen));
        if (expected(kitchen).length > 0) expect('problems' in read).toBe(true);
        else expect('kitchen' in read && read.kitchen).toEqual(kitchen);
      }),
      { numRuns: 300 },
    );
  }, 120_000);

  it('never writes into the kitchen it was given', () => {
    const freeze = <T>(value: T): T => {
      if (typeof value === 'object' && value !== null) {
        Object.values(value).forEach(freeze);
        Object.freeze(value);
      }
      return value;
    };
    fc.assert(
      fc.property(fc.constantFrom(...starts), someEdits, (start, edits) => {
        let kitchen = freeze(structuredClone(start));
        for (const { run } of edits) kitchen = freeze(run(kitchen));
      }),
      { numRuns: 40 },
    );
  }, 60_000);
});

describe('a full kitchen', () => {
  it('stops where the file stops', () => {
    const times = (n: number, run: (kitchen: Kitchen) => Kitchen, kitchen: Kitchen): Kitchen => {
      let now = kitchen;
      for (let i = 0; i < n; i += 1) now = run(now);
      return now;
    };
    const add = (offer: string) => (k: Kitchen) => addFixture(k, offer, inEnglish).kitchen;
    const roomy: Kitchen = {
      ...newKitchen({ name: 'Hall', country: 'IL' }, inEnglish),
      room: { ...newKitchen({ name: 'Hall', country: 'IL' }, inEnglish).room, floorAreaM2: 1000 },
    };
    const long = counterRun(roomy, [{ lengthM: 30, turn: 'straight' }], inEnglish).kitchen;
    let kitchen = times(25, add('sink-1'), long);
    const [counter] = kitchen.fixtures;
    expect(counter?.kind === 'counter' && counter.holes.length).toBe(20);
    kitchen = times(20, (k) => addBurner(k, 'cooktop', inEnglish).kitchen, add('coil-4')(kitchen));
    kitchen = times(70, (k) => addCircuit(k, inEnglish).kitchen, kitchen);
    kitchen = times(70, (k) => addVessel(k, 'urn', inEnglish).kitchen, kitchen);
    kitchen = times(300, add('drawer'), kitchen);
    expect(kitchen.fixtures).toHaveLength(300);
    expect(kitchen.circuits).toHaveLength(60);
    expect(kitchen.vessels).toHaveLength(60);
    expect(problemsOf(kitchen)).toEqual([]);
    expect(addFixture(kitchen, 'table', inEnglish)).toEqual({ kitchen, id: '' });
  }, 60_000);
});
