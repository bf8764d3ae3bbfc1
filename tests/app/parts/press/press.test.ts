import { describe, expect, it } from 'vitest';
import { isDeliberate, type Touch } from '../../../../src/app/parts/press/press.ts';

const finger: Touch = {
  pointerType: 'touch',
  widthPx: 42,
  heightPx: 46,
  heldMs: 120,
  touchesAtOnce: 1,
  movedPx: 4,
};

describe('telling a finger from a splash', () => {
  it('believes a finger, a knuckle and an elbow', () => {
    expect(isDeliberate(finger)).toBe(true);
    expect(isDeliberate({ ...finger, widthPx: 90, heightPx: 70 })).toBe(true);
    expect(isDeliberate({ ...finger, widthPx: 170, heightPx: 150, heldMs: 300 })).toBe(true);
  });
  it.each([
    ['a drop: too thin', { widthPx: 2, heightPx: 2 }],
    ['a drop: too short', { heldMs: 20 }],
    ['a wet cloth: too wide', { widthPx: 260 }],
    ['a splash: several at once', { touchesAtOnce: 3 }],
    ['a wipe: it slid', { movedPx: 90 }],
  ])('ignores %s', (_name, change) => {
    expect(isDeliberate({ ...finger, ...change })).toBe(false);
  });
  it('never refuses a keyboard, pedal, mouse or pen', () => {
    for (const pointerType of ['mouse', 'pen', ''])
      expect(isDeliberate({ ...finger, pointerType, heldMs: 0, touchesAtOnce: 4 })).toBe(true);
  });
  it('believes a screen that reports no size', () => {
    expect(isDeliberate({ ...finger, widthPx: 1, heightPx: 1 })).toBe(true);
    expect(isDeliberate({ ...finger, widthPx: 0, heightPx: 0 })).toBe(true);
  });
});
