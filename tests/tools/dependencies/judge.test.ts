import { describe, expect, it } from 'vitest';
import { LEFT_AFTER_YEARS, unmaintained, vulnerable } from '../../../tools/dependencies/judge.ts';

const NOW_MS = Date.UTC(2026, 10, 27);
const yearsAgo = (years: number): number => NOW_MS - years * 365.25 * 86_400_000;

describe('what is bundled', () => {
  it('fails on a known vulnerability from moderate on', () => {
    const audit = {
      vulnerabilities: {
        a: { severity: 'low' },
        b: { severity: 'moderate' },
        c: { severity: 'critical' },
      },
    };
    expect(vulnerable(audit)).toEqual([
      'b: a known vulnerability (moderate)',
      'c: a known vulnerability (critical)',
    ]);
    expect(vulnerable({ vulnerabilities: {} })).toEqual([]);
  });

  it('is not held to be sound where the registry gave no answer', () => {
    expect(vulnerable({ message: '405 Method Not Allowed' })).toBeUndefined();
    expect(vulnerable(undefined)).toBeUndefined();
  });

  it('fails on what its makers withdrew or left, and says how long ago', () => {
    const packages = [
      { name: 'fresh', version: '1.0.0', lastReleaseMs: yearsAgo(1) },
      { name: 'left', version: '2.0.0', lastReleaseMs: yearsAgo(LEFT_AFTER_YEARS + 1) },
      { name: 'withdrawn', version: '3.0.0', deprecated: 'use another', lastReleaseMs: NOW_MS },
      { name: 'undated', version: '4.0.0' },
      { name: 'howler', version: '2.2.4', lastReleaseMs: yearsAgo(LEFT_AFTER_YEARS + 1) },
    ];
    expect(unmaintained(packages, NOW_MS)).toEqual([
      'left 2.0.0: no release for 5.0 years',
      'withdrawn 3.0.0: deprecated (use another)',
    ]);
  });
});
