import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planAnswer } from '../../src/cli/plan/plan-answer.ts';
import { answer } from '../../src/cli/reckon/answer.ts';

const DEMO = join(import.meta.dirname, '../../demo-kitchens/flat-coils.kitchen.json');
const SPOT = ['latDeg=31.78', 'lonDeg=35.22', 'zone=Asia/Jerusalem'];
const ISO = expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);

describe('reckon of the calendar', () => {
  it('sun-times', () => {
    const { print, code } = answer(['sun-times', ...SPOT, 'date=2026-03-29']);
    expect(code).toBe(0);
    expect(print).toMatchObject({
      inputs: { latDeg: 31.78, zone: 'Asia/Jerusalem', date: '2026-03-29', nightfallDeg: 8.5 },
      result: { sunriseAt: ISO, sunsetAt: ISO, nightfallAt: ISO },
    });
  });

  it('sun-times where the night never gets that dark', () => {
    const spot = ['latDeg=60', 'lonDeg=10', 'zone=Europe/Oslo', 'date=2026-06-21'];
    expect(answer(['sun-times', ...spot]).print).toMatchObject({ result: { nightfallAt: null } });
  });

  it('rest-days: two days that touch are one', () => {
    const words = ['from=2026-05-20', 'days=5', 'land=diaspora'];
    const { print } = answer(['rest-days', ...SPOT, ...words]);
    expect(print).toMatchObject({
      inputs: { lightingMin: 18, nightfallDeg: 8.5 },
      result: { restDays: [{ name: 'Shavuot and Sabbath', startsAt: ISO, endsAt: ISO }] },
    });
  });

  it('leaven-hours: a Sabbath eve is purged for on the Friday', () => {
    const { print } = answer(['leaven-hours', ...SPOT, 'year=2025']);
    expect(print).toMatchObject({
      result: {
        eveDate: '2025-04-12',
        eatUntilAt: expect.stringContaining('2025-04-12T'),
        burnUntilAt: expect.stringContaining('2025-04-12T'),
        eveIsSabbath: true,
        purgeDate: '2025-04-11',
        purgeUntilAt: expect.stringContaining('2025-04-11T'),
      },
    });
  });

  it.each([
    ['sun-times', ['date=2026-02-30'], 'date'],
    ['sun-times', ['date=29.3.2026'], 'date'],
    ['rest-days', ['from=2026-05-20', 'days=5', 'land=moon'], 'land'],
    ['rest-days', ['from=2026-05-20', 'days=0', 'land=israel'], 'days'],
    ['rest-days', ['from=2026-05-20', 'days=2.5', 'land=israel'], 'days'],
    ['leaven-hours', ['year=2026.5'], 'year'],
    ['leaven-hours', ['year=3000'], 'year'],
    ['leaven-hours', ['year=2026', 'reckoning=mine'], 'reckoning'],
  ] as const)('%s refuses %j', (model, words, input) => {
    const { print, code } = answer([model, ...SPOT, ...words]);
    expect(code).toBe(2);
    expect(print).toMatchObject({ error: { input } });
  });

  it('refuses a zone that does not exist', () => {
    const words = ['latDeg=40', 'lonDeg=0', 'zone=Mars/Olympus', 'date=2026-03-29'];
    expect(answer(['sun-times', ...words]).print).toMatchObject({ error: { input: 'zone' } });
  });
});

describe('plan FILE --start', () => {
  it('prints days and clock times', () => {
    const { out, code } = planAnswer([DEMO, '--start=2026-03-27T09:00']);
    expect(code).toBe(0);
    expect(out).toContain('Friday 27 March\n  09:00  ');
    expect(out).toContain('Sabbath: Friday 27 March');
    expect(planAnswer(['--start=2026-03-27T13:00Z', DEMO]).out).toBe(out);
  });

  it.each([
    ['--start=tomorrow', 'start is tomorrow; allowed: a date and time like'],
    ['--start=2026-02-30T09:00', 'start is 2026-02-30'],
  ])('refuses %s', (flag, said) => {
    const { err, code } = planAnswer([DEMO, flag]);
    expect(code).toBe(2);
    expect(err.join('\n')).toContain(said);
  });

  it('refuses two starts', () => {
    const start = '--start=2026-03-27T09:00';
    expect(planAnswer([DEMO, start, start]).code).toBe(2);
  });
});
