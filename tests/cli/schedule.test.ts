import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { scheduleFromFile, scheduleReckoning } from '../../src/cli/reckon/solvers/schedule.ts';

const folder = mkdtempSync(join(tmpdir(), 'schedule-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(content: unknown) {
  const path = join(folder, 'problem.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return scheduleFromFile(path);
}

const a = { id: 'a', duration: 5, demand: { r: 2 } };
const b = { id: 'b', duration: 3, demand: { r: 1 } };
const resources = [{ id: 'r', capacity: 3 }];

describe('reckon schedule', () => {
  it('is registered by its name', () => {
    expect(scheduleReckoning.name).toBe('schedule');
  });

  it('reads minimum lags as start to start', () => {
    const precedence = [{ from: 'a', to: 'b', minLag: 2, maxLag: null }];
    expect(run({ name: 'x', activities: [a, b], precedence, resources })).toEqual({
      start: { a: 0, b: 2 },
      finish: 5,
      lowerBound: 5,
      optimal: true,
    });
  });

  it('reads a negative lag backwards as a maximum', () => {
    const long = { id: 'c', duration: 9, demand: {} };
    const precedence = [
      { from: 'c', to: 'b', minLag: 9 },
      { from: 'a', to: 'b', minLag: 5 },
      { from: 'b', to: 'a', minLag: -6 },
    ];
    const answer = run({ activities: [a, b, long], precedence, resources });
    expect(answer).toMatchObject({ start: { b: 9, c: 0 }, finish: 12 });
    if (!('start' in answer)) return;
    expect(answer.start['a']).toBeGreaterThanOrEqual(3);
    expect(answer.start['a']).toBeLessThanOrEqual(4);
  });

  it.each([
    ['file', '{'],
    ['file', []],
    ['file', 3],
    ['activities', {}],
    ['activities[0].id', { activities: [{}], precedence: [], resources }],
    ['activities[0].duration', { activities: [{ id: 'a' }], precedence: [], resources }],
    [
      'activities[0].duration',
      { activities: [{ ...a, duration: '5' }], precedence: [], resources },
    ],
    [
      'activities[0].demand.r',
      { activities: [{ ...a, demand: { r: 4 } }], precedence: [], resources },
    ],
    ['activities[0]', { activities: [{ ...a, lenght: 1 }], precedence: [], resources }],
    ['activities[1].id', { activities: [a, a], precedence: [], resources }],
    ['precedence', { activities: [a], resources }],
    [
      'precedence[0].to',
      { activities: [a], precedence: [{ from: 'a', to: 'z', minLag: 0 }], resources },
    ],
    [
      'precedence[0].maxLag',
      { activities: [a, b], precedence: [{ from: 'a', to: 'b', minLag: 2, maxLag: 1 }], resources },
    ],
    [
      'precedence',
      {
        activities: [a, b],
        precedence: [
          { from: 'a', to: 'b', minLag: 1 },
          { from: 'b', to: 'a', minLag: 0 },
        ],
        resources,
      },
    ],
    [
      'resources[0].capacity',
      { activities: [], precedence: [], resources: [{ id: 'r', capacity: -1 }] },
    ],
  ])('refuses a bad %s', (input, content) => {
    const answer = run(content);
    if (!('error' in answer)) throw new Error('no error');
    expect(answer.error.input).toBe(input);
    expect(answer.error.allowed).not.toBe('');
    expect(answer.error.message).toContain('allowed');
    expect(answer.error).toHaveProperty('found');
  });

  it('refuses a file that is not there', () => {
    expect(scheduleFromFile(join(folder, 'none.json'))).toMatchObject({ error: { input: 'file' } });
  });
});
