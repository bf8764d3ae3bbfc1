import { describe, expect, it } from 'vitest';
import { hasDesktop } from '../../tools/has-desktop.ts';

describe('where the app may open a browser by itself', () => {
  it.each([
    ['linux', {}, false],
    ['linux', { DISPLAY: '' }, false],
    ['linux', { DISPLAY: ':0' }, true],
    ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, true],
    ['linux', { DISPLAY: ':0', SSH_CONNECTION: '10.0.0.2 22' }, false],
    ['darwin', {}, true],
    ['win32', {}, true],
  ])('%s with %o: %s', (platform, environment, expected) => {
    expect(hasDesktop(platform, environment)).toBe(expected);
  });
});
