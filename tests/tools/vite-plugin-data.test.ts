import { describe, expect, it } from 'vitest';
import { withoutComments } from '../../tools/vite-plugin-data.ts';

describe('tables in the bundle', () => {
  it('have no comments, at any depth, and nothing else is lost', () => {
    const table = { $comment: 'units: m', rows: [{ id: 'a', $comment: 'why', note: '$comment' }] };
    const bare: unknown = JSON.parse(withoutComments(JSON.stringify(table)) ?? '');
    expect(bare).toEqual({ rows: [{ id: 'a', note: '$comment' }] });
  });

  it('are left as they are without one', () => {
    expect(withoutComments('{"rows": []}')).toBeNull();
  });
});
