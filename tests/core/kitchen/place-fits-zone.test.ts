import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseKitchen, problemMessage } from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import towns from '../../../shared/places.json';

const FLAT = JSON.parse(readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8')) as {
  place: Record<string, unknown>;
};

function problemsAt(lonDeg: number, zone: string, latDeg = 40.7): readonly string[] {
  const place = { ...FLAT.place, latDeg, lonDeg, zone };
  const read = parseKitchen(JSON.stringify({ ...FLAT, place }));
  return 'problems' in read
    ? read.problems.map((problem) => inEnglish.say(problemMessage(problem)))
    : [];
}

describe('a place whose longitude and zone disagree', () => {
  it('is refused with what it would mean: a lost sign', () => {
    // Verifies: I-21
    const [message = ''] = problemsAt(74, 'America/New_York');
    expect(message).toContain('place.lonDeg');
    expect(message).toMatch(/The Sabbath would begin on Fri 0\d:\d\d/);
  });

  it('is refused: another continent', () => {
    expect(problemsAt(2.35, 'America/New_York')).toHaveLength(1);
    expect(problemsAt(-74, 'Asia/Jerusalem')).toHaveLength(1);
    expect(problemsAt(151.2, 'Europe/London', -33.9)).toHaveLength(1);
  });

  it('is never found where people live by such a zone', () => {
    for (const { zone, towns: rows } of towns.groups)
      for (const [name, latDeg, lonDeg] of rows)
        expect(problemsAt(Number(lonDeg), zone, Number(latDeg)), String(name)).toEqual([]);
    for (const [lonDeg, zone] of [
      [-8.7, 'Europe/Madrid'],
      [75.99, 'Asia/Shanghai'],
      [97, 'Asia/Kolkata'],
      [-168, 'America/Anchorage'],
      [-157.4, 'Pacific/Kiritimati'],
      [179, 'Pacific/Fiji'],
    ] as const)
      expect(problemsAt(lonDeg, zone), zone).toEqual([]);
  });
});
