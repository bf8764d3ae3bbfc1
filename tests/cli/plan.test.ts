import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { planAnswer } from '../../src/cli/plan/plan-answer.ts';
import { answer } from '../../src/cli/reckon/answer.ts';
import { inEnglish } from '../support/english.ts';
import { BROKEN_SHAPES, BROKEN_SENSE } from '../core/kitchen/broken-files.ts';

const ROOT = join(import.meta.dirname, '../..');
const DEMO = join(ROOT, 'demo-kitchens/flat-coils.kitchen.json');
const folder = mkdtempSync(join(tmpdir(), 'plan-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe('plan FILE', () => {
  it('prints the plan with the line that stands over all customs', () => {
    const { out, err, code } = planAnswer([DEMO]);
    expect(code).toBe(0);
    expect(err.join('\n')).not.toContain('does not hold');
    expect(out).toMatch(/^Plan for Flat with coils\n/);
    expect(out).toContain(
      'Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.',
    );
    expect(out).toContain('T+1 day ');
  });

  it('says first what a start is without where the kitchen tells no place, and in which zone hours are', () => {
    const { place, ...placeless } = JSON.parse(readFileSync(DEMO, 'utf8')) as { place?: object };
    expect(place).toBeDefined();
    const path = file('placeless.kitchen.json', JSON.stringify(placeless));
    const start = '--start=2027-02-01T07:00Z';
    const { out, code } = planAnswer([path, start]);
    expect(code).toBe(0);
    expect(out).toMatch(/^The kitchen file tells no place: .* UTC\./u);
    expect(planAnswer([path, start, '--advice']).out).toMatch(/^The kitchen file tells no place/u);
    expect(planAnswer([path]).out).not.toContain('UTC');
    expect(planAnswer([DEMO, start]).out).not.toContain('UTC');
    expect(planAnswer([path, start, '--json']).out).not.toContain('no place');
  });

  it('--json prints the plan as data, before or after the file', () => {
    const { out, code } = planAnswer(['--json', DEMO]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ format: 'glowpour-plan', version: 2 });
    expect(planAnswer([DEMO, '--json']).out).toBe(out);
  });

  it('--covers prints what to buy and every cut in its order', () => {
    const { out, code } = planAnswer([DEMO, '--covers']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Covers of Flat with coils\n/);
    expect(out).toContain('Cut 1: across');
    expect(planAnswer([DEMO, '--covers', '--utensils']).err.join()).toContain(
      'Found --covers, --utensils; allowed: one of them.',
    );
  });

  it('--advice prints what would help and how sure the end is, in words or as data', () => {
    const glass = join(ROOT, 'demo-kitchens/flat-glass-230.kitchen.json');
    const words = [glass, '--start=2027-04-18T09:00', '--advice'];
    const now = Date.parse('2027-04-16T09:00Z');
    const { out, code } = planAnswer(words, now);
    expect(code).toBe(0);
    expect(out).toMatch(/^What would help: Flat with a glass hob\n/);
    expect(out).toMatch(/nine times in ten by \w+ \d+ April \d\d:\d\d\./);
    expect(out).toMatch(/\n1\. .*Ends \d+ h.* sooner/);
    expect(out).toMatch(/Tried, and saves nothing: .*one more person/);
    const data = JSON.parse(planAnswer([...words, '--json'], now).out) as {
      readonly format: string;
      readonly advice: readonly { readonly change: { readonly kind: string } }[];
    };
    expect(data.format).toBe('glowpour-advice');
    expect(data.advice.map(({ change }) => change.kind)).toContain('start');
    expect(planAnswer([glass, '--advice', '--covers']).err.join()).toContain(
      'Found --covers, --advice; allowed: one of them.',
    );
  }, 120_000);

  it('--utensils prints what is done with each, and what goes into the pot', () => {
    const kitchen = JSON.parse(readFileSync(DEMO, 'utf8')) as object;
    const utensils = [
      { id: 'forks', kind: 'cutlery', count: 12, material: 'stainless-steel', condition: 'smooth' },
      { id: 'strainer', kind: 'sieve', material: 'steel' },
    ];
    const path = file('utensils.kitchen.json', JSON.stringify({ ...kitchen, utensils }));
    const { out, code } = planAnswer([path, '--utensils']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Utensils of Flat with coils\n/);
    expect(out).toContain('12 × Cutlery: Immerse in boiling water (hagalah).');
    expect(out).toContain('Put away or replace\n');
    expect(planAnswer([DEMO, '--utensils']).out).toContain('No utensils are told');
    expect(planAnswer([DEMO, '--utensils', '--json']).code).toBe(2);
  });

  it('runs from a terminal and leaves with its code', () => {
    const run = (...words: readonly string[]) =>
      spawnSync(join(ROOT, 'node_modules/.bin/tsx'), [join(ROOT, 'src/cli/plan.ts'), ...words], {
        encoding: 'utf8',
      });
    const good = execFileSync(
      join(ROOT, 'node_modules/.bin/tsx'),
      [join(ROOT, 'src/cli/plan.ts'), DEMO],
      { encoding: 'utf8' },
    );
    expect(good).toBe(planAnswer([DEMO]).out);
    const bad = run(join(folder, 'nothing.kitchen.json'));
    expect(bad.status).toBe(2);
    expect(bad.stdout).toBe('');
    expect(bad.stderr).toContain('no such file');
  });

  it.each([
    ['no file', []],
    ['two files', [DEMO, DEMO]],
    ['a strange option', [DEMO, '--xml']],
  ])('is told how it is used: %s', (_, words) => {
    const { err, code, out } = planAnswer(words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toHaveLength(2);
    expect(err.at(-1)).toBe(inEnglish.t('terminal.use'));
  });

  it.each([
    ['a folder', folder, 'a folder'],
    ['an empty file', file('empty.kitchen.json', ''), 'an empty file'],
    ['no JSON', file('words.kitchen.json', '{ "format": '), 'line 1'],
    ['a list', file('list.kitchen.json', '[]'), 'a list of 0'],
    ['a picture', file('picture.kitchen.json', '\u0000\u0001PNG'), 'line 1'],
  ])('refuses %s', (_, path, said) => {
    const { err, code } = planAnswer([path]);
    expect(code).toBe(2);
    expect(err.join('\n')).toContain(said);
    expect(err.join('\n')).toContain('allowed: ');
  });

  const broken = [...BROKEN_SHAPES, ...BROKEN_SENSE];

  it('is tried on at least twenty kinds of broken file', () => {
    expect(broken.length).toBeGreaterThanOrEqual(20);
  });

  it.each(broken)('refuses $what with its path and what to do', ({ spoil, path, advice }) => {
    const { err, code, out } = planAnswer([file('broken.kitchen.json', JSON.stringify(spoil()))]);
    const said = err.join('\n');
    expect([code, out]).toEqual([2, '']);
    expect(said).toContain(path);
    expect(said).toContain(advice);
  });
});

describe('reckon pour-need and room', () => {
  it('pour-need gives litres and kettles with their band', () => {
    const { print, code } = answer(['pour-need', `kitchen=${DEMO}`, 'fixture=sink']);
    expect(code).toBe(0);
    expect(print).toMatchObject({
      model: 'pour-need',
      result: { litres: expect.any(Number), kettles: expect.any(Number) },
      low: { litres: expect.any(Number), kettles: expect.any(Number) },
      high: { litres: expect.any(Number), kettles: expect.any(Number) },
    });
  });

  it('pour-need names the surfaces there are', () => {
    const { print, code } = answer(['pour-need', `kitchen=${DEMO}`, 'fixture=sinc']);
    expect(code).toBe(2);
    expect(print).toMatchObject({
      error: {
        input: 'fixture',
        found: 'sinc',
        message: expect.stringContaining('Did you mean sink'),
      },
    });
  });

  it('pour-need says what is wrong with a kitchen', () => {
    const { print, code } = answer([
      'pour-need',
      `kitchen=${file('bad.json', '{}')}`,
      'fixture=sink',
    ]);
    expect(code).toBe(2);
    expect(print).toMatchObject({ error: { input: 'kitchen' } });
  });

  it('room gives the peak and its curve, hotter with more burners', () => {
    const peak = (burners: number): number => {
      const { print, code } = answer([
        'room',
        `kitchen=${DEMO}`,
        `burners=${burners}`,
        'minutes=40',
      ]);
      expect(code).toBe(0);
      const { result } = print as { result: { peakC: number; curve: readonly object[] } };
      expect(result.curve.length).toBeGreaterThan(10);
      return result.peakC;
    };
    expect(peak(2)).toBeGreaterThan(peak(1));
  });

  it('room wants burners', () => {
    const kitchen = JSON.stringify({
      ...JSON.parse(planAnswer([DEMO, '--json']).out).kitchen,
      fixtures: [],
    });
    const { print, code } = answer(['room', `kitchen=${file('bare.json', kitchen)}`]);
    expect(code).toBe(2);
    expect(print).toHaveProperty('error');
  });
});
