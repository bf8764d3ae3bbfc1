import { expect, it } from 'vitest';
import { formatRoute, parseRoute } from '../../../src/app/context/route.ts';

it('reads the four places and what is open in them', () => {
  expect(parseRoute('#/plan/flat-coils')).toEqual({ page: 'plan', id: 'flat-coils' });
  expect(parseRoute('#/run')).toEqual({ page: 'run' });
  expect(parseRoute('')).toEqual({ page: 'kitchen' });
  expect(parseRoute('#/cellar/7')).toEqual({ page: 'kitchen' });
});

it('comes back from the address bar as it went', () => {
  for (const id of ['a b/c', 'hall', '%'])
    expect(parseRoute(formatRoute({ page: 'record', id }))).toEqual({ page: 'record', id });
});
