import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ORIGINS, withoutLayout, withoutRemarks } from '../../tools/vite-plugin-data.ts';

const SRC = join(import.meta.dirname, '../../src');

describe('tables in the bundle', () => {
  it('have no remarks, at any depth, and nothing else is lost', () => {
    const table = {
      $comment: 'units: m',
      rows: [
        { id: 'a', $comment: 'why', note: true, place: 'wall', shockSource: 'x', source: 'y' },
      ],
      sources: { b: { note: 'read on paper', checked: false } },
    };
    expect(JSON.parse(withoutRemarks(JSON.stringify(table), false))).toEqual({
      rows: [{ id: 'a', note: true, place: 'wall', source: 'y' }],
      sources: { b: { checked: false } },
    });
  });

  it('of sources have neither title nor place', () => {
    const sources = { a: { title: 'A book', place: '1:2', kind: 'text', checked: true } };
    expect(JSON.parse(withoutRemarks(JSON.stringify(sources), true))).toEqual({
      a: { kind: 'text', checked: true },
    });
  });

  it('lack no origin that code asks for', () => {
    const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((file) =>
      /\.tsx?$/.test(file),
    );
    expect(files.length).toBeGreaterThan(500);
    const all = files.map((file) => readFileSync(join(SRC, file), 'utf8')).join('\n');
    expect(ORIGINS.filter((origin) => all.includes(origin))).toEqual([]);
  });
});

describe('demo kitchens in the bundle', () => {
  it('say the same in one line', () => {
    const text = readFileSync(join(SRC, '../demo-kitchens/hall.kitchen.json'), 'utf8');
    const bundled = withoutLayout(text);
    expect(JSON.parse(bundled)).toEqual(JSON.parse(text));
    expect(bundled.length).toBeLessThan(0.75 * text.length);
  });
});
