import { createHash } from 'node:crypto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { sha256 } from '../../../src/host/files/index.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the digest of a saved file', () => {
  it('is the one that is published for "abc", and the one of another library for any bytes', async () => {
    // FIPS 180-4, example "abc".
    expect(await sha256('abc')).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    );
    const text = '{"note":"שבע דקות – 7′"}\n';
    expect(await sha256(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
  });

  it('is not made up where the browser has none', async () => {
    vi.stubGlobal('crypto', {});
    expect(await sha256('abc')).toBeUndefined();
  });
});
