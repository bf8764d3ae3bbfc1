import { describe, expect, it } from 'vitest';
import { createBounceGuard, intentOf, type KeyPress } from '../../../src/host/keys/intent.ts';

const press = (key: string, more: Partial<KeyPress> = {}): KeyPress => ({
  key,
  repeat: false,
  altKey: false,
  ctrlKey: false,
  metaKey: false,
  focus: 'none',
  ...more,
});

describe('what a key means', () => {
  it.each([
    [' ', 'main'],
    ['Enter', 'main'],
    ['ArrowRight', 'forward'],
    ['ArrowDown', 'forward'],
    ['PageDown', 'forward'],
    ['ArrowLeft', 'back'],
    ['ArrowUp', 'back'],
    ['PageUp', 'back'],
    ['Escape', 'dismiss'],
    ['s', 'stop'],
    ['S', 'stop'],
    ['r', 'repeat'],
    ['a', null],
    ['Tab', null],
    ['F5', null],
    ['toString', null],
  ])('%s is %s', (key, intent) => {
    expect(intentOf(press(key), false)).toBe(intent);
  });

  it('lets the forward pedal act when so set, and leaves back alone', () => {
    expect(intentOf(press('PageDown'), true)).toBe('pedal');
    expect(intentOf(press('ArrowRight'), true)).toBe('pedal');
    expect(intentOf(press('PageUp'), true)).toBe('back');
  });

  it('does nothing while a key is held down, and leaves shortcuts to the browser', () => {
    expect(intentOf(press(' ', { repeat: true }), false)).toBeNull();
    expect(intentOf(press('ArrowLeft', { altKey: true }), false)).toBeNull();
    expect(intentOf(press('Enter', { ctrlKey: true }), false)).toBeNull();
    expect(intentOf(press('ArrowUp', { metaKey: true }), false)).toBeNull();
  });

  it('leaves keys to a field being written in, and Space and Enter to a focused button', () => {
    for (const key of [' ', 'Enter', 'ArrowLeft', 'Escape']) {
      expect(intentOf(press(key, { focus: 'field' }), true), key).toBeNull();
    }
    expect(intentOf(press(' ', { focus: 'control' }), false)).toBeNull();
    expect(intentOf(press('PageDown', { focus: 'control' }), true)).toBe('pedal');
    expect(intentOf(press('PageDown', { focus: 'scroller' }), true)).toBeNull();
    expect(intentOf(press('Enter', { focus: 'scroller' }), true)).toBe('main');
  });
});

describe('a bouncing pedal', () => {
  it('does the main action once', () => {
    const passes = createBounceGuard();
    expect(passes('main', 1000)).toBe(true);
    expect(passes('main', 1120)).toBe(false);
    expect(passes('main', 1300)).toBe(false);
    expect(passes('main', 1800)).toBe(true);
  });

  it('moves as often as it is pressed', () => {
    const passes = createBounceGuard();
    expect([passes('forward', 0), passes('forward', 50), passes('back', 60)]).toEqual([
      true,
      true,
      true,
    ]);
  });
});
