import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseRoute, UNTIL_WHEN } from '../../src/app/context/route.ts';

const PUBLIC = join(import.meta.dirname, '..', '..', 'public');

type Icon = {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose?: string;
};
type Manifest = Readonly<Record<'id' | 'name' | 'lang' | 'dir' | 'start_url' | 'scope', string>> & {
  readonly icons: readonly Icon[];
  readonly shortcuts: readonly {
    readonly name: string;
    readonly url: string;
    readonly icons: readonly Icon[];
  }[];
};

const manifest = JSON.parse(readFileSync(join(PUBLIC, 'app.webmanifest'), 'utf8')) as Manifest;

/** Width and height of a PNG, px, from its header (W3C PNG, 11.2.1). */
function sizeOf(file: string): readonly [number, number] {
  const bytes = readFileSync(join(PUBLIC, file));
  expect(bytes.subarray(1, 4).toString(), file).toBe('PNG');
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

/** Is its upper left corner painted? Colour type 2 has no alpha at all. */
const hasAlpha = (file: string) => readFileSync(join(PUBLIC, file))[25] === 6;

describe('the manifest of the app', () => {
  it('has icons of the sizes it says', () => {
    const drawn = [...manifest.icons, ...manifest.shortcuts.flatMap(({ icons }) => icons)].filter(
      ({ type }) => type === 'image/png',
    );
    expect(drawn.length).toBeGreaterThanOrEqual(3);
    for (const { src, sizes } of drawn) expect(sizeOf(src).join('x'), src).toBe(sizes);
    expect(sizeOf('apple-touch-icon.png')).toEqual([180, 180]);
  });

  it('has one icon to be cut to any shape, whose corners are painted, and large ones that are not', () => {
    const maskable = manifest.icons.filter(({ purpose }) => purpose === 'maskable');
    expect(maskable.map(({ sizes }) => sizes)).toEqual(['512x512']);
    for (const { src } of maskable) expect(hasAlpha(src)).toBe(false);
    expect(hasAlpha('apple-touch-icon.png')).toBe(false);
    const any = manifest.icons.filter(({ purpose }) => purpose === 'any').map(({ sizes }) => sizes);
    expect(any).toEqual(expect.arrayContaining(['192x192', '512x512']));
  });

  it('leads to pages of the app, at any path', () => {
    expect(manifest.shortcuts.map(({ url }) => parseRoute(url.slice('./'.length)))).toEqual([
      { page: 'run' },
      { page: 'run', id: UNTIL_WHEN },
      { page: 'plan' },
    ]);
    for (const url of [manifest.start_url, manifest.scope]) expect(url).toBe('./');
    expect([manifest.id, manifest.lang, manifest.dir]).toEqual(['glowpour', 'en', 'ltr']);
  });

  it('is named by the page, with what iOS asks for', () => {
    const html = readFileSync(join(PUBLIC, '..', 'index.html'), 'utf8');
    for (const asked of [
      'rel="manifest" href="./app.webmanifest"',
      'rel="apple-touch-icon" href="./apple-touch-icon.png"',
      'name="apple-mobile-web-app-capable" content="yes"',
      `name="apple-mobile-web-app-title" content="${manifest.name}"`,
    ])
      expect(html).toContain(asked);
  });
});
