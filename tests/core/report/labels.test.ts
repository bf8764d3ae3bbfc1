import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseKitchen } from '../../../src/core/kitchen/index.ts';
import { labelsOf } from '../../../src/core/report/index.ts';
import { smallPlan } from '../run/fixtures.ts';

describe('labels', () => {
  it('name every place with what it belongs to, in the order of the file', () => {
    expect(labelsOf(smallPlan.kitchen)).toEqual([
      { id: 'sink', name: 'Sink', designation: 'meat' },
      { id: 'hob', name: 'Hob', designation: 'meat' },
      { id: 'table', name: 'Table', designation: 'meat' },
    ]);
  });

  it('leave no place of the demo kitchens out', () => {
    const files = readdirSync('demo-kitchens').filter((name) => name.endsWith('.kitchen.json'));
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) {
      const parsed = parseKitchen(readFileSync(`demo-kitchens/${file}`, 'utf8'));
      if (!('kitchen' in parsed)) throw new Error(`${file} is not readable`);
      expect(labelsOf(parsed.kitchen)).toHaveLength(parsed.kitchen.fixtures.length);
    }
  });
});
