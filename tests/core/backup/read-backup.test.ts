import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatBackup, readBackup, type Backup } from '../../../src/core/backup/index.ts';
import { problemMessage, type KitchenProblem } from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import { runs } from '../../support/runs.ts';
import { DEMO_TEXTS } from '../kitchen/demos.ts';

const whole: Backup = {
  kitchens: DEMO_TEXTS.map(([, text], at) => {
    const { name } = JSON.parse(text) as { name: string };
    return { name, savedWallMs: at * 1000, text };
  }),
  runs: [{ name: 'Flat', openedWallMs: 5, journal: { format: 'glowpour-journal', entries: [] } }],
  settings: { theme: 'night', 'ticks:Flat': '["mop"]', 'run-choice-spoken': true },
};
const text = formatBackup(whole);

function read(from: string) {
  const outcome = readBackup(from);
  if ('refused' in outcome) throw new Error(inEnglish.say(problemMessage(outcome.refused)));
  return outcome;
}

function refusalOf(from: string): string {
  const outcome = readBackup(from);
  if (!('refused' in outcome)) throw new Error('It is read.');
  return inEnglish.say(problemMessage(outcome.refused));
}

const change = (how: (file: Record<string, unknown>) => void): string => {
  const file = JSON.parse(text) as Record<string, unknown>;
  how(file);
  return JSON.stringify(file);
};

describe('a file with everything in it', () => {
  it('gives back what was put in', () => {
    expect(read(text)).toEqual({ backup: whole, problems: [] });
  });

  it('may name a run as it was named where it was saved; any other name is none', () => {
    const [run] = whole.runs;
    expect(read(formatBackup({ ...whole, runs: [{ id: 'r-1', ...run! }] })).backup.runs).toEqual([
      { id: 'r-1', ...run! },
    ]);
    const odd = change((file) => {
      (file['runs'] as Record<string, unknown>[])[0]!['id'] = 7;
    });
    expect(read(odd)).toEqual({ backup: whole, problems: [] });
  });

  it('that is cut off is refused as a whole', () => {
    expect(refusalOf(text.slice(0, text.length / 2))).toMatch(/breaks off .*not whole/s);
    expect(refusalOf('')).toMatch(/breaks off/);
  });

  it.each([
    ['a kitchen', DEMO_TEXTS[0]?.[1] ?? '', /format.*"glowpour-kitchen".*under Kitchen/s],
    ['a run', '{"format":"glowpour-journal","version":2,"entries":[]}', /button for a run/],
    ['something else', '{"hello":1}', /format.*Choose another file/s],
    ['a list', '[]', /format/],
    ['nothing', 'null', /format/],
    ['a newer file', change((file) => (file['version'] = 2)), /version.*2.*1 or lower.*newer app/s],
    ['no version', change((file) => (file['version'] = 'x')), /version.*"x".*1 or lower/s],
  ])('%s is told for what it is', (_, from, says) => {
    expect(refusalOf(from)).toMatch(says);
  });

  it('loses only what is broken in it, and names field, value and what is allowed', () => {
    const broken = change((file) => {
      const kitchens = file['kitchens'] as Record<string, unknown>[];
      kitchens[0] = { ...kitchens[0], text: '{"format":"glowpour-kitchen"' };
      kitchens[1] = { ...kitchens[1], savedWallMs: 'yesterday' };
      (file['runs'] as unknown[]).push(7);
      file['settings'] = { theme: 'day', deep: { a: 1 } };
    });
    const { backup, problems } = read(broken);
    expect(backup.kitchens).toEqual(whole.kitchens.slice(2));
    expect(backup.runs).toEqual(whole.runs);
    expect(backup.settings).toEqual({ theme: 'day' });
    const told = problems.map((one) => inEnglish.say(problemMessage(one)));
    expect(told).toEqual([
      expect.stringContaining('kitchens[0].text'),
      expect.stringMatching(/kitchens\[1\]\.savedWallMs.*"yesterday".*a moment/s),
      expect.stringMatching(/runs\[1\].*7.*an object/s),
      expect.stringMatching(/settings\["deep"\].*a text, a number, true or false/s),
    ]);
  });

  it.each([-1, 253_402_300_800_000, 1e16, 1e300])(
    'holds no moment that no date can be: %d ms',
    (far) => {
      const broken = change((file) => {
        const [kitchens, runList] = [file['kitchens'], file['runs']] as Record<string, unknown>[][];
        kitchens![0]!['savedWallMs'] = far;
        runList![0]!['openedWallMs'] = far;
      });
      const { backup, problems } = read(broken);
      expect(backup.kitchens).toEqual(whole.kitchens.slice(1));
      expect(backup.runs).toEqual([]);
      expect(problems.map(({ path }) => path)).toEqual([
        'kitchens[0].savedWallMs',
        'runs[0].openedWallMs',
      ]);
    },
  );

  it('holds the last moment of the year 9999', () => {
    const latest = change((file) => {
      (file['runs'] as Record<string, unknown>[])[0]!['openedWallMs'] = 253_402_300_799_999;
    });
    expect(read(latest).problems).toEqual([]);
  });

  it('cannot reach beyond itself by the names of its fields', () => {
    const hostile = `{"format":"glowpour-backup","version":1,"kitchens":[],"runs":[],"settings":{"__proto__":"x","constructor":"y"},"__proto__":{"admin":true}}`;
    const { backup } = read(hostile);
    expect(Object.keys(backup.settings)).toEqual(['__proto__', 'constructor']);
    expect(({} as Record<string, unknown>)['admin']).toBeUndefined();
  });

  it('is told when it is nested beyond reason, or a million items long', () => {
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
    expect(refusalOf(deep)).not.toBe('');
    const long = change((file) => (file['runs'] = Array.from({ length: 3000 }, () => 0)));
    const { backup, problems } = read(long);
    expect(backup.runs).toEqual([]);
    expect(inEnglish.say(problemMessage(problems[0] as KitchenProblem))).toContain('at most 2000');
  });
});

describe('any file at all', () => {
  /** Each is told in a sentence that can be said. */
  const isTold = (problem: KitchenProblem): void => {
    for (const part of [problem.found, problem.allowed, problem.advice])
      expect(inEnglish.say(part)).not.toBe('');
    expect(inEnglish.say(problemMessage(problem))).not.toMatch(/undefined|\[object/);
  };

  it('is read or told, and never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (any) => {
        const outcome = readBackup(any);
        if ('refused' in outcome) isTold(outcome.refused);
        else for (const one of outcome.problems) isTold(one);
      }),
      { numRuns: runs(2000) },
    );
  });

  it('of this kind with anything in its fields keeps to what it promises', () => {
    const anything = fc.jsonValue({ maxDepth: 3 });
    const item = fc.record(
      {
        name: anything,
        savedWallMs: anything,
        openedWallMs: anything,
        text: anything,
        journal: anything,
      },
      { requiredKeys: [] },
    );
    const list = fc.oneof(anything, fc.array(fc.oneof(anything, item), { maxLength: 4 }));
    const settings = fc.oneof(anything, fc.dictionary(fc.string(), anything, { maxKeys: 4 }));
    fc.assert(
      fc.property(list, list, settings, (kitchens, runList, choices) => {
        const file = { format: 'glowpour-backup', version: 1, kitchens, runs: runList };
        const { backup, problems } = read(JSON.stringify({ ...file, settings: choices }));
        for (const one of problems) isTold(one);
        // What is given back is whole, whatever lay beside it.
        for (const { name, savedWallMs, text: own } of backup.kitchens)
          expect([typeof name, Number.isFinite(savedWallMs), typeof own]).toEqual([
            'string',
            true,
            'string',
          ]);
        for (const { journal } of backup.runs) expect(journal).toBeTypeOf('object');
        for (const value of Object.values(backup.settings))
          expect(['string', 'number', 'boolean']).toContain(typeof value);
      }),
      { numRuns: runs(2000) },
    );
  });
});
