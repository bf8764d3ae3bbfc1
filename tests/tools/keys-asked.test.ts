import { describe, expect, it } from 'vitest';
import { keysAsked, unasked } from '../../tools/messages/keys-asked.ts';

const KEYS = ['run.pause', 'run.stop', 'common.method.pour', 'common.method.glow.short'];

describe('sentences that nothing asks for', () => {
  it('are found, whatever names them in the catalogue', () => {
    const catalogue = keysAsked("export const run = { 'run.stop': 'Stop' };");
    const page = keysAsked("t('run.pause')");
    expect(unasked(KEYS, [catalogue, page])).toEqual([
      'common.method.glow.short',
      'common.method.pour',
      'run.stop',
    ]);
  });

  it('are none where a key is made of parts', () => {
    const made = keysAsked('message(`common.method.${id}`); say(`common.method.${id}.short`);');
    expect(unasked(KEYS.slice(2), [made])).toEqual([]);
    expect(unasked(KEYS, [keysAsked('say(`common.method.${id}.long`)')])).toContain(
      'common.method.glow.short',
    );
  });

  it('are none where one of two is asked for', () => {
    const either = keysAsked("t(paused ? 'run.stop' : 'run.pause')");
    expect(unasked(KEYS.slice(0, 2), [either])).toEqual([]);
  });

  it('are not hidden by a text that merely begins like a key', () => {
    expect(unasked(KEYS, [keysAsked('`run.${x} is text with blanks`')])).toEqual(KEYS.toSorted());
  });
});
