import { describe, expect, it } from 'vitest';
import {
  beginGesture,
  endGesture,
  moveGesture,
  type Contact,
} from '../../../../../src/app/pages/kitchen/editor/hand/gesture.ts';
import { actionOfKey, historyKey } from '../../../../../src/app/pages/kitchen/editor/hand/keys.ts';

function contact(part: Partial<Contact> = {}): Contact {
  return {
    pointerId: 1,
    pointerType: 'touch',
    xPx: 100,
    yPx: 100,
    widthPx: 24,
    heightPx: 24,
    atMs: 0,
    ...part,
  };
}
const SINK = { kind: 'fixture', id: 'sink' } as const;

describe('a wet finger on the plan', () => {
  it('moves nothing on a way shorter than 8 px', () => {
    const { gesture, byPx } = moveGesture(beginGesture(contact(), SINK), contact({ xPx: 107 }));
    expect(byPx).toBeUndefined();
    expect(endGesture(gesture, contact({ xPx: 107, atMs: 200 }), 1)).toBe('tap');
  });
  it('drags from 8 px on, and back again without losing hold', () => {
    const begun = moveGesture(beginGesture(contact(), SINK), contact({ xPx: 108 }));
    expect(begun.byPx).toEqual([8, 0]);
    expect(moveGesture(begun.gesture, contact({ xPx: 101 })).byPx).toEqual([1, 0]);
    expect(endGesture(begun.gesture, contact({ xPx: 101, atMs: 300 }), 1)).toBe('dragged');
  });
  it('is nobody’s wish when it is short, wide, or several at once', () => {
    const held = beginGesture(contact(), SINK);
    expect(endGesture(held, contact({ atMs: 20 }), 1)).toBe('stray');
    expect(endGesture(held, contact({ atMs: 200, widthPx: 240 }), 1)).toBe('stray');
    expect(endGesture(held, contact({ atMs: 200 }), 2)).toBe('stray');
    const dragging = moveGesture(held, contact({ xPx: 140 })).gesture;
    expect(endGesture(dragging, contact({ xPx: 140, atMs: 20 }), 1)).toBe('stray');
    expect(endGesture(dragging, contact({ xPx: 140, atMs: 400 }), 3)).toBe('stray');
  });
  it('leaves a mouse alone', () => {
    const mouse = contact({ pointerType: 'mouse', widthPx: 1, heightPx: 1 });
    expect(endGesture(beginGesture(mouse, SINK), { ...mouse, atMs: 5 }, 1)).toBe('tap');
  });
  it('follows the finger it began with', () => {
    const held = beginGesture(contact(), SINK);
    expect(moveGesture(held, contact({ pointerId: 2, xPx: 300 })).byPx).toBeUndefined();
  });
});

describe('the keys', () => {
  const key = (name: string, shift = false, ctrl = false) => ({ key: name, shift, ctrl });
  it('move by 5 cm, with Shift they resize; up is away from the viewer', () => {
    expect(actionOfKey(key('ArrowRight'))).toEqual({ do: 'move', dxM: 0.05, dyM: 0 });
    expect(actionOfKey(key('ArrowUp', true))).toEqual({
      do: 'resize',
      widerM: 0,
      deeperM: 0.05,
    });
  });
  it('take out, open, and leave', () => {
    expect(actionOfKey(key('Delete'))).toEqual({ do: 'remove' });
    expect(actionOfKey(key('Enter'))).toEqual({ do: 'open' });
    expect(actionOfKey(key('t'))).toEqual({ do: 'turn' });
    // The same key, on a Hebrew keyboard.
    expect(actionOfKey(key('א'))).toEqual({ do: 'turn' });
    expect(actionOfKey(key('Escape'))).toEqual({ do: 'leave' });
    expect(actionOfKey(key('q'))).toBeUndefined();
  });
  it('undo and redo only with Ctrl', () => {
    expect(historyKey(key('z', false, true))).toBe('undo');
    expect(historyKey(key('Z', true, true))).toBe('redo');
    expect(historyKey(key('y', false, true))).toBe('redo');
    expect(historyKey(key('z'))).toBeUndefined();
    expect(actionOfKey(key('ArrowUp', false, true))).toBeUndefined();
  });
});
