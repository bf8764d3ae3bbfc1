import { describe, expect, it } from 'vitest';
import { bundledLicences } from '../../tools/check-licences.ts';

describe('licences of what is bundled', () => {
  it('are read from the LICENSE file where a manifest states none', () => {
    const licences = bundledLicences(process.cwd());
    expect(licences.get('suncalc')).toBe('BSD-2-Clause');
    expect([...licences.values()]).not.toContain('none stated');
  });
});
